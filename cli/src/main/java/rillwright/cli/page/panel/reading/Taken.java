package rillwright.cli.page.panel.reading;

import java.util.List;
import rillwright.cli.file.Project;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.Node;

/** What a job holds of what was read and seen at it. */
public final class Taken {
  private Taken() {}

  /** The items of a section that is a list; none where it is not there. */
  public static List<Node> of(Project project, String section) {
    return project
        .tree()
        .find(section)
        .map(entry -> entry.value() instanceof ListNode list ? list.items() : List.<Node>of())
        .orElse(List.of());
  }
}
