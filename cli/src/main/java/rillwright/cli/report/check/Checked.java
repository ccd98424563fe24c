package rillwright.cli.report.check;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.file.Project;
import rillwright.cli.report.units.ShownUnits;

/**
 * A project file that is right.
 *
 * @param project what it says
 * @param units to show it in
 * @param notes what the reader should know: sentences
 */
public record Checked(Project project, ShownUnits units, List<String> notes) {
  public Checked {
    notes = List.copyOf(notes);
  }

  /** A project with all notes about it. */
  public static Checked of(Project project, ShownUnits units) {
    List<String> notes = new ArrayList<>(project.notes());
    notes.addAll(SheetNotes.in(project, units));
    notes.addAll(DefaultsTaken.in(project));
    notes.addAll(StreamNotes.in(project, units));
    notes.addAll(SectionNotes.in(project.tree()));
    return new Checked(project, units, notes);
  }
}
