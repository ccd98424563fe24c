package rillwright.cli.study.jobsheet.materials;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.PipeSize;
import rillwright.solver.network.Line;
import rillwright.solver.network.Run;

/**
 * The pipe that something stands in.
 *
 * @param material its name; empty where there is no pipe
 * @param size as the trade says it; empty where the catalogue does not know it
 * @param boreM bore of a pipe that the catalogue does not know, m
 * @param known in the catalogue
 */
record LaidPipe(String material, String size, OptionalDouble boreM, Optional<PipeSize> known) {
  static final LaidPipe NONE = new LaidPipe("", "", OptionalDouble.empty(), Optional.empty());

  /** The run at a place of a line, else the next one downstream, else upstream. */
  static LaidPipe around(Line line, int index) {
    IntStream downstream = IntStream.range(index, line.parts().size());
    IntStream upstream = IntStream.iterate(index - 1, i -> i >= 0, i -> i - 1);
    return IntStream.concat(downstream, upstream)
        .mapToObj(i -> line.parts().get(i))
        .flatMap(part -> part instanceof Run run ? Stream.of(of(run)) : Stream.of())
        .findFirst()
        .orElse(NONE);
  }

  /** The first run of a line. */
  static LaidPipe first(Line line) {
    return around(line, 0);
  }

  /** The last run of a line. */
  static LaidPipe last(Line line) {
    return around(line, line.parts().size());
  }

  private static LaidPipe of(Run run) {
    Optional<PipeSize> known = Catalogue.standard().findPipeOfLabel(run.label());
    return new LaidPipe(
        known.map(PipeSize::material).orElse(run.label()),
        known.map(PipeSize::size).orElse(""),
        known.isPresent() ? OptionalDouble.empty() : OptionalDouble.of(run.inside().diameterM()),
        known);
  }

  /** The two that a change of bore joins, called by both sizes and priced as this one. */
  LaidPipe with(LaidPipe other) {
    return known.isPresent() && other.known.isPresent()
        ? new LaidPipe(material, size + " x " + other.size, boreM, known)
        : this;
  }
}
