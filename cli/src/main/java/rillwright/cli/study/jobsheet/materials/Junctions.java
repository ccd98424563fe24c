package rillwright.cli.study.jobsheet.materials;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import rillwright.solver.network.Fitting;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Run;
import rillwright.solver.network.Tee;

/**
 * Where three lines or more meet in a tee. A file gives the loss of each of its ways as a fitting
 * at the end of a line; all of these are one piece.
 *
 * @param built one for each piece, named and in the sizes of the lines that meet there
 */
record Junctions(Network network, List<Built> built) {
  private static final int WAYS = 3;

  /** A piece. */
  record Built(String name, LaidPipe pipe) {}

  /** Fittings that are a way of a piece, and what the piece is called. */
  private enum Way {
    TEE("tee", "tee"),
    BARBED_TEE("barbed tee", "barbed tee"),
    WYE("wye", "wye 45"),
    DIVERTER("diverter", "diverter 3-way"),
    THREE_WAY_VALVE("three-way valve", "three-way valve");

    private final String start;
    private final String piece;

    Way(String start, String piece) {
      this.start = start;
      this.piece = piece;
    }

    static Optional<Way> of(Part part) {
      return part instanceof Fitting fitting
          ? List.of(values()).stream()
              .filter(way -> fitting.label().startsWith(way.start))
              .findFirst()
          : Optional.empty();
    }
  }

  static Junctions of(Network network) {
    List<Built> built = new ArrayList<>();
    for (Tee tee : network.points(Tee.class)) {
      List<Line> ways = ways(tee, network);
      for (int i = WAYS; i <= ways.size(); i++) {
        built.add(new Built(name(tee, ways), pipe(tee, ways)));
      }
    }
    return new Junctions(network, built);
  }

  private static List<Line> ways(Tee tee, Network network) {
    return network.lines().stream().filter(line -> line.joins(tee.name())).toList();
  }

  private static String name(Tee tee, List<Line> ways) {
    return ways.stream()
        .flatMap(
            line ->
                IntStream.range(0, line.parts().size())
                    .filter(i -> isAtEnd(line, i, tee))
                    .mapToObj(i -> Way.of(line.parts().get(i))))
        .flatMap(Optional::stream)
        .findFirst()
        .orElse(Way.TEE)
        .piece;
  }

  /** As large as the largest, called by all sizes where they differ. */
  private static LaidPipe pipe(Tee tee, List<Line> ways) {
    List<LaidPipe> pipes =
        ways.stream()
            .map(line -> line.to().equals(tee.name()) ? LaidPipe.last(line) : LaidPipe.first(line))
            .filter(pipe -> pipe.known().isPresent())
            .sorted(
                Comparator.comparingDouble(
                    (LaidPipe pipe) -> -pipe.known().orElseThrow().insideM()))
            .toList();
    if (pipes.isEmpty()) {
      return LaidPipe.NONE;
    }
    LaidPipe largest = pipes.get(0);
    List<String> sizes = pipes.stream().map(LaidPipe::size).toList();
    boolean alike = sizes.stream().distinct().count() == 1;
    return new LaidPipe(
        largest.material(),
        alike ? largest.size() : sizes.stream().collect(Collectors.joining(" x ")),
        largest.boreM(),
        largest.known());
  }

  /** How many of the fittings at a place of a line are no pieces of their own: 1 or 0. */
  int legsAt(Line line, int index) {
    boolean isLeg =
        Way.of(line.parts().get(index)).isPresent()
            && network.points(Tee.class).stream()
                .filter(tee -> ways(tee, network).size() >= WAYS)
                .anyMatch(tee -> isAtEnd(line, index, tee));
    return isLeg ? 1 : 0;
  }

  /** Whether no pipe lies between a place of a line and its end at a tee. */
  private static boolean isAtEnd(Line line, int index, Tee tee) {
    List<Part> before = line.parts().subList(0, index);
    List<Part> after = line.parts().subList(index + 1, line.parts().size());
    return (line.from().equals(tee.name()) && before.stream().noneMatch(Run.class::isInstance))
        || (line.to().equals(tee.name()) && after.stream().noneMatch(Run.class::isInstance));
  }
}
