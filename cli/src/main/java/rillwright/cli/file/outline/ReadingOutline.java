package rillwright.cli.file.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.point.PointTable;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.curves.wording.PlainText;

/** Checks the section {@code readings}. */
public final class ReadingOutline {
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
    root.listRows("readings", ReadingForm.ALL).forEach(this::reading);
  }

  private void reading(Fields reading) {
    ReadingForm.sayWhere(reading);
    if (reading.has("look")) {
      look(reading);
    } else if (reading.has("at")) {
      PointNames.require(reading, "at", points);
    }
    known(reading, "gauge", gauges);
    known(reading, "pump", lines);
    known(reading, "line", lines);
    known(reading, "valve", lines);
    String when = reading.findWord("when", ReadingForm.STATES).orElse(ReadingForm.RUNNING);
    if (ReadingForm.OF_VALVES.contains(when)) {
      reading.requireText("valve", lines.stream().findFirst().orElse("supply"));
    }
    if (when.equals(ReadingForm.VALVE_AT)) {
      reading.require("open", Measure.SHARE, Range.SHARE, "40 %");
    } else {
      reading.find("open", Measure.SHARE, Range.SHARE);
    }
    reading.findWord("where", ReadingForm.WHERE);
    Optional<ReadQuantity> read = ReadingForm.whatWasRead(reading);
    for (ReadQuantity quantity : ReadQuantity.values()) {
      quantity.find(reading);
    }
    read.flatMap(ReadQuantity::timeField)
        .ifPresent(time -> reading.require(time, Measure.TIME, Range.POSITIVE, "6 s"));
    read.ifPresent(what -> reading.find("within", what.withinMeasure(), Range.POSITIVE));
  }

  private void look(Fields reading) {
    reading.findWord("look", ReadingForm.LOOKS);
    List<String> places = new ArrayList<>(lines);
    places.addAll(points.names());
    known(reading, "at", places);
    ReadingForm.lookOf(reading).ifPresent(look -> reading.findWord("seen", look.seen()));
  }

  private static void known(Fields reading, String field, List<String> names) {
    reading
        .findText(field)
        .filter(name -> !names.contains(name))
        .ifPresent(
            name -> reading.unknown(field, "there is no " + PlainText.quoted(name), name, names));
  }
}
