package rillwright.cli.file.outline;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;

/** What can be read in one reading: the field that says it, and what may stand there. */
public enum ReadQuantity {
  FLOW("flow"),
  /** A volume that fills in a time of its own field. */
  BUCKET("bucket"),
  CREST_HEAD("crest head"),
  BRINK("brink"),
  PRESSURE("pressure"),
  LEVEL("level"),
  POWER("power"),
  /** By how much a level drops in a time of its own field. */
  DROPS("drops"),
  /** How far a level is below the pond's. */
  BELOW_POND("below pond"),
  /** Voltage at a running pump. */
  VOLTS("volts"),
  /** By how much a pond falls in a time. */
  FALLS("falls"),
  /** What was seen by a look: a word, an angle or a length. */
  SEEN("seen");

  private static final Range QUARTER_TURN =
      Range.between(0, 90, "must be 0 to 90 degrees from open");

  private final String field;

  ReadQuantity(String field) {
    this.field = field;
  }

  /** The field that says it. */
  public String field() {
    return field;
  }

  /** The value of a reading, SI; empty if it has none or, with the fault noted, a wrong one. */
  public OptionalDouble find(Fields reading) {
    if (this == SEEN && ReadingForm.lookOf(reading).isPresent()) {
      return OptionalDouble.empty();
    }
    boolean handle = this == SEEN && ReadingForm.isHandle(reading);
    return reading.find(field, measureIn(reading), handle ? QUARTER_TURN : range());
  }

  /**
   * In what its error may be reported: as what is read, of a bucket as its time too, or as a share.
   */
  public Measure withinMeasure() {
    boolean timed = timeField().isPresent();
    Measure own = timed ? Measure.either(measure(), Measure.TIME) : measure();
    return Measure.either(own, Measure.SHARE);
  }

  /** The field of the time that it takes; empty where it takes none. */
  public Optional<String> timeField() {
    return switch (this) {
      case BUCKET -> Optional.of("time");
      case DROPS -> Optional.of("in");
      default -> Optional.empty();
    };
  }

  private Measure measureIn(Fields reading) {
    if (this != SEEN) {
      return measure();
    }
    return ReadingForm.isHandle(reading) ? Measure.ANGLE : Measure.SMALL_LENGTH;
  }

  private Measure measure() {
    return switch (this) {
      case FLOW -> Measure.FLOW;
      case BUCKET -> Measure.VOLUME;
      case CREST_HEAD, BRINK, LEVEL, DROPS, BELOW_POND -> Measure.SMALL_LENGTH;
      case PRESSURE -> Measure.PRESSURE;
      case POWER -> Measure.POWER;
      case VOLTS -> Measure.VOLTAGE;
      case FALLS -> Measure.FALL_OF_LEVEL;
      case SEEN -> Measure.either(Measure.ANGLE, Measure.SMALL_LENGTH);
    };
  }

  private Range range() {
    return switch (this) {
      case BUCKET, DROPS, VOLTS -> Range.POSITIVE;
      case FLOW, CREST_HEAD, BRINK, POWER, BELOW_POND, FALLS, SEEN -> Range.NOT_NEGATIVE;
      case PRESSURE, LEVEL -> Range.ANY;
    };
  }
}
