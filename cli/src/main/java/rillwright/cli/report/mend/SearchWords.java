package rillwright.cli.report.mend;

import java.util.Optional;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.mend.MendAnswer;
import rillwright.cli.study.mend.search.Searched;

/** What came of the search over sets of sizes, pumps and valves. */
public final class SearchWords {
  private SearchWords() {}

  /** In a paragraph; empty where none was made. */
  public static Optional<String> of(MendAnswer answer) {
    return answer.searched().map(searched -> of(searched, answer, Shown.of(answer)));
  }

  private static String of(Searched searched, MendAnswer answer, ShownUnits units) {
    String sets =
        units.number(searched.sets())
            + " sets of pipe sizes and pumps, each with its valves set to share and the way that governs"
            + " left open";
    String computed = units.number(searched.tried()) + " were computed in full";
    String beyond = "would fall short even with pipe that loses no head";
    String left =
        searched.unpriced() == 0
            ? ""
            : " Left out because the file has no price for them: "
                + units.number(searched.unpriced())
                + " sizes or pumps.";
    String found =
        searched
            .least()
            .map(
                remedy ->
                    begin(searched, answer)
                        + RemedyWords.within(remedy.candidate(), answer.state().network(), units)
                        + (searched.proven() ? ". No set found among " : ". Of "))
            .orElse("No set that was looked at meets every target, of ");
    String rest =
        !searched.proven()
            ? " before the search was stopped; a better one may exist."
            : searched.least().isEmpty()
                ? "; the others " + beyond + "."
                : "; the others "
                    + (searched.byCost() ? "cost as much or more" : "take as much or more")
                    + ", or "
                    + beyond
                    + ".";
    String none =
        searched.proven() && searched.least().isPresent()
            ? searched.byCost() ? ", costs less" : ", takes less"
            : "";
    return found + sets + none + ": " + computed + rest + left;
  }

  private static String begin(Searched searched, MendAnswer answer) {
    return searched.byCost()
        ? "Cheapest over " + Math.round(answer.years()) + " years: "
        : "With the least new pipe, a new pump counted as 10 m (33 ft) of it (common practice): ";
  }
}
