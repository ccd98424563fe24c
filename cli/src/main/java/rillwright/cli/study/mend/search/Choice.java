package rillwright.cli.study.mend.search;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.change.Step;
import rillwright.cli.study.mend.kind.LargerPipes;
import rillwright.cli.study.mend.kind.Pumps;
import rillwright.cli.study.mend.site.Site;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;

/**
 * One thing that is chosen: the size of a line, or a pump.
 *
 * @param line whose pipe it is, or in which the pump stands
 * @param isPipe whether it is the line's size
 * @param options the first leaves it as it is
 */
record Choice(LineName line, boolean isPipe, List<Option> options) {
  /** A new pump is as much effort as this much new pipe, m; common practice, no source. */
  private static final double PUMP_M = 10;

  /** Of a size more, a share of the pipe's length. */
  private static final double A_SIZE = 0.001;

  Choice {
    options = List.copyOf(options);
  }

  /**
   * All that is chosen on the ways to what is in need: pumps first.
   *
   * @param pumps those that may be taken
   * @param pipes sizes that may be laid
   */
  static List<Choice> of(Site site, Pumps pumps, LargerPipes pipes) {
    List<Choice> all = new ArrayList<>();
    for (Line line : site.lines()) {
      for (Placed<Pump> placed : line.placed(Pump.class)) {
        if (placed.part().set().speed() > 0) {
          List<Option> options = new ArrayList<>(List.of(Option.NOTHING));
          for (Step more : Pumps.oneMore(site, placed)) {
            options.add(new Option(List.of(more), more.price(), PUMP_M));
          }
          for (Step other : pumps.others(site, placed)) {
            options.add(new Option(List.of(other), other.price(), PUMP_M));
          }
          all.add(new Choice(line.name(), false, options));
        }
      }
    }
    for (Line line : site.lines()) {
      if (line.has(Run.class)) {
        all.add(new Choice(line.name(), true, sizes(site, line, pipes)));
      }
    }
    all.removeIf(choice -> choice.options.size() == 1);
    return all;
  }

  private static List<Option> sizes(Site site, Line line, LargerPipes pipes) {
    double lengthM = line.placed(Run.class).stream().mapToDouble(run -> run.part().lengthM()).sum();
    List<Option> options = new ArrayList<>(List.of(Option.NOTHING));
    for (Candidate size : pipes.options(site, line)) {
      double effort = lengthM * (1 + A_SIZE * options.size());
      options.add(new Option(size.steps(), size.price(), effort));
    }
    return options;
  }

  /** The same without what has no price. */
  Choice priced() {
    return new Choice(
        line, isPipe, options.stream().filter(option -> option.price().isPresent()).toList());
  }
}
