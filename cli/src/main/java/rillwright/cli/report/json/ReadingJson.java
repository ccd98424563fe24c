package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.FLOW;
import static rillwright.cli.json.Quantity.METRES;
import static rillwright.cli.json.Quantity.POWER;
import static rillwright.cli.json.Quantity.PRESSURE;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import rillwright.cli.json.Quantity;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.report.weak.ReadingWords;
import rillwright.solver.network.LineName;
import rillwright.solver.study.diagnosis.evidence.Scope;
import rillwright.solver.study.diagnosis.job.Look;
import rillwright.solver.study.diagnosis.reading.Drawdown;
import rillwright.solver.study.diagnosis.reading.LevelBelow;
import rillwright.solver.study.diagnosis.reading.LineFlow;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Measurand.Teller;
import rillwright.solver.study.diagnosis.reading.Measurands;
import rillwright.solver.study.diagnosis.reading.Meter;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.diagnosis.reading.Sight;
import rillwright.solver.study.diagnosis.reading.When;

/**
 * A reading as a project file has it: where it is, what is read, SI.
 *
 * @param value that was read; empty where it is still to be read
 * @param within half the width of its interval; empty likewise
 * @param asBuilt what would be read as built; empty if nothing
 */
record ReadingJson(
    Measurand what, OptionalDouble value, OptionalDouble within, OptionalDouble asBuilt) {
  private static final ReadingWords WORDS = new ReadingWords(ShownUnits.METRIC);

  /** What is read where: two members. */
  private record Kind(String where, String read, Quantity quantity, boolean look) {
    Kind(String where, String read, Quantity quantity) {
      this(where, read, quantity, false);
    }
  }

  private static final Value<String> LOOK =
      Value.oneOf(Arrays.stream(Look.values()).map(Look::word).toList());

  private record Place(Kind kind, String name) {}

  private static final Kind FLOW_AT = new Kind("at", "flowM3PerS", FLOW);
  private static final Kind CREST_HEAD_AT = new Kind("at", "crestHeadM", METRES);
  private static final Kind BRINK_AT = new Kind("at", "brinkDepthM", METRES);
  private static final Kind PRESSURE_AT = new Kind("at", "pressurePa", PRESSURE);
  private static final Kind LEVEL_AT = new Kind("at", "levelM", METRES);
  private static final Kind PRESSURE_OF_GAUGE = new Kind("gauge", "pressurePa", PRESSURE);
  private static final Kind POWER_OF_PUMP = new Kind("pump", "powerW", POWER);
  private static final Kind FLOW_IN_LINE = new Kind("line", "flowM3PerS", FLOW);
  private static final Kind DRAWDOWN_AT = new Kind("at", "drawdownM3PerS", FLOW);
  private static final Kind BELOW_AT = new Kind("at", "belowPondM", METRES);
  private static final Kind SIGHT_AT =
      new Kind("at", "amiss", Quantity.SHARE.from(0).upTo(1), true);
  private static final Kind HANDLE_OF_LINE =
      new Kind("line", "handleFromOpenDegrees", Quantity.of("\u00b0"));
  private static final Kind MOUTH_OF_LINE = new Kind("line", "mouthBelowPondM", METRES);
  private static final Kind VOLTS_OF_PUMP = new Kind("pump", "voltageV", Quantity.of("V"));
  private static final Kind BOX_AT = new Kind("at", "boxFlowM3PerS", FLOW);
  private static final Kind FALLS_AT = new Kind("at", "fallsMPerS", Quantity.SPEED);
  private static final List<Kind> KINDS =
      List.of(
          SIGHT_AT,
          HANDLE_OF_LINE,
          MOUTH_OF_LINE,
          VOLTS_OF_PUMP,
          BOX_AT,
          FALLS_AT,
          FLOW_AT,
          CREST_HEAD_AT,
          BRINK_AT,
          PRESSURE_AT,
          LEVEL_AT,
          PRESSURE_OF_GAUGE,
          POWER_OF_PUMP,
          FLOW_IN_LINE,
          DRAWDOWN_AT,
          BELOW_AT);

  private static final Map<Kind, Shape<ReadingJson>> TAKEN_BY_KIND = byKind(ReadingJson::taken);
  private static final Map<Kind, Shape<ReadingJson>> UNTAKEN_BY_KIND = byKind(ReadingJson::untaken);

  /** A reading that was taken. */
  static final Value<ReadingJson> TAKEN =
      Value.either(
          reading -> TAKEN_BY_KIND.get(reading.place().kind), List.copyOf(TAKEN_BY_KIND.values()));

  /** A reading that is still to be taken: its value is null. */
  static final Value<ReadingJson> UNTAKEN =
      Value.either(
          reading -> UNTAKEN_BY_KIND.get(reading.place().kind),
          List.copyOf(UNTAKEN_BY_KIND.values()));

  ReadingJson(Measurand what) {
    this(what, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
  }

  ReadingJson(Reading reading, Scope scope) {
    this(
        reading.what(),
        OptionalDouble.of(reading.value()),
        OptionalDouble.of(reading.tolerance().halfWidthAt(reading.value())),
        scope.asBuilt(reading.what()));
  }

  private static Map<Kind, Shape<ReadingJson>> byKind(Function<Kind, Shape<ReadingJson>> of) {
    Map<Kind, Shape<ReadingJson>> shapes = new LinkedHashMap<>();
    KINDS.forEach(kind -> shapes.put(kind, of.apply(kind)));
    return Collections.unmodifiableMap(shapes);
  }

  private static Shape<ReadingJson> taken(Kind kind) {
    return state(
            at(kind)
                .number(kind.read, kind.quantity, "What was read.", it -> it.value.orElseThrow())
                .number(
                    "within",
                    Quantity.of(kind.quantity.unit()).above(0),
                    "Half the width of the 95 % interval.",
                    it -> it.within.orElseThrow()))
        .numberOrNull(
            "asBuilt",
            Quantity.of(kind.quantity.unit()),
            "What would be read as built; null where there is nothing to read, and the reading does"
                + " not count.",
            ReadingJson::asBuilt);
  }

  private static Shape<ReadingJson> untaken(Kind kind) {
    return state(
        at(kind)
            .member(
                kind.read,
                Value.nothing(),
                "Still to be read. Unit: " + kind.quantity.unit() + ".",
                it -> it)
            .words(
                "within",
                "How closely it is usually read.",
                it -> WORDS.within(it.what, it.what.usualTolerance())));
  }

  private static Shape<ReadingJson> at(Kind kind) {
    Shape<ReadingJson> shape =
        Shape.<ReadingJson>of().words(kind.where, "Where it is read.", it -> it.place().name);
    return kind.look
        ? shape.member(
            "look",
            LOOK,
            "At what one looks; 1 is amiss, 0 is not, between them how likely it is to be seen.",
            it -> it.what instanceof Sight sight ? sight.look().word() : "")
        : shape;
  }

  private static Shape<ReadingJson> state(Shape<ReadingJson> shape) {
    return shape
        .ifAny(
            "when",
            Value.oneOf("valve shut", "valve at", "pump off"),
            "The state of the job for it; absent as it runs.",
            it -> Optional.of(it.what.when().name()).filter(when -> !when.equals("running")))
        .ifAny(
            "valve",
            Value.words(),
            "The line whose valve is shut or set for it.",
            it -> valve(it.what.when()).map(LineName::value))
        .ifAny(
            "opening",
            Quantity.SHARE,
            "How far that valve is open.",
            it ->
                it.what.when() instanceof When.ValveAt at
                    ? Optional.of(at.open())
                    : Optional.empty());
  }

  private static Optional<LineName> valve(When when) {
    return when instanceof When.ValveAt at ? Optional.of(at.line()) : when.shutIn();
  }

  private Place place() {
    return what.tell(new Places());
  }

  private static final class Places implements Teller<Place> {
    @Override
    public Place flow(Measurands.Flow flow) {
      return new Place(FLOW_AT, flow.point().value());
    }

    @Override
    public Place crestHead(Measurands.CrestHead head) {
      return new Place(CREST_HEAD_AT, head.fall().value());
    }

    @Override
    public Place brink(Measurands.Brink brink) {
      return new Place(BRINK_AT, brink.fall().value());
    }

    @Override
    public Place teePressure(Measurands.TeePressure pressure) {
      return new Place(PRESSURE_AT, pressure.tee().value());
    }

    @Override
    public Place gaugePressure(Measurands.GaugePressure pressure) {
      return new Place(PRESSURE_OF_GAUGE, pressure.gauge());
    }

    @Override
    public Place level(Measurands.Level level) {
      return new Place(LEVEL_AT, level.point().value());
    }

    @Override
    public Place power(Measurands.Power power) {
      return new Place(POWER_OF_PUMP, power.line().value());
    }

    @Override
    public Place lineFlow(LineFlow flow) {
      return new Place(FLOW_IN_LINE, flow.line().value());
    }

    @Override
    public Place drawdown(Drawdown drawdown) {
      return new Place(DRAWDOWN_AT, drawdown.chamber().value());
    }

    @Override
    public Place sight(Sight sight) {
      return new Place(SIGHT_AT, sight.at());
    }

    @Override
    public Place meter(Meter meter) {
      Kind kind =
          switch (meter.kind()) {
            case HANDLE -> HANDLE_OF_LINE;
            case MOUTH -> MOUTH_OF_LINE;
            case VOLTS -> VOLTS_OF_PUMP;
            case BOX -> BOX_AT;
            case FALLS -> FALLS_AT;
          };
      return new Place(kind, meter.at());
    }

    @Override
    public Place levelBelow(LevelBelow level) {
      return new Place(BELOW_AT, level.chamber().value());
    }
  }
}
