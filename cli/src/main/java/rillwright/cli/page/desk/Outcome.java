package rillwright.cli.page.desk;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.file.Show;
import rillwright.cli.file.change.Change;
import rillwright.cli.report.NoBalanceWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.section.Section;
import rillwright.cli.study.section.SectionRequest;
import rillwright.cli.study.solve.Solved;

/**
 * What is computed of a project.
 *
 * @param project that it is of, in the units that are shown
 * @param section its ways, with what flows there if it has a balance
 * @param solved its balance, with findings and cost; empty without a balance
 * @param trouble why there is none; empty if there is one
 */
public record Outcome(
    Project project, Section section, Optional<Solved> solved, Optional<String> trouble) {

  /** Computes it. */
  public static Outcome of(Project project) {
    Section section = new SectionRequest().answer(project);
    Optional<Solved> solved = section.state().map(state -> Solved.of(project, state));
    Optional<String> none =
        section.noBalance().map(reason -> NoBalanceWords.of(reason, Shown.of(project.show())));
    Optional<String> trouble =
        solved.isPresent()
            ? Optional.empty()
            : none.or(
                () ->
                    Optional.of(
                        "A pump is still to be chosen, so nothing flows yet. \"Duty\" says what it"
                            + " must make, \"Pumps\" which one of your data sheets does."));
    return new Outcome(project, section, solved, trouble);
  }

  /** A project in other units than those of its file; what it says stays the same. */
  static Project shownIn(Project project, Show units) {
    return project.show() == units
        ? project
        : project.withTree(
            Change.of(List.of("show"), units == Show.US ? "us" : "metric", "show")
                .in(project.tree()));
  }
}
