package rillwright.cli.page.panel.form;

import rillwright.cli.file.Project;
import rillwright.cli.page.html.Html;
import rillwright.solver.progress.Progress;

/** A study as a panel of the page: what it asks for, and its answer. */
public interface Panel {
  /** Its name in addresses: that of the command which asks the same. */
  String name();

  /** Its title. */
  default String title() {
    return PageWords.title(name());
  }

  /** What it answers, in a sentence. */
  String what();

  /** What it asks for, as fields of a form; nothing unless it says otherwise. */
  default void form(Project project, Html html) {}

  /** Forms of their own that belong to it; none unless it says otherwise. */
  default void besides(Project project, Html html) {}

  /**
   * Its answer as HTML.
   *
   * @param project as it is shown
   * @param filled what was filled in
   * @param progress receives how far long work has come, and may stop it
   * @throws rillwright.cli.file.fault.InvalidInput if the project or a field does not fit
   * @throws rillwright.solver.steady.NoBalance if the project has no balanced state
   */
  String answer(Project project, Filled filled, Progress progress);
}
