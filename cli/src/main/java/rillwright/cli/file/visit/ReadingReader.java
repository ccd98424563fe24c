package rillwright.cli.file.visit;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.outline.ReadQuantity;
import rillwright.cli.file.outline.ReadingForm;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Network;
import rillwright.solver.network.Point;
import rillwright.solver.study.diagnosis.job.Look;
import rillwright.solver.study.diagnosis.reading.Drawdown;
import rillwright.solver.study.diagnosis.reading.LevelBelow;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Measurands;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.diagnosis.reading.Span;
import rillwright.solver.study.diagnosis.reading.Tolerance;
import rillwright.solver.study.diagnosis.reading.When;

/** Reads one reading. */
final class ReadingReader {
  private final Network network;
  private final ReadingPlace places;

  ReadingReader(Network network) {
    this.network = network;
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
    if (fields.has("valve") && !ReadingForm.OF_VALVES.contains(word)) {
      fields.fault("valve", "a valve is named only with \"when: valve shut\" or \"valve at\"");
    }
    if (fields.has("open") && !word.equals(ReadingForm.VALVE_AT)) {
      fields.fault("open", "how far a valve is open is said only with \"when: valve at\"");
    }
    return switch (word) {
      case ReadingForm.RUNNING -> Optional.of(new When.Running());
      case ReadingForm.PUMP_OFF -> Optional.of(new When.PumpOff());
      case ReadingForm.VALVE_SHUT -> places.valve(fields).map(When.ValveShut::new);
      case ReadingForm.VALVE_AT -> {
        double open = fields.require("open", Measure.SHARE, Range.SHARE, "40 %");
        yield places.valveThatTurns(fields).map(line -> new When.ValveAt(line, open));
      }
      default -> Optional.empty();
    };
  }

  private Optional<Reading> reading(Fields fields, ReadQuantity read, When when) {
    if (fields.has("where") && read != ReadQuantity.FLOW && read != ReadQuantity.BUCKET) {
      fields.fault("where", "only a flow or a bucket is read at a box or below; take this out");
    }
    return switch (read) {
      case FLOW -> reading(fields, places.flow(fields, when), read);
      case BUCKET -> places.flow(fields, when).map(flow -> bucket(fields, flow));
      case VOLTS -> reading(fields, places.volts(fields, when), read);
      case FALLS -> reading(fields, places.falls(fields, when), read);
      case SEEN -> seen(fields, when);
      case CREST_HEAD -> reading(fields, places.crestHead(fields, when), read);
      case BRINK -> reading(fields, places.brink(fields, when), read);
      case PRESSURE -> reading(fields, places.pressure(fields, when), read);
      case LEVEL -> reading(fields, places.level(fields, when), read).map(it -> asked(fields, it));
      case POWER -> reading(fields, places.power(fields, when), read);
      case DROPS -> places.chamber(fields).map(chamber -> drawdown(fields, chamber, when));
      case BELOW_POND -> places.below(fields).flatMap(point -> below(fields, point, when));
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

  /** What was seen by a look. */
  private Optional<Reading> seen(Fields fields, When when) {
    fields.requireText("look", "net");
    Optional<Measurand> what = LookPlace.find(fields, when, network);
    Optional<Look> look = ReadingForm.lookOf(fields);
    if (look.isEmpty()) {
      return reading(fields, what, ReadQuantity.SEEN);
    }
    if (fields.has("within")) {
      fields.fault("within", "a look has no error of its own; take it out");
    }
    Optional<String> word = fields.findWord("seen", look.get().seen());
    return what.flatMap(
        sight ->
            word.map(
                seen ->
                    new Reading(
                        sight, seen.equals(look.get().amiss()) ? 1 : 0, sight.usualTolerance())));
  }

  /** A bucket and the time that it took to fill. */
  private static Reading bucket(Fields fields, Measurand flow) {
    double volume = ReadQuantity.BUCKET.find(fields).orElse(1);
    return timed(fields, flow, ReadQuantity.BUCKET, volume, 1, OptionalDouble.empty());
  }

  /** A drop of a chamber's level and the time that it took. */
  private static Reading drawdown(Fields fields, Chamber chamber, When when) {
    double drop = ReadQuantity.DROPS.find(fields).orElse(1);
    Drawdown what = new Drawdown(chamber.name(), when);
    OptionalDouble usual = OptionalDouble.of(FillTime.usualShareOfDrop(drop));
    return timed(fields, what, ReadQuantity.DROPS, drop, chamber.areaM2().getAsDouble(), usual);
  }

  /** A flow by what fills or drops in a time. */
  private static Reading timed(
      Fields fields,
      Measurand flow,
      ReadQuantity read,
      double amount,
      double areaM2,
      OptionalDouble usual) {
    String field = read.timeField().orElseThrow();
    double seconds = fields.require(field, Measure.TIME, Range.POSITIVE, "6 s");
    OptionalDouble given = givenShare(fields, read, amount, seconds);
    OptionalDouble share = given.isPresent() ? given : usual;
    return new Reading(
        flow, areaM2 * amount / seconds, Tolerance.ofShare(FillTime.share(seconds, share)));
  }

  /** A level by how far it is below the pond: of a chamber as both stand, of the pond as filed. */
  private Optional<Reading> below(Fields fields, Point point, When when) {
    double below = ReadQuantity.BELOW_POND.find(fields).orElse(0);
    Optional<Tolerance> within = within(fields, ReadQuantity.BELOW_POND);
    if (point instanceof Basin basin) {
      Measurand level = new Measurands.Level(basin.name(), when);
      return Optional.of(
          new Reading(level, basin.levelM() - below, within.orElse(level.usualTolerance())));
    }
    return places
        .pondOf((Chamber) point, fields)
        .map(pond -> new LevelBelow(point.name(), pond.name(), when))
        .map(what -> new Reading(what, below, within.orElse(what.usualTolerance())));
  }

  /** A level that no water of the job reaches, but would with the other sign: a fault. */
  private Reading asked(Fields fields, Reading reading) {
    Span possible = places.levels(((Measurands.Level) reading.what()).point());
    double level = reading.value();
    if (level > possible.greatest() + reading.tolerance().halfWidthAt(level)
        && -level >= possible.least()
        && -level <= possible.greatest()) {
      String text = fields.findText(ReadQuantity.LEVEL.field()).orElse("");
      fields.fault(
          ReadQuantity.LEVEL.field(),
          PlainText.quoted(text)
              + " is above all water of this job; levels are counted upward from the file's datum;"
              + " is it "
              + PlainText.quoted("-" + text)
              + "? Below the pond's level it can be written \"below pond: "
              + PlainText.harmless(text)
              + "\"");
    }
    return reading;
  }

  private static OptionalDouble givenShare(
      Fields fields, ReadQuantity read, double amount, double seconds) {
    String text = fields.findText("within").orElse("");
    OptionalDouble within = fields.find("within", read.withinMeasure(), Range.POSITIVE);
    if (within.isEmpty() || Shares.isShare(text)) {
      return within;
    }
    double whole = Shares.isTime(text) ? seconds : amount;
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
