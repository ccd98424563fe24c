package rillwright.cli.file.outline;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.SetElsewhere;
import rillwright.cli.file.point.PointTable;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.cli.wording.Choices;
import rillwright.cli.wording.PlainText;

/** Checks the section {@code readings}. */
public final class ReadingOutline {
  private static final List<String> FIELDS =
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
  private static final List<String> PLACES = List.of("at", "gauge", "pump");
  private static final List<String> STATES = List.of("running", "valve shut", "pump off");

  private final PointTable points;
  private final List<String> lines;
  private final List<String> gauges;

  /**
   * A check against the file's names.
   *
   * @param lines names of its lines
   * @param gauges names of its gauges
   */
  public ReadingOutline(PointTable points, List<String> lines, List<String> gauges) {
    this.points = points;
    this.lines = List.copyOf(lines);
    this.gauges = List.copyOf(gauges);
  }

  /** Notes what is wrong with the readings of a project. */
  public void check(Fields root) {
    root.listRows("readings", FIELDS).forEach(this::reading);
  }

  private void reading(Fields reading) {
    if (PLACES.stream().filter(reading::has).count() != 1) {
      SetElsewhere.fault(
          reading, PLACES, "say where it was read: either \"at\" a point, or a gauge, or a pump");
    }
    if (reading.has("at")) {
      PointNames.require(reading, "at", points);
    }
    known(reading, "gauge", gauges);
    known(reading, "pump", lines);
    known(reading, "valve", lines);
    reading.findWord("when", STATES);
    Optional<String> read = OneThingRead.find(reading);
    reading.find("flow", Measure.FLOW, Range.NOT_NEGATIVE);
    reading.find("bucket", Measure.VOLUME, Range.POSITIVE);
    if (reading.has("bucket")) {
      reading.require("time", Measure.TIME, Range.POSITIVE, "6 s");
    }
    reading.find("crest head", Measure.LENGTH, Range.NOT_NEGATIVE);
    reading.find("brink", Measure.LENGTH, Range.NOT_NEGATIVE);
    reading.find("pressure", Measure.PRESSURE, Range.ANY);
    reading.find("level", Measure.LENGTH, Range.ANY);
    reading.find("power", Measure.POWER, Range.NOT_NEGATIVE);
    read.ifPresent(
        thing ->
            reading.find(
                "within", Measure.either(measureOf(thing), Measure.SHARE), Range.POSITIVE));
  }

  private static Measure measureOf(String read) {
    return switch (read) {
      case "flow" -> Measure.FLOW;
      case "bucket" -> Measure.either(Measure.VOLUME, Measure.TIME);
      case "pressure" -> Measure.PRESSURE;
      case "power" -> Measure.POWER;
      default -> Measure.LENGTH;
    };
  }

  private static void known(Fields reading, String field, List<String> names) {
    reading
        .findText(field)
        .filter(name -> !names.contains(name))
        .ifPresent(
            name ->
                reading.fault(
                    field, "there is no " + PlainText.quoted(name) + Choices.hint(name, names)));
  }
}
