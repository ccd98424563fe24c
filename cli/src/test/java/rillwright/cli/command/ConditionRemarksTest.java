package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said of chambers, and notes, in each condition and in all together. */
class ConditionRemarksTest {
  private static final String POND =
      """
      points:
        pond: {kind: basin, level: 0 in}
        chamber: {kind: chamber, floor: -30 in, intake: -20 in}
        fall: {kind: fall, crest: 5 ft, width: 24 in, target: 100 gph/in}
      lines:
        intake: {from: pond, to: chamber, parts: [skimmer: {width: 12 in, sill: -5 in}]}
        supply:
          from: chamber
          to: fall
          pipe: {inside: 2 in, roughness: 0.01 mm}
          parts: [pump: p, check valve: {type: swing}, run: 38 ft]
      pumps:
        p: {points: [{flow: 0 gph, head: 22 ft}, {flow: 3800 gph, head: 11 ft}, {flow: 4900 gph, head: 0 ft}]}
      conditions:
        low: {points: {pond: {level: -3 in}}}
        lower: {points: {pond: {level: -4 in}}}
        drought: {points: {pond: {level: -25 in}}}
      """;

  @TempDir private Path folder;

  private String solved(String text) throws IOException {
    Path file = Files.writeString(folder.resolve("pond.yaml"), text);
    Run run = Run.of("solve", file.toString(), "--conditions");
    assertEquals(0, run.status(), run.err());
    return run.out().replaceAll("\\s+", " ");
  }

  @Test
  void aChamberIntoWhichNothingComesIsDry() throws IOException {
    String page = solved(POND);
    for (String row :
        new String[] {
          "as written not known not known not known above the intake",
          "low not known not known not known starved: chamber",
          "lower not known not known not known starved: chamber",
          "drought not known not known not known dry: chamber"
        }) {
      assertTrue(page.contains(row), page);
    }
  }

  @Test
  void whereThereIsNoChamberNoneIsReported() throws IOException {
    String page =
        solved(
            """
            points:
              tank: {kind: basin, level: 1 m}
              spout: {kind: outlet, elevation: 0 m}
            lines:
              pipe: {from: tank, to: spout, parts: [loss: {flow: 10 L/s, head: 1 m, exponent: 2}]}
            conditions:
              low: {points: {tank: {level: 0.5 m}}}
            """);
    assertFalse(page.contains("above the intake"), page);
  }

  @Test
  void whatHoldsInSeveralConditionsIsReportedOnceWithTheFiguresOfTheWorst() throws IOException {
    String page = solved(POND);
    assertEquals(1, Pattern.compile("draws air").matcher(page).results().count(), page);
    String flow = page.replaceAll(".* lower ([0-9,]+ gph) .*", "$1");
    assertTrue(
        page.contains(
            "! In \"lower\": The pump draws \"chamber\" down to its intake and draws air. The skimmer passes no more than "
                + flow
                + " at that level."),
        page);
    assertTrue(page.contains("! In \"drought\": No water comes into \"chamber\""), page);
  }

  @Test
  void whatIsAlikeInSeveralConditionsNeedsNoChoiceOfFigures() throws IOException {
    String page =
        solved(
            POND.replace(
                "lower: {points: {pond: {level: -4 in", "lower: {points: {pond: {level: -25 in"));
    assertTrue(page.contains("! In \"lower\" and \"drought\": No water comes into"), page);
  }

  @Test
  void whatHoldsAsWrittenIsNotReportedAgain() throws IOException {
    String page = solved(POND.replace("level: 0 in", "level: -3 in"));
    assertFalse(page.contains("draws air"), page);
    assertTrue(page.contains("for the warnings of the file as written"), page);
  }
}
