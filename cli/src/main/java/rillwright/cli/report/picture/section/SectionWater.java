package rillwright.cli.report.picture.section;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.study.section.Section;
import rillwright.cli.study.section.Station;
import rillwright.curves.chart.content.SectionChart.OpenWater;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Point;
import rillwright.solver.steady.PointState;
import rillwright.solver.stream.ItemState;
import rillwright.solver.stream.Pool;

/** The open water at a place, and what holds it. */
final class SectionWater {
  /** How deep a pond or box is drawn of which the file does not say it, m. */
  private static final double POND_M = 0.5;

  private static final double BOX_M = 0.15;

  /** By how much a chamber of unknown top is drawn higher than the pond's water, m. */
  private static final double FREEBOARD_M = 0.05;

  /** A basin higher above a chamber than this, m, does not stand beside it. */
  private static final double BASIN_ABOVE_M = 2;

  private SectionWater() {}

  static Optional<OpenWater> in(Station station, Section section) {
    if (station.subject() instanceof Station.AtPoint at) {
      return of(at.point(), section);
    } else if (station.subject() instanceof Station.InStream piece) {
      return Optional.of(of(station, piece));
    }
    return Optional.empty();
  }

  private static Optional<OpenWater> of(Point point, Section section) {
    OptionalDouble level = levelM(point, section);
    if (point instanceof Basin basin) {
      double bottom =
          basin
              .shape()
              .map(shape -> shape.floorM())
              .filter(floor -> Double.isFinite(floor) && floor < basin.levelM())
              .orElse(basin.levelM() - POND_M);
      return Optional.of(OpenWater.standing(level, bottom, basin.gradeM()));
    } else if (point instanceof Chamber chamber) {
      return Optional.of(
          OpenWater.standing(level, chamber.floorM(), OptionalDouble.of(topM(chamber, section))));
    } else if (point instanceof Fall fall) {
      double bottom = fall.crestM() - BOX_M;
      return Optional.of(OpenWater.standing(level, bottom, OptionalDouble.of(fall.crestM())));
    }
    return Optional.empty();
  }

  /** Its top, else as high as the water that may fill it. */
  private static double topM(Chamber chamber, Section section) {
    return chamber
        .topM()
        .orElseGet(
            () ->
                section.network().points(Basin.class).stream()
                        .mapToDouble(Basin::levelM)
                        .filter(level -> level < chamber.intakeM() + BASIN_ABOVE_M)
                        .max()
                        .orElse(chamber.intakeM())
                    + FREEBOARD_M);
  }

  private static OptionalDouble levelM(Point point, Section section) {
    Optional<PointState> running = section.state().map(state -> state.point(point.name()));
    OptionalDouble head = running.map(PointState::headM).orElse(OptionalDouble.empty());
    return head.isPresent() ? head : point.heldHeadM();
  }

  private static OpenWater of(Station station, Station.InStream piece) {
    double top = station.before().elevationM();
    double foot = station.after().elevationM();
    Optional<Double> head = piece.running().map(ItemState::depthM);
    if (piece.item() instanceof Pool pool) {
      OptionalDouble surface =
          OptionalDouble.of(
              foot + piece.running().map(it -> it.crestHeadM().orElse(0)).orElse(0.0));
      return OpenWater.standing(surface, foot - pool.depthM(), OptionalDouble.of(foot));
    }
    return new OpenWater(
        head.map(depth -> OptionalDouble.of(top + depth)).orElse(OptionalDouble.empty()),
        head.map(depth -> OptionalDouble.of(foot + depth)).orElse(OptionalDouble.empty()),
        Math.min(top, foot),
        OptionalDouble.empty());
  }
}
