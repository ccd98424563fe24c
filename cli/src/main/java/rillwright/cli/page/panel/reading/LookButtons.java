package rillwright.cli.page.panel.reading;

import static rillwright.cli.file.edit.Quoting.json;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.file.tree.Node;
import rillwright.cli.page.html.Html;
import rillwright.cli.report.weak.ReadingWords;
import rillwright.solver.study.diagnosis.reading.Sight;

/**
 * Looks, each entered at a touch: what the job says was seen is pressed; a touch on it takes it
 * away, one on the other says that instead.
 */
public final class LookButtons {
  private final List<Node> readings;
  private final ReadingWords words;
  private final Html html;

  /** Buttons for looks at a project. */
  public LookButtons(Project project, ReadingWords words, Html html) {
    this.readings = project.tree().listItems("readings");
    this.words = words;
    this.html = html;
  }

  /** A look, with a button for each thing that may be seen. */
  public void write(Sight sight) {
    String what = words.opening(sight);
    html.open(
        "p",
        "id",
        id(sight),
        "class",
        "row look",
        "role",
        "group",
        "aria-label",
        what,
        "tabindex",
        "-1");
    html.leaf("span", what);
    int taken = taken(sight);
    for (String seen : sight.look().seen()) {
      if (taken == 0) {
        button(seen, "add-reading", written(sight), seen, "false");
      } else if (seenIn(taken).filter(seen::equals).isPresent()) {
        button(seen, "remove", "readings." + taken, "", "true");
      } else {
        button(seen, "set", "readings." + taken + ".seen", seen, "false");
      }
    }
    html.close();
  }

  /** Where it stands on the page. */
  public static String id(Sight sight) {
    return "at-look " + sight.look().word() + " " + sight.at();
  }

  private static String written(Sight sight) {
    return "look: " + sight.look().word() + ", at: " + json(sight.at()) + ", seen";
  }

  private void button(String seen, String what, String at, String value, String pressed) {
    html.leaf(
        "button",
        seen,
        "type",
        "button",
        "data-do",
        what,
        "data-at",
        at,
        "data-value",
        value,
        "aria-pressed",
        pressed);
  }

  /** Which of the readings says what was seen there, from 1; 0 if none does. */
  private int taken(Sight sight) {
    for (int i = 0; i < readings.size(); i++) {
      if (readings.get(i).findText("look").filter(sight.look().word()::equals).isPresent()
          && readings.get(i).findText("at").filter(sight.at()::equals).isPresent()) {
        return i + 1;
      }
    }
    return 0;
  }

  private Optional<String> seenIn(int reading) {
    return readings.get(reading - 1).findText("seen");
  }
}
