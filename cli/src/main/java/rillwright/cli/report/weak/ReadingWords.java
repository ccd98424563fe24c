package rillwright.cli.report.weak;

import java.util.OptionalDouble;
import rillwright.cli.report.units.ShownUnits;
import rillwright.curves.wording.PlainText;
import rillwright.solver.study.diagnosis.reading.Drawdown;
import rillwright.solver.study.diagnosis.reading.LevelBelow;
import rillwright.solver.study.diagnosis.reading.LineFlow;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Measurand.Teller;
import rillwright.solver.study.diagnosis.reading.Measurands;
import rillwright.solver.study.diagnosis.reading.Meter;
import rillwright.solver.study.diagnosis.reading.Sight;
import rillwright.solver.study.diagnosis.reading.Tolerance;
import rillwright.solver.study.diagnosis.reading.When;

/** Words for readings: what they are, what they show. */
public final class ReadingWords {
  private final ShownUnits units;

  /** Words in units. */
  public ReadingWords(ShownUnits units) {
    this.units = units;
  }

  /** What a readable is: "gauge G1, valve of "supply" shut". */
  public String name(Measurand readable) {
    return readable.tell(new Name()) + state(readable.when());
  }

  /** The same to begin a sentence with: "Gauge G1 ...". */
  public String opening(Measurand readable) {
    String name = name(readable);
    return name.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + name.substring(1);
  }

  private String state(When when) {
    if (when instanceof When.ValveAt at) {
      return ", valve of " + quoted(at.line().value()) + " at " + units.share(at.open());
    }
    return when.shutIn()
        .map(line -> ", valve of " + quoted(line.value()) + " shut")
        .orElseGet(() -> when.equals(new When.Running()) ? "" : ", " + when.name());
  }

  private static String quoted(String name) {
    return PlainText.quoted(name);
  }

  /** A value of it: "2,100 gph". */
  public String value(Measurand readable, double value) {
    return readable.tell(new Shown(value));
  }

  /** What it should be: "2,100 gph"; "no reading" where nothing holds the water or moves it. */
  public String expected(Measurand readable, OptionalDouble value) {
    return value.isPresent() ? value(readable, value.getAsDouble()) : "no reading";
  }

  /** How closely it is read: "7 %", "2 mm". */
  public String within(Measurand readable, Tolerance tolerance) {
    if (readable instanceof Sight) {
      return "-";
    }
    return tolerance.absolute() == 0
        ? units.share(tolerance.share())
        : readable.tell(new Fine(tolerance.absolute()));
  }

  private static final class Name implements Teller<String> {
    @Override
    public String flow(Measurands.Flow flow) {
      return "flow at " + quoted(flow.point().value());
    }

    @Override
    public String crestHead(Measurands.CrestHead head) {
      return "water over the crest of " + quoted(head.fall().value());
    }

    @Override
    public String brink(Measurands.Brink brink) {
      return "thickness at the brink of " + quoted(brink.fall().value());
    }

    @Override
    public String teePressure(Measurands.TeePressure pressure) {
      return "pressure at the tee " + quoted(pressure.tee().value());
    }

    @Override
    public String gaugePressure(Measurands.GaugePressure pressure) {
      return "gauge " + PlainText.harmless(pressure.gauge());
    }

    @Override
    public String level(Measurands.Level level) {
      return "level of " + quoted(level.point().value());
    }

    @Override
    public String power(Measurands.Power power) {
      return "power of the pump in " + quoted(power.line().value());
    }

    @Override
    public String lineFlow(LineFlow flow) {
      return "flow in line " + quoted(flow.line().value());
    }

    @Override
    public String drawdown(Drawdown drawdown) {
      return "flow drawn from " + quoted(drawdown.chamber().value());
    }

    @Override
    public String sight(Sight sight) {
      return "look: "
          + switch (sight.look()) {
            case NET -> "net in ";
            case FILTER -> "filter in ";
            case PART -> "opened part in ";
            case MATS -> "mats at the end of ";
            case GROUND -> "ground at ";
            case CREST -> "crest of ";
            case ROCKS -> "rocks behind ";
            case CHAMBER -> "bubbles in ";
          }
          + quoted(sight.at());
    }

    @Override
    public String meter(Meter meter) {
      String at = quoted(meter.at());
      return switch (meter.kind()) {
        case HANDLE -> "handle of the valve in " + at;
        case MOUTH -> "drop, pond to behind the mouth of " + at;
        case VOLTS -> "volts at the pump in " + at;
        case BOX -> "flow at the box of " + at;
        case FALLS -> "fall of " + at + " in an hour";
      };
    }

    @Override
    public String levelBelow(LevelBelow level) {
      return "level of "
          + quoted(level.chamber().value())
          + " below "
          + quoted(level.basin().value());
    }
  }

  /** A small difference of its values. */
  private final class Fine extends Shown {
    private final double difference;

    Fine(double difference) {
      super(difference);
      this.difference = difference;
    }

    @Override
    public String teePressure(Measurands.TeePressure pressure) {
      return units.finePressure(difference);
    }

    @Override
    public String gaugePressure(Measurands.GaugePressure pressure) {
      return units.finePressure(difference);
    }

    @Override
    public String level(Measurands.Level level) {
      return units.fineDepth(difference);
    }

    @Override
    public String levelBelow(LevelBelow level) {
      return units.fineDepth(difference);
    }
  }

  private class Shown implements Teller<String> {
    private final double value;

    Shown(double value) {
      this.value = value;
    }

    @Override
    public String flow(Measurands.Flow flow) {
      return units.flow(value);
    }

    @Override
    public String crestHead(Measurands.CrestHead head) {
      return units.fineDepth(value);
    }

    @Override
    public String brink(Measurands.Brink brink) {
      return units.fineDepth(value);
    }

    @Override
    public String teePressure(Measurands.TeePressure pressure) {
      return units.pressure(value);
    }

    @Override
    public String gaugePressure(Measurands.GaugePressure pressure) {
      return units.pressure(value);
    }

    @Override
    public String level(Measurands.Level level) {
      return units.depth(value);
    }

    @Override
    public String power(Measurands.Power power) {
      return units.power(value);
    }

    @Override
    public String lineFlow(LineFlow flow) {
      return units.flow(value);
    }

    @Override
    public String drawdown(Drawdown drawdown) {
      return units.flow(value);
    }

    @Override
    public String levelBelow(LevelBelow level) {
      return units.depth(value);
    }

    @Override
    public String sight(Sight sight) {
      return value > 0.5 ? sight.look().amiss() : sight.look().inOrder();
    }

    @Override
    public String meter(Meter meter) {
      return switch (meter.kind()) {
        case HANDLE -> Math.round(value) + "\u00b0";
        case MOUTH -> units.tools().ruler().measured(value, units);
        case VOLTS -> Math.round(value) + " V";
        case BOX -> units.flow(value);
        case FALLS -> units.fineDepth(3600 * value);
      };
    }
  }
}
