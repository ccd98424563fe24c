package rillwright.cli.report.text.jobsheet;

import java.util.List;
import rillwright.cli.file.outline.ReadingForm;
import rillwright.cli.report.text.visit.ReadingWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.jobsheet.SheetAnswer;
import rillwright.cli.study.jobsheet.SheetAnswer.AsSet;
import rillwright.cli.study.jobsheet.card.CardReading;
import rillwright.cli.study.jobsheet.card.CardReading.CrestHead;
import rillwright.cli.study.jobsheet.card.CardReading.Fill;
import rillwright.cli.study.jobsheet.card.CardReading.Level;
import rillwright.cli.study.jobsheet.card.CardReading.Power;
import rillwright.cli.study.jobsheet.card.CardReading.Pressure;
import rillwright.cli.study.jobsheet.card.CardReading.Refill;
import rillwright.cli.study.jobsheet.card.CardReading.What;
import rillwright.cli.study.jobsheet.card.CardReading.When;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.LineName;

/** The readings of the card as a file to fill in, in the form that "weak --readings" takes. */
public final class ReadingsYaml {
  private final ShownUnits units;

  private ReadingsYaml(ShownUnits units) {
    this.units = units;
  }

  /** The file's text. */
  public static String of(SheetAnswer answer) {
    ReadingsYaml yaml = new ReadingsYaml(Shown.of(answer));
    StringBuilder text = new StringBuilder();
    text.append("# Readings at start-up: ")
        .append(PlainText.line(answer.title()))
        .append("\n# Put what was read in place of ")
        .append(ReadingForm.BLANK)
        .append(", with its unit; take out the lines of what was not read.\n")
        .append("# Then: rillwright weak FILE --readings THIS-FILE\n")
        .append("rillwright: 1\n");
    if (yaml.units.equals(ShownUnits.METRIC)) {
      text.append("show: metric\n");
    }
    List<CardReading> card = answer.asSet().map(AsSet::card).orElse(List.of());
    List<CardReading> read =
        card.stream().filter(reading -> reading.expected().isPresent()).toList();
    text.append(read.isEmpty() ? "readings: []\n" : "readings:\n");
    read.forEach(
        reading ->
            text.append("  - {")
                .append(yaml.fields(reading))
                .append("}  # ")
                .append(yaml.remark(reading))
                .append('\n'));
    return text.toString();
  }

  private String remark(CardReading reading) {
    ReadingWords words = ReadingWords.of(reading, units);
    return PlainText.line(words.what() + ": expect " + words.expect());
  }

  private String fields(CardReading reading) {
    What what = reading.what();
    String at = "at: " + quoted(reading.at());
    if (what instanceof Fill fill) {
      return at + ", bucket: " + units.volume(fill.volumeM3()) + ", time: " + blank("s");
    }
    if (what instanceof Refill) {
      return at + ", flow: " + blank(units.flowUnit().symbol());
    }
    if (what instanceof Power) {
      return "pump: " + quoted(reading.at()) + ", power: " + blank("W");
    }
    if (what instanceof Pressure pressure) {
      return "gauge: "
          + quoted(reading.at())
          + ", pressure: "
          + blank(units.equals(ShownUnits.METRIC) ? "kPa" : "psi")
          + when(pressure);
    }
    if (what instanceof Level level) {
      String depth = blank(units.depthUnit().symbol());
      return at + (level.above() ? ", level: " : ", below pond: ") + depth;
    }
    String field = what instanceof CrestHead ? "crest head" : "brink";
    double error = reading.high() - reading.expected().orElse(0);
    return at
        + ", "
        + field
        + ": "
        + blank(units.depthUnit().symbol())
        + ", within: "
        + units.fineDepth(error);
  }

  private static String blank(String unit) {
    return ReadingForm.BLANK + " " + unit;
  }

  private static String when(Pressure pressure) {
    if (pressure.when() == When.VALVE_SHUT) {
      LineName shut = pressure.shut().get(0);
      return ", when: valve shut, valve: " + quoted(shut.value());
    }
    return pressure.when() == When.PUMP_OFF ? ", when: pump off" : "";
  }

  /** A text in YAML 1.2, section 7.3.1: in double quotes unless it is plain words. */
  private static String quoted(String text) {
    if (text.matches("[A-Za-z][A-Za-z0-9]*( [A-Za-z0-9]+)*")
        && !text.matches("(?i)null|true|false|yes|no|on|off|y|n")) {
      return text;
    }
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints().forEach(code -> escaped(code, quoted));
    return quoted.append('"').toString();
  }

  private static void escaped(int code, StringBuilder quoted) {
    if (code == '"' || code == '\\') {
      quoted.append('\\').appendCodePoint(code);
    } else if (PlainText.harmless(Character.toString(code)).length() == Character.charCount(code)) {
      quoted.appendCodePoint(code);
    } else {
      quoted.append(code > 0xffff ? "\\U%08x".formatted(code) : "\\u%04x".formatted(code));
    }
  }
}
