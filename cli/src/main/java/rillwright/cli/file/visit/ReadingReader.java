package rillwright.cli.file.visit;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.outline.ReadQuantity;
import rillwright.cli.file.outline.ReadingForm;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.solver.network.Network;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.diagnosis.reading.Tolerance;
import rillwright.solver.study.diagnosis.reading.When;

/** Reads one reading. */
final class ReadingReader {
  private final ReadingPlace places;

  ReadingReader(Network network) {
    this.places = new ReadingPlace(network);
  }

  /** A reading; empty, with the faults noted, if it is wrong. */
  Optional<Reading> read(Fields fields) {
    Optional<ReadQuantity> read = ReadingForm.whatWasRead(fields);
    if (read.isEmpty() || !ReadingForm.sayWhere(fields)) {
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
            ? fields.findWord("when", ReadingForm.STATES).orElse("")
            : ReadingForm.RUNNING;
    if (fields.has("valve") && !word.equals(ReadingForm.VALVE_SHUT)) {
      fields.fault("valve", "a valve is named only with \"when: valve shut\"");
    }
    return switch (word) {
      case ReadingForm.RUNNING -> Optional.of(new When.Running());
      case ReadingForm.PUMP_OFF -> Optional.of(new When.PumpOff());
      case ReadingForm.VALVE_SHUT -> places.valve(fields).map(When.ValveShut::new);
      default -> Optional.empty();
    };
  }

  private Optional<Reading> reading(Fields fields, ReadQuantity read, When when) {
    return switch (read) {
      case FLOW -> reading(fields, places.flow(fields, when), read);
      case BUCKET -> places.flow(fields, when).map(flow -> bucket(fields, flow));
      case CREST_HEAD -> reading(fields, places.crestHead(fields, when), read);
      case BRINK -> reading(fields, places.brink(fields, when), read);
      case PRESSURE -> reading(fields, places.pressure(fields, when), read);
      case LEVEL -> reading(fields, places.level(fields, when), read);
      case POWER -> reading(fields, places.power(fields, when), read);
    };
  }

  private static Optional<Reading> reading(
      Fields fields, Optional<Measurand> what, ReadQuantity read) {
    return what.map(
        readable ->
            new Reading(
                readable,
                read.find(fields).orElse(0),
                within(fields, read).orElse(readable.usualTolerance())));
  }

  /** A bucket and the time that it took to fill. */
  private static Reading bucket(Fields fields, Measurand flow) {
    double volume = ReadQuantity.BUCKET.find(fields).orElse(1);
    double seconds = fields.require("time", Measure.TIME, Range.POSITIVE, "6 s");
    OptionalDouble share = shareOfBucket(fields, volume, seconds);
    return new Reading(flow, volume / seconds, Tolerance.ofShare(FillTime.share(seconds, share)));
  }

  private static OptionalDouble shareOfBucket(Fields fields, double volume, double seconds) {
    String text = fields.findText("within").orElse("");
    OptionalDouble within =
        fields.find("within", ReadQuantity.BUCKET.withinMeasure(), Range.POSITIVE);
    if (within.isEmpty() || Shares.isShare(text)) {
      return within;
    }
    double whole = Shares.isTime(text) ? seconds : volume;
    return OptionalDouble.of(within.getAsDouble() / whole);
  }

  private static Optional<Tolerance> within(Fields fields, ReadQuantity read) {
    OptionalDouble within = fields.find("within", read.withinMeasure(), Range.POSITIVE);
    if (within.isEmpty()) {
      return Optional.empty();
    }
    boolean share = Shares.isShare(fields.findText("within").orElse(""));
    return Optional.of(
        share ? Tolerance.ofShare(within.getAsDouble()) : Tolerance.of(within.getAsDouble()));
  }
}
