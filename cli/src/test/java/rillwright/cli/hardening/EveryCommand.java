package rillwright.cli.hardening;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Every command that works on a project, in its forms and formats.
 *
 * @param file the project
 * @param line one to be sized
 * @param sheets a folder of data sheets
 */
record EveryCommand(String file, String line, String sheets) {
  /** A project file that is written again with what was learnt. */
  static final String AS_BUILT = "built.yaml";

  private static final List<String> FORMATS = List.of("text", "json", "html");

  /** Of these a page would hold nothing but the picture. */
  private static final List<String> WITHOUT_A_PAGE = List.of("chart", "section");

  /** Of this no program asks. */
  private static final List<String> WITHOUT_JSON = List.of("weak-trial");

  /** All of them, each as its words. */
  List<List<String>> list() {
    List<List<String>> all = new ArrayList<>();
    for (String format : FORMATS) {
      for (List<String> words : questions()) {
        if (answers(words, format)) {
          List<String> command = new ArrayList<>(words);
          command.add(1, file);
          command.addAll(List.of("--format", format));
          all.add(command);
        }
      }
    }
    return all;
  }

  private static boolean answers(List<String> words, String format) {
    return switch (format) {
      case "html" -> !WITHOUT_A_PAGE.contains(words.get(0));
      case "json" -> !WITHOUT_JSON.contains(words.get(0));
      default -> true;
    };
  }

  private List<List<String>> questions() {
    return Stream.of(
            List.of("check"),
            List.of("solve"),
            List.of("solve", "--strict"),
            List.of("solve", "--conditions"),
            List.of("duty"),
            List.of("chart", "--to", beside("curves.svg")),
            List.of("section", "--shut-off", "--to", beside("section.svg")),
            List.of("section", "--sketch", "--to", beside("sketch.svg")),
            List.of("pumps", "--from", sheets),
            List.of("pumps", "--from", sheets, "--conditions", "--chart", beside("pumps.svg")),
            List.of("pipes", "--line", line, "--sizes", "1 in, 3 in"),
            List.of("pipes", "--line", line, "--sizes", "63 mm", "--from", sheets, "--conditions"),
            List.of("odds", "--samples", "100", "--chart", beside("odds.svg")),
            List.of("odds", "--samples", "100", "--conditions"),
            List.of("balance", "--chart", beside("share.svg")),
            List.of("balance", "--target"),
            List.of("compare", "--set", "lines." + quoted(line) + ".run=31 ft"),
            List.of("compare", file),
            List.of("mend"),
            List.of("mend", "--from", sheets, "--sizes", "1 in, 63 mm", "--days", "7"),
            List.of("weak", "--chart", beside("why.svg")),
            List.of("weak", "--causes"),
            List.of("weak-trial", "--calls", "1"),
            List.of("asbuilt", "--to", beside(AS_BUILT)),
            List.of("stream", "--chart", beside("levels.svg")),
            List.of("stream", "--times"),
            List.of("stream", "--conditions"),
            List.of("sheet", "--materials", beside("l.csv"), "--readings", beside("r.yaml")),
            List.of("sheet", "--for", "crew"),
            List.of("sheet", "--for", "customer"),
            List.of("sheet", "--for", "lid"))
        .toList();
  }

  private static String quoted(String name) {
    return (name.indexOf('"') < 0 ? "\"%s\"" : "'%s'").formatted(name);
  }

  private String beside(String name) {
    return OrderlyRun.made(Path.of(file)).resolve(name).toString();
  }
}
