package rillwright.cli.page;

import java.util.List;
import rillwright.cli.file.edit.EditedText;
import rillwright.cli.file.edit.Quoting;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.page.desk.Desk;
import rillwright.cli.page.web.Asked;

/** What is read and seen at a job, put into its text as it comes. */
final class Visiting {
  private Visiting() {}

  /** One more reading, at the end. */
  static void addReading(Desk desk, Asked asked) {
    String within = asked.text("within").strip();
    String written =
        asked.text("at")
            + ": "
            + Quoting.json(asked.text("value").strip())
            + (within.isEmpty() ? "" : ", within: " + Quoting.json(within));
    add(desk, "readings", "{" + written + "}", "reading " + asked.text("value"));
  }

  /** One more sign, at the end. */
  static void addSign(Desk desk, String sign) {
    add(desk, "signs", Quoting.json(sign), "sign " + sign);
  }

  private static void add(Desk desk, String section, String item, String done) {
    desk.editSoundly(
        text ->
            count(text, section) < 0
                ? text.add(section, "[" + item + "]")
                : text.insert(section, count(text, section) + 1, item),
        done);
  }

  /** How many items a section has; below 0 if it is not there. */
  private static int count(EditedText text, String section) {
    return text.tree()
        .findNode(section)
        .filter(ListNode.class::isInstance)
        .map(list -> ((ListNode) list).items())
        .map(List::size)
        .orElse(-1);
  }
}
