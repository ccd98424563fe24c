package rillwright.cli.page.drawing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import rillwright.cli.file.part.PartStep;
import rillwright.cli.page.desk.Places;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.section.Section;
import rillwright.cli.study.section.Station;
import rillwright.curves.chart.content.SectionChart.Piece;
import rillwright.curves.chart.content.SectionChart.Symbol;
import rillwright.solver.network.Part;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.steady.PartState;

/**
 * A piece of the long section with what the screen needs besides.
 *
 * @param piece as it is drawn
 * @param address of the point, part or stream that it opens, as {@code --set} writes it; empty for
 *     water that falls freely
 * @param said of it, for those who hear the page and those who point at it
 * @param words below it, short
 */
record DrawnPiece(Piece piece, Optional<String> address, String said, String words) {
  private static final double PIPE = 34;
  private static final double POINT = 38;
  private static final double SYMBOL = 25;
  private static final double HOME = 22;

  static DrawnPiece of(Piece piece, Station station, Section section) {
    String said =
        Stream.concat(Stream.of(piece.name()), piece.figures().stream())
            .filter(it -> !it.isEmpty())
            .collect(Collectors.joining(", "));
    return new DrawnPiece(piece, address(station, section), said, words(station, section));
  }

  private static Optional<String> address(Station station, Section section) {
    if (station.subject() instanceof Station.AtPoint at) {
      return Optional.of(Places.text(List.of("points", at.point().name().value())));
    } else if (station.subject() instanceof Station.InLine in) {
      List<Part> parts = section.network().line(in.line()).parts();
      String step = PartStep.stepsOf(parts.stream().map(Part::kind).toList()).get(in.index());
      return Optional.of(Places.text(List.of("lines", in.line().value(), step)));
    } else if (station.subject() instanceof Station.InStream in) {
      return Optional.of(Places.text(List.of("streams", in.stream())));
    }
    return Optional.empty();
  }

  private static String words(Station station, Section section) {
    ShownUnits units = Shown.of(section);
    if (station.subject() instanceof Station.AtPoint at) {
      return at.point().name().value();
    } else if (station.subject() instanceof Station.InLine in) {
      Part part = in.part();
      if (part instanceof Pump) {
        return power(in, section, units);
      }
      return part instanceof Run run && run.label().matches("[0-9].*")
          ? run.label().replaceAll("^(\\S+ (?:in|mm)).*", "$1")
          : "";
    }
    return "";
  }

  private static String power(Station.InLine in, Section section, ShownUnits units) {
    return section
        .state()
        .map(state -> state.line(in.line()).parts().get(in.index()))
        .map(PartState::flowM3PerS)
        .flatMap(
            flow ->
                ((Pump) in.part()).set().powerAt(flow).stream().mapToObj(units::power).findFirst())
        .orElse("");
  }

  /** All levels that are drawn of it, m. */
  DoubleStream levelsM() {
    Stream<OptionalDouble> sides =
        Stream.of(piece.start(), piece.end())
            .flatMap(side -> Stream.of(OptionalDouble.of(side.levelM()), side.headM()));
    Stream<OptionalDouble> water =
        piece.water().stream()
            .flatMap(it -> Stream.of(it.startM(), it.edgeM(), OptionalDouble.of(it.bottomM())));
    return Stream.concat(sides, water).flatMapToDouble(OptionalDouble::stream);
  }

  /** The least width that it takes, px. */
  double leastWidth() {
    return switch (piece.symbol()) {
      case PIPE, REACH -> PIPE;
      case BASIN, CHAMBER, FALL -> POINT;
      case FALLING, STEP, POOL -> HOME;
      default -> SYMBOL;
    };
  }

  /** Whether room that is left goes to it. */
  boolean stretches() {
    return piece.symbol() == Symbol.PIPE || piece.symbol() == Symbol.REACH;
  }
}
