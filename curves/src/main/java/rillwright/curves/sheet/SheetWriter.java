package rillwright.curves.sheet;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import rillwright.curves.sheet.fact.FactValues;
import rillwright.curves.sheet.fact.Nameplate;
import rillwright.curves.sheet.fact.SheetFacts;
import rillwright.curves.unit.Unit;
import rillwright.curves.wording.PlainText;
import rillwright.solver.law.pump.PumpPoint;

/**
 * Writes data sheets again: commas, decimal points, UTF-8, points in order of flow, numbers to six
 * figures. What {@link DataSheetReader} reads of it is what the sheet said, but for characters that
 * cannot be seen, which are spelled out.
 */
public final class SheetWriter {
  private static final MathContext FIGURES = new MathContext(6);

  private final Unit flow;
  private final Unit length;
  private final Unit shortLength;

  /**
   * A writer in some units.
   *
   * @param flow of flows
   * @param length of heads
   * @param shortLength of depths and stones
   */
  public SheetWriter(Unit flow, Unit length, Unit shortLength) {
    this.flow = flow;
    this.length = length;
    this.shortLength = shortLength;
  }

  /** The text of a sheet. */
  public String write(DataSheet sheet) {
    List<String> lines = new ArrayList<>();
    facts(sheet.facts(), lines);
    List<Column> columns = columns(sheet.curve().points());
    lines.add(String.join(",", columns.stream().map(Column::heading).toList()));
    for (PumpPoint point : sheet.curve().points()) {
      lines.add(String.join(",", columns.stream().map(it -> it.cell(point)).toList()));
    }
    return String.join("\n", lines.stream().map(PlainText::harmless).toList()) + "\n";
  }

  /** A column: its heading, and what stands in it in SI. */
  private record Column(String name, Unit unit, Function<PumpPoint, OptionalDouble> value) {
    String heading() {
      return name + " [" + unit.symbol() + "]";
    }

    String cell(PumpPoint point) {
      OptionalDouble si = value.apply(point);
      return si.isPresent() ? number(unit.fromSi(si.getAsDouble())) : "";
    }
  }

  private List<Column> columns(List<PumpPoint> points) {
    List<Column> columns = new ArrayList<>();
    columns.add(column(ColumnKind.FLOW, flow, it -> OptionalDouble.of(it.flowM3PerS())));
    columns.add(column(ColumnKind.HEAD, length, it -> OptionalDouble.of(it.headM())));
    for (Column other :
        List.of(
            column(ColumnKind.POWER, Unit.WATT, PumpPoint::powerW),
            column(ColumnKind.NPSH_REQUIRED, length, PumpPoint::npshRequiredM))) {
      if (points.stream().anyMatch(point -> other.value().apply(point).isPresent())) {
        columns.add(other);
      }
    }
    return columns;
  }

  private static Column column(
      ColumnKind kind, Unit unit, Function<PumpPoint, OptionalDouble> value) {
    return new Column(kind.heading(), unit, value);
  }

  private void facts(SheetFacts facts, List<String> lines) {
    facts.remarks().forEach(remark -> lines.add("# " + remark));
    facts.maker().ifPresent(maker -> add(FactValues.MAKER, maker, lines));
    facts
        .price()
        .ifPresent(it -> add(FactValues.PRICE, number(it.amount()) + " " + it.currency(), lines));
    facts.kind().ifPresent(kind -> add(FactValues.KIND, kind, lines));
    add(FactValues.MIN_SUBMERGENCE, facts.needs().minSubmergenceM(), shortLength, lines);
    add(FactValues.NPSH_REQUIRED, facts.needs().npshRequiredM(), length, lines);
    add(FactValues.SELF_PRIMING, facts.needs().selfPrimingM(), length, lines);
    facts
        .variableSpeed()
        .ifPresent(
            it ->
                add(
                    FactValues.VARIABLE_SPEED,
                    percent(it.least()) + ".." + percent(it.greatest()) + " %",
                    lines));
    add(FactValues.SOLIDS, facts.solidsM(), shortLength, lines);
    Nameplate plate = facts.nameplate();
    add(FactValues.RATED_POWER, plate.ratedPowerW(), Unit.WATT, lines);
    plate.voltageV().ifPresent(it -> add(FactValues.VOLTAGE, number(it) + " V", lines));
    plate.powerFactor().ifPresent(it -> add(FactValues.POWER_FACTOR, number(it), lines));
    if (plate.phases() > 1) {
      add(FactValues.PHASES, number(plate.phases()), lines);
    }
  }

  private static void add(String key, OptionalDouble si, Unit unit, List<String> lines) {
    si.ifPresent(it -> add(key, number(unit.fromSi(it)) + " " + unit.symbol(), lines));
  }

  private static void add(String key, String value, List<String> lines) {
    lines.add("# " + key + ": " + value);
  }

  private static String percent(double share) {
    return number(Unit.PERCENT.fromSi(share));
  }

  private static String number(double value) {
    BigDecimal rounded = new BigDecimal(value).round(FIGURES);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
