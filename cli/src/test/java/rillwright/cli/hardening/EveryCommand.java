package rillwright.cli.hardening;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Every command that works on a project, in its forms.
 *
 * @param file the project
 * @param line one to be sized
 * @param sheets a folder of data sheets
 */
record EveryCommand(String file, String line, String sheets) {
  private static final List<String> FORMATS = List.of("text", "json");

  /** All of them, each as its words. */
  List<List<String>> list() {
    List<List<String>> all = new ArrayList<>();
    for (String format : FORMATS) {
      for (List<String> words : questions()) {
        List<String> command = new ArrayList<>(words);
        command.add(1, file);
        all.add(command);
        if (!command.contains("--strict")) {
          command.addAll(List.of("--format", format));
        }
      }
    }
    return all;
  }

  private List<List<String>> questions() {
    return Stream.of(
            List.of("check"),
            List.of("solve"),
            List.of("solve", "--strict"),
            List.of("solve", "--conditions"),
            List.of("duty"),
            List.of("chart", "--to", picture("curves.svg")),
            List.of("section", "--shut-off", "--to", picture("section.svg")),
            List.of("pumps", "--from", sheets),
            List.of("pumps", "--from", sheets, "--conditions", "--chart", picture("pumps.svg")),
            List.of("pipes", "--line", line, "--sizes", "1 in, 3 in"),
            List.of("pipes", "--line", line, "--sizes", "63 mm", "--from", sheets, "--conditions"),
            List.of("odds", "--samples", "100", "--chart", picture("odds.svg")),
            List.of("odds", "--samples", "100", "--conditions"),
            List.of("balance", "--chart", picture("share.svg")),
            List.of("balance", "--target"),
            List.of("compare", "--set", "lines." + quoted(line) + ".run=31 ft"),
            List.of("mend"),
            List.of("mend", "--from", sheets, "--sizes", "1 in, 63 mm"),
            List.of("weak", "--chart", picture("why.svg")),
            List.of("weak", "--causes"),
            List.of("stream", "--chart", picture("levels.svg")),
            List.of("stream", "--times"),
            List.of("stream", "--conditions"))
        .toList();
  }

  private static String quoted(String name) {
    return (name.indexOf('"') < 0 ? "\"%s\"" : "'%s'").formatted(name);
  }

  private String picture(String name) {
    return Path.of(file).resolveSibling(name).toString();
  }
}
