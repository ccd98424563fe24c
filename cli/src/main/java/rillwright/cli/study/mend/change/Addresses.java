package rillwright.cli.study.mend.change;

import java.util.List;
import rillwright.cli.file.change.Change;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Part;
import rillwright.solver.network.Placed;
import rillwright.solver.network.PointName;

/** Changes as any command takes them. */
final class Addresses {
  private static final String SOURCE = "a remedy";

  private Addresses() {}

  /** A change to a field of a part that there is. */
  static String ofPart(Placed<? extends Part> placed, String field, String value) {
    return ofLine(placed.line().name(), step(placed), field, value);
  }

  /** A change to a field of a line, or of what a step in it means. */
  static String ofLine(LineName line, String step, String field, String value) {
    return written(List.of("lines", line.value(), step, field), value);
  }

  /** A change to a field of a point. */
  static String ofPoint(PointName point, String field, String value) {
    return written(List.of("points", point.value(), field), value);
  }

  /** A change to the area of a row, from 1, of a basin's shape. */
  static String ofShape(PointName basin, int row, String area) {
    return written(List.of("points", basin.value(), "shape", Integer.toString(row), "area"), area);
  }

  /** A data sheet under a name. */
  static String ofSheet(String name, String path) {
    return written(List.of("pumps", name), path);
  }

  private static String written(List<String> steps, String value) {
    return Change.of(steps, value, SOURCE).address() + "=" + value;
  }

  /** The second valve of a line is {@code valve 2}. */
  private static String step(Placed<? extends Part> placed) {
    String kind = placed.part().kind();
    long number =
        placed.line().parts().stream()
            .limit(placed.index() + 1L)
            .filter(part -> part.kind().equals(kind))
            .count();
    return number == 1 ? kind : kind + " " + number;
  }
}
