package rillwright.cli.study.mend.change;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import rillwright.cli.file.change.Address;
import rillwright.cli.file.part.PartStep;
import rillwright.curves.unit.Unit;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Part;
import rillwright.solver.network.Placed;
import rillwright.solver.network.PointName;

/** Changes as any command takes them. */
public final class Addresses {
  private Addresses() {}

  /** A change to a field of a part that there is. */
  public static String ofPart(Placed<? extends Part> placed, String field, String value) {
    return ofLine(placed.line().name(), step(placed), field, value);
  }

  /** A change to a field of a line, or of what a step in it means. */
  public static String ofLine(LineName line, String step, String field, String value) {
    return written(List.of("lines", line.value(), step, field), value);
  }

  /** One more line beside a line. */
  public static String ofSecond(LineName line) {
    return written(List.of("lines", line.value(), "second line"), "yes");
  }

  /** A change to a field of a point. */
  public static String ofPoint(PointName point, String field, String value) {
    return written(List.of("points", point.value(), field), value);
  }

  /** The address of a field of a point, or of what it has below: rows are numbered from 1. */
  public static String below(PointName point, String... steps) {
    List<String> all = new ArrayList<>(List.of("points", point.value()));
    all.addAll(List.of(steps));
    return new Address(all).text();
  }

  /** A data sheet under a name. */
  public static String ofSheet(String name, String path) {
    return written(List.of("pumps", name), path);
  }

  /** A length as a file writes it, to a hundredth of a unit. */
  public static String size(double value, Unit unit) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN);
    BigDecimal shown = rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
    return shown.toPlainString() + " " + unit.symbol();
  }

  private static String written(List<String> steps, String value) {
    return new Address(steps).text() + "=" + value;
  }

  /** The second valve of a line is {@code valve 2}. */
  private static String step(Placed<? extends Part> placed) {
    List<String> kinds = placed.line().parts().stream().map(Part::kind).toList();
    return PartStep.stepsOf(kinds).get(placed.index());
  }
}
