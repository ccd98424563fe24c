package rillwright.cli.report.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rillwright.cli.file.Project;
import rillwright.cli.report.odds.UnknownWords;
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
    List<String> notes = new ArrayList<>();
    middles(project).ifPresent(notes::add);
    notes.addAll(project.notes());
    notes.addAll(SheetNotes.in(project, units));
    notes.addAll(DefaultsTaken.in(project));
    notes.addAll(StreamNotes.in(project, units));
    return notes;
  }

  /** Which values are only the middle of what the file gives. */
  private static Optional<String> middles(Project project) {
    return project.uncertain().isEmpty()
        ? Optional.empty()
        : Optional.of(
            "shown by the middle of a range that the file gives, not known: "
                + project.uncertain().stream()
                    .map(it -> UnknownWords.of(it.what()) + " (" + it.written().text() + ")")
                    .collect(Collectors.joining("; ")));
  }
}
