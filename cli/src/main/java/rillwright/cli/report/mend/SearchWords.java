package rillwright.cli.report.mend;

import java.util.Optional;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.mend.MendAnswer;
import rillwright.cli.study.mend.search.Searched;
import rillwright.cli.study.mend.trial.Remedy;
import rillwright.solver.network.Network;

/** What came of the search over sets of sizes, pumps and valves. */
public final class SearchWords {
  private SearchWords() {}

  /** In a paragraph; empty where none was made. */
  public static Optional<String> of(MendAnswer answer) {
    return answer.searched().map(searched -> of(searched, answer, Shown.of(answer)));
  }

  private static String of(Searched searched, MendAnswer answer, ShownUnits units) {
    String all =
        units.number(searched.sets())
            + " sets of pipe sizes and pumps, valves set for each, "
            + units.number(searched.tried())
            + " of them balanced";
    String rest =
        searched.proven()
            ? searched.least().isPresent()
                ? "; each of the others "
                    + (searched.byCost()
                        ? "costs as much or more"
                        : "takes as much new pipe or more")
                    + " or falls short even where pipe still to be chosen takes nothing."
                : "; the others fall short even where pipe still to be chosen takes nothing."
            : "; the search was stopped there, so a better set may exist.";
    String left =
        searched.unpriced() == 0
            ? ""
            : " Left out for want of a price: "
                + units.number(searched.unpriced())
                + " sizes or pumps.";
    return searched
            .least()
            .map(
                remedy ->
                    begin(searched, answer)
                        + found(remedy, answer.state().network(), units)
                        + " Looked at: ")
            .orElse("No set that was looked at meets every target: ")
        + all
        + rest
        + left;
  }

  private static String begin(Searched searched, MendAnswer answer) {
    return searched.byCost()
        ? "Cheapest over " + Math.round(answer.years()) + " years of what was looked at together: "
        : "Least new pipe of what was looked at together: ";
  }

  private static String found(Remedy remedy, Network network, ShownUnits units) {
    return RemedyWords.of(remedy.candidate(), network, units) + ".";
  }
}
