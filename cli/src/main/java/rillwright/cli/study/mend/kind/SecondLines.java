package rillwright.cli.study.mend.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.cli.file.Project;
import rillwright.cli.study.mend.change.Action;
import rillwright.cli.study.mend.change.Addresses;
import rillwright.cli.study.mend.change.Bought;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.change.Source;
import rillwright.cli.study.mend.change.Step;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.site.Site;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Run;
import rillwright.solver.network.Skimmer;

/** A second pipe in the trench of a line, and one more skimmer where a chamber runs short. */
public final class SecondLines implements Source {
  @Override
  public List<List<Candidate>> candidates(Site site) {
    List<List<Candidate>> all = new ArrayList<>();
    for (Line line : site.lines()) {
      if (line.has(Skimmer.class)) {
        if (site.has(Need.STARVED)) {
          all.add(List.of(Candidate.of(skimmer(line))));
        }
      } else if (line.has(Run.class)) {
        all.add(List.of(Candidate.of(pipe(line, site))));
      }
    }
    return all;
  }

  private static Step pipe(Line line, Site site) {
    List<String> set = List.of(Addresses.ofSecond(line.name()));
    return step(
        Action.SECOND_LINE,
        line,
        set,
        site.changed(set)
            .map(with -> price(new LineName(line.name().value() + " second"), with))
            .orElse(OptionalDouble.empty()));
  }

  private static OptionalDouble price(LineName second, Project with) {
    return Bought.pipe(List.of(with.network().line(second)), with);
  }

  /** One more skimmer as there is, with its line. */
  static Step skimmer(Line line) {
    List<String> set = List.of(Addresses.ofSecond(line.name()));
    return step(Action.ONE_MORE_SKIMMER, line, set, OptionalDouble.empty());
  }

  private static Step step(Action action, Line line, List<String> set, OptionalDouble price) {
    return new Step(action, line.name().value(), "", 2, "", set, price);
  }
}
