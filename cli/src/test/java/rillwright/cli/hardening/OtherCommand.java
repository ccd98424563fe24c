package rillwright.cli.hardening;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The commands that work on no project, in their forms and formats. */
final class OtherCommand {
  private static final List<String> FORMATS = List.of("text", "json", "html");

  private OtherCommand() {}

  /** What is asked of a data sheet. */
  static List<List<String>> ofSheet(Path sheet) {
    List<List<String>> all = new ArrayList<>();
    for (String format : FORMATS) {
      String picture = OrderlyRun.made(sheet).resolve("curve.svg").toString();
      all.add(List.of("pump", sheet.toString(), "--format", format, "--chart", picture));
      all.add(List.of("pump", sheet.toString(), "--format", format, "--volts", "115"));
    }
    String other = OrderlyRun.made(sheet).resolve("other units.csv").toString();
    all.add(List.of("pump", sheet.toString(), "--to", other));
    return all;
  }

  /** What a file of answers makes. */
  static List<List<String>> ofAnswers(Path answers) {
    String made = OrderlyRun.made(answers).resolve("new.yaml").toString();
    List<String> plain = List.of("new", made, "--answers", answers.toString());
    return List.of(plain, Stream.concat(plain.stream(), Stream.of("--show", "metric")).toList());
  }

  /** What is made of a crew's readings. */
  static List<List<String>> ofReadings(String project, Path readings) {
    List<List<String>> all = new ArrayList<>();
    for (String format : FORMATS) {
      all.add(List.of("weak", project, "--readings", readings.toString(), "--format", format));
      all.add(List.of("asbuilt", project, "--readings", readings.toString(), "--format", format));
    }
    return all;
  }

  /** What is asked of a word. */
  static List<List<String>> ofWord(String word) {
    return List.of(
        List.of("help", word),
        List.of("help", word, "--format", "html"),
        List.of("catalogue", word),
        List.of("catalogue", word, "--format", "json"),
        List.of("catalogue", word, "--format", "html"),
        List.of("catalogue", word, "--format", "csv"));
  }
}
