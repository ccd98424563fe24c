package rillwright.cli.file.visit;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.SetElsewhere;
import rillwright.cli.file.outline.OneThingRead;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.solver.network.Network;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.diagnosis.reading.Tolerance;
import rillwright.solver.study.diagnosis.reading.When;

/** Reads one reading. */
final class ReadingReader {
  static final List<String> FIELDS =
      List.of(
          "at",
          "gauge",
          "pump",
          "flow",
          "bucket",
          "time",
          "crest head",
          "brink",
          "pressure",
          "level",
          "power",
          "within",
          "when",
          "valve");

  private static final String RUNNING = "running";
  private static final String VALVE_SHUT = "valve shut";
  private static final String PUMP_OFF = "pump off";

  private final ReadingPlace places;

  ReadingReader(Network network) {
    this.places = new ReadingPlace(network);
  }

  /** A reading; empty, with the faults noted, if it is wrong. */
  Optional<Reading> read(Fields fields) {
    Optional<String> read = OneThingRead.find(fields);
    if (read.isEmpty()) {
      return Optional.empty();
    }
    List<String> wheres = List.of("at", "gauge", "pump");
    if (wheres.stream().filter(fields::has).count() != 1) {
      SetElsewhere.fault(
          fields, wheres, "say where it was read: either \"at\" a point, or a gauge, or a pump");
      return Optional.empty();
    }
    Optional<When> when = when(fields);
    if (when.isEmpty()) {
      return Optional.empty();
    }
    Optional<Reading> reading = reading(fields, read.get(), when.get());
    return fields.areSound() ? reading : Optional.empty();
  }

  private Optional<When> when(Fields fields) {
    String word =
        fields.has("when")
            ? fields.findWord("when", List.of(RUNNING, VALVE_SHUT, PUMP_OFF)).orElse("")
            : RUNNING;
    if (fields.has("valve") && !word.equals(VALVE_SHUT)) {
      fields.fault("valve", "a valve is named only with \"when: valve shut\"");
    }
    return switch (word) {
      case RUNNING -> Optional.of(new When.Running());
      case PUMP_OFF -> Optional.of(new When.PumpOff());
      case VALVE_SHUT -> places.valve(fields).map(When.ValveShut::new);
      default -> Optional.empty();
    };
  }

  private Optional<Reading> reading(Fields fields, String read, When when) {
    return switch (read) {
      case "flow" ->
          reading(fields, places.flow(fields, when), read, Measure.FLOW, Range.NOT_NEGATIVE);
      case "bucket" -> places.flow(fields, when).map(flow -> bucket(fields, flow));
      case "crest head" ->
          reading(fields, places.crestHead(fields, when), read, Measure.LENGTH, Range.NOT_NEGATIVE);
      case "brink" ->
          reading(fields, places.brink(fields, when), read, Measure.LENGTH, Range.NOT_NEGATIVE);
      case "pressure" ->
          reading(fields, places.pressure(fields, when), read, Measure.PRESSURE, Range.ANY);
      case "level" -> reading(fields, places.level(fields, when), read, Measure.LENGTH, Range.ANY);
      default ->
          reading(fields, places.power(fields, when), read, Measure.POWER, Range.NOT_NEGATIVE);
    };
  }

  private static Optional<Reading> reading(
      Fields fields, Optional<Measurand> what, String read, Measure measure, Range range) {
    return what.map(
        readable ->
            new Reading(
                readable,
                fields.find(read, measure, range).orElse(0),
                within(fields, measure).orElse(readable.usualTolerance())));
  }

  /** A bucket and the time that it took to fill. */
  private static Reading bucket(Fields fields, Measurand flow) {
    double volume = fields.find("bucket", Measure.VOLUME, Range.POSITIVE).orElse(1);
    double seconds = fields.require("time", Measure.TIME, Range.POSITIVE, "6 s");
    OptionalDouble share = shareOfBucket(fields, volume, seconds);
    return new Reading(flow, volume / seconds, Tolerance.ofShare(FillTime.share(seconds, share)));
  }

  private static OptionalDouble shareOfBucket(Fields fields, double volume, double seconds) {
    Measure either = Measure.either(Measure.either(Measure.SHARE, Measure.VOLUME), Measure.TIME);
    String text = fields.findText("within").orElse("");
    OptionalDouble within = fields.find("within", either, Range.POSITIVE);
    if (within.isEmpty() || Shares.isShare(text)) {
      return within;
    }
    double whole = Shares.isTime(text) ? seconds : volume;
    return OptionalDouble.of(within.getAsDouble() / whole);
  }

  private static Optional<Tolerance> within(Fields fields, Measure measure) {
    OptionalDouble within =
        fields.find("within", Measure.either(measure, Measure.SHARE), Range.POSITIVE);
    if (within.isEmpty()) {
      return Optional.empty();
    }
    boolean share = Shares.isShare(fields.findText("within").orElse(""));
    return Optional.of(
        share ? Tolerance.ofShare(within.getAsDouble()) : Tolerance.of(within.getAsDouble()));
  }
}
