package rillwright.cli.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.cli.command.Run;
import tools.jackson.databind.ObjectMapper;

/** Every figure in a table of a job sheet is one of the answer for programs, or of the file. */
class SheetFiguresTest {
  static List<Path> projects() {
    return ExampleFolders.projects();
  }

  @ParameterizedTest
  @MethodSource("projects")
  void standsInTheAnswerForPrograms(Path project) throws IOException {
    Figures figures =
        new Figures(new ObjectMapper().readTree(sheet(project, "--format", "json")))
            .with(Files.readString(project));

    for (String whom : List.of("", "crew", "customer", "lid")) {
      List<String> words = new ArrayList<>(List.of("--format", "html"));
      words.addAll(whom.isEmpty() ? List.of() : List.of("--for", whom));
      List<String> cells =
          Stream.of(sheet(project, words.toArray(String[]::new)))
              .flatMap(html -> Jsoup.parse(html).select("td").eachText().stream())
              .map(SheetFiguresTest::inSymbols)
              .toList();
      assertEquals(List.of(), figures.strangersIn(String.join("; ", cells)), whom);
    }
  }

  private static String inSymbols(String text) {
    return text.replaceAll("m3 an hour", "m3/h")
        .replaceAll("gal(lons)? an hour", "gph")
        .replaceAll("litres an hour", "L/h");
  }

  @Test
  void figuresOfNoAnswerAreSeen() {
    Figures figures = new Figures(new ObjectMapper().readTree("{\"flowM3PerS\": 0.001}"));

    assertEquals(List.of("952 gph", "951 ft"), figures.strangersIn("951 gph, 952 gph, 951 ft"));
    assertTrue(figures.strangersIn("1.00 L/s of the 3.60 m3/h").isEmpty());
  }

  private static String sheet(Path project, String... words) {
    Run run =
        Run.of(
            Stream.concat(Stream.of("sheet", project.toString()), Stream.of(words))
                .toArray(String[]::new));
    assertEquals(0, run.status(), run::err);
    return run.out();
  }
}
