package rillwright.cli.report.check;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.file.Project;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.check.Checked;

/** What the reader of a project file should know. */
public final class CheckNotes {
  private CheckNotes() {}

  /** All notes, sentences. */
  public static List<String> of(Checked checked) {
    Project project = checked.project();
    List<String> notes = new ArrayList<>(assumed(checked));
    notes.addAll(JobNotes.in(project.papers()));
    notes.addAll(SectionNotes.in(project.tree()));
    return notes;
  }

  /** What was read otherwise than written, or taken where the file says nothing. */
  public static List<String> assumed(Checked checked) {
    Project project = checked.project();
    ShownUnits units = Shown.of(checked);
    List<String> notes = new ArrayList<>(project.notes());
    notes.addAll(SheetNotes.in(project, units));
    notes.addAll(DefaultsTaken.in(project));
    notes.addAll(StreamNotes.in(project, units));
    return notes;
  }
}
