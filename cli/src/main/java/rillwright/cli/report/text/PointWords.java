package rillwright.cli.report.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Point;
import rillwright.solver.network.Tee;

/** A point in a few words: "crest at 7.2 ft, 30 in wide, target 3,600 gph". */
public final class PointWords {
  private static final Map<Class<? extends Point>, BiFunction<Point, ShownUnits, List<String>>>
      BY_KIND =
          Map.ofEntries(
              entry(Basin.class, PointWords::basin),
              entry(Chamber.class, PointWords::chamber),
              entry(Tee.class, PointWords::tee),
              entry(Fall.class, PointWords::fall),
              entry(Outlet.class, PointWords::outlet));

  private PointWords() {}

  private static <P extends Point>
      Map.Entry<Class<? extends Point>, BiFunction<Point, ShownUnits, List<String>>> entry(
          Class<P> kind, BiFunction<P, ShownUnits, List<String>> words) {
    return Map.entry(kind, (point, units) -> words.apply(kind.cast(point), units));
  }

  /** The words for a point. */
  public static String of(Point point, ShownUnits units) {
    return String.join(", ", BY_KIND.get(point.getClass()).apply(point, units));
  }

  private static List<String> basin(Basin basin, ShownUnits units) {
    List<String> words = new ArrayList<>(List.of("level " + units.level(basin.levelM())));
    level(words, "overflow at ", basin.overflowM(), units);
    level(words, "grade at ", basin.gradeM(), units);
    level(words, "liner edge at ", basin.linerEdgeM(), units);
    level(words, "least level ", basin.leastLevelM(), units);
    double volume = basin.shape().map(shape -> shape.volumeM3(basin.levelM())).orElse(0.0);
    if (volume > 0) {
      words.add("holds " + units.volume(volume));
    }
    return words;
  }

  private static List<String> chamber(Chamber chamber, ShownUnits units) {
    List<String> words =
        new ArrayList<>(
            List.of(
                "floor at " + units.level(chamber.floorM()),
                "intake at " + units.level(chamber.intakeM())));
    level(words, "runs over at ", chamber.topM(), units);
    return words;
  }

  private static List<String> tee(Tee tee, ShownUnits units) {
    List<String> words = new ArrayList<>();
    level(words, "at ", tee.elevationM(), units);
    if (tee.elevationM().isEmpty()) {
      words.add("no elevation, so no pressure is shown");
    }
    if (tee.drawM3PerS() != 0) {
      String verb = tee.drawM3PerS() > 0 ? "draws " : "puts in ";
      words.add(verb + units.writtenFlow(Math.abs(tee.drawM3PerS())));
    }
    return words;
  }

  private static List<String> fall(Fall fall, ShownUnits units) {
    List<String> words = new ArrayList<>(List.of("crest at " + units.level(fall.crestM())));
    fall.widthM().ifPresent(width -> words.add(units.bore(width) + " wide"));
    target(words, fall, units);
    words.add("depth band \u00b1" + units.share(fall.depthBand()));
    fall.returnsTo().ifPresent(basin -> words.add("returns to \"" + basin.value() + "\""));
    return words;
  }

  private static List<String> outlet(Outlet outlet, ShownUnits units) {
    List<String> words = new ArrayList<>(List.of("ends at " + units.level(outlet.elevationM())));
    level(words, "under water at ", outlet.levelM(), units);
    outlet.nozzle().ifPresent(n -> words.add("nozzle " + units.width(n.opening().diameterM())));
    target(words, outlet, units);
    return words;
  }

  private static void target(List<String> words, Point point, ShownUnits units) {
    if (point.targetM3PerS().isPresent()) {
      words.add("target " + units.writtenFlow(point.targetM3PerS().getAsDouble()));
    }
  }

  private static void level(
      List<String> words, String before, OptionalDouble level, ShownUnits units) {
    if (level.isPresent()) {
      words.add(before + units.level(level.getAsDouble()));
    }
  }
}
