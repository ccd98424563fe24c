package rillwright.cli.file.outline;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.SetElsewhere;
import rillwright.cli.wording.Choices;
import rillwright.solver.study.diagnosis.job.Look;

/** The fields that a reading may have, and which of them it must. */
public final class ReadingForm {
  /** All of them. */
  public static final List<String> ALL =
      List.of(
          "at",
          "gauge",
          "pump",
          "line",
          "flow",
          "bucket",
          "time",
          "crest head",
          "brink",
          "pressure",
          "level",
          "below pond",
          "drops",
          "in",
          "power",
          "volts",
          "falls",
          "look",
          "seen",
          "where",
          "within",
          "when",
          "valve",
          "open");

  /** The state of a job while nothing is said of it. */
  public static final String RUNNING = "running";

  /** The state of a job with a valve shut. */
  public static final String VALVE_SHUT = "valve shut";

  /** The state of a job with a valve set otherwise. */
  public static final String VALVE_AT = "valve at";

  /** The states for which a valve is set. */
  public static final List<String> OF_VALVES = List.of(VALVE_SHUT, VALVE_AT);

  /** The state of a job with its pumps off. */
  public static final String PUMP_OFF = "pump off";

  /** All states in which something may be read. */
  public static final List<String> STATES = List.of(RUNNING, VALVE_SHUT, VALVE_AT, PUMP_OFF);

  /** What stands where a reading is still to be filled in. */
  public static final String BLANK = "____";

  private static final List<String> PLACES = List.of("at", "gauge", "pump", "line");
  private static final List<String> READ =
      Stream.of(ReadQuantity.values()).map(ReadQuantity::field).toList();

  private ReadingForm() {}

  /** The look at the handle of a valve: an angle is seen. */
  public static final String HANDLE = "handle";

  /** The look at the water between a skimmer's mouth and its net: a length is seen. */
  public static final String MOUTH = "mouth";

  /** All words for looks. */
  public static final List<String> LOOKS =
      Stream.concat(Arrays.stream(Look.values()).map(Look::word), Stream.of(HANDLE, MOUTH))
          .toList();

  /** Where a flow is read: at the box of a fall or where it comes to. */
  public static final List<String> WHERE = List.of("below", "box");

  /** The look of a reading by which a word is seen; empty if it is another. */
  public static Optional<Look> lookOf(Fields reading) {
    return reading.findText("look").flatMap(Look::find);
  }

  /** Whether a reading is a look at a handle. */
  public static boolean isHandle(Fields reading) {
    return reading.findText("look").filter(HANDLE::equals).isPresent();
  }

  /** Whether a reading says where it was read; a fault if it does not, or more than once. */
  public static boolean sayWhere(Fields reading) {
    boolean once = PLACES.stream().filter(reading::has).count() == 1;
    if (!once) {
      SetElsewhere.fault(
          reading,
          PLACES,
          "the place of the reading is missing: either \"at\" a point, or a gauge, a pump or a"
              + " line");
    }
    return once;
  }

  /** What was read; empty, with a fault, if the reading does not say, or says several things. */
  public static Optional<ReadQuantity> whatWasRead(Fields reading) {
    List<ReadQuantity> read =
        Stream.of(ReadQuantity.values()).filter(it -> reading.has(it.field())).toList();
    if (read.isEmpty()) {
      reading.fault("the quantity that was read is missing: one of " + Choices.listed(READ));
      return Optional.empty();
    }
    if (read.size() > 1) {
      List<String> fields = read.stream().map(ReadQuantity::field).toList();
      SetElsewhere.fault(
          reading,
          fields,
          (read.size() == 2 ? "two" : "several")
              + " quantities in one reading, "
              + String.join(" and ", fields)
              + (read.size() == 2 ? "; make two readings of it" : "; make a reading of each"));
      return Optional.empty();
    }
    refuseTimesOfOthers(reading, read.get(0));
    return isFilledIn(reading, read.get(0)) ? Optional.of(read.get(0)) : Optional.empty();
  }

  /** Whether a list that was printed to be filled in has been, here; a fault if not. */
  private static boolean isFilledIn(Fields reading, ReadQuantity read) {
    Optional<String> blank =
        Stream.concat(Stream.of(read.field()), read.timeField().stream())
            .filter(reading::has)
            .filter(field -> reading.findText(field).orElse("").startsWith(BLANK))
            .findFirst();
    blank.ifPresent(
        field ->
            reading.fault(
                field,
                "this is still to be filled in: write what was read in place of "
                    + BLANK
                    + ", or take the line out"));
    return blank.isEmpty();
  }

  private static void refuseTimesOfOthers(Fields reading, ReadQuantity read) {
    for (ReadQuantity other : ReadQuantity.values()) {
      Optional<String> time = other.timeField();
      if (other != read && time.filter(reading::has).isPresent()) {
        reading.fault(
            time.get(),
            "a time goes with \""
                + other.field()
                + "\" here; with "
                + read.field()
                + " take it out");
      }
    }
  }
}
