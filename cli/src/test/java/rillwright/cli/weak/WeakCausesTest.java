package rillwright.cli.weak;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.solver.study.diagnosis.cause.Sign;
import rillwright.solver.study.diagnosis.cause.SignTable;
import tools.jackson.databind.JsonNode;

/** What "weak --causes" prints. */
class WeakCausesTest {
  @TempDir private Path folder;

  private final WeakCall text = WeakCall.about(WeakCall.JOB, "--causes");

  @Test
  void lengthsAreReportedInTheUnitsOfTheFile() {
    assertTrue(text.out().contains("1.97 in   6.6 ft  \"fall\""), text.out());
    assertFalse(text.out().matches("(?s).* [0-9.]+ m  .*"), text.out());
    String metric = WeakCall.about(WeakCall.JOB, "--causes", "--set", "show=metric").out();
    assertTrue(metric.contains("50 mm      2 m  \"fall\""), metric);
  }

  @Test
  void whatLogMeansIsSaid() {
    assertTrue(
        text.flat().contains("with \"log\" each doubling is, from 1 to 2 as from 100 to 200"));
    assertFalse(text.out().contains("\u00f7"), text.out());
    assertFalse(text.flat().contains("heads \u00d7"), text.out());
  }

  /** Beside a sign of trouble with electricity stands what to do first, listed or seen. */
  @Test
  void aBreakerThatTripsIsLeftOff() throws IOException {
    String caution = "that trips: leave it off, keep out of the water, and call a qualified electr";
    assertTrue(text.flat().contains(caution), text.out());
    Path seen = folder.resolve("seen.yaml");
    for (String sign : List.of("breaker trips", "surging")) {
      Files.writeString(seen, "signs: [" + sign + "]\n");
      boolean shown =
          WeakCall.about(WeakCall.JOB, "--readings", seen.toString()).flat().contains(caution);
      assertEquals(sign.equals("breaker trips"), shown, sign);
    }
  }

  /**
   * A sign tells nothing of a cause that this job cannot have; the text says what the JSON says.
   */
  @Test
  void signsNameTheCausesOfThisJobOnly() {
    JsonNode json = WeakCall.about(WeakCall.JOB, "--causes", "--format", "json").json();
    Set<String> inJob = new HashSet<>();
    json.get("causes").forEach(cause -> inJob.add(cause.get("cause").asString()));
    String signs = text.flat().substring(text.flat().indexOf("SIGN"));
    Map<Sign, Map<String, Double>> all = SignTable.commonPractice().factors();
    for (Sign sign : Sign.values()) {
      for (String cause : all.get(sign).keySet()) {
        assertEquals(inJob.contains(cause), json.get("signs").get(sign.words()).has(cause));
        assertEquals(inJob.contains(cause), signs.contains(cause), cause);
      }
    }
    assertFalse(inJob.contains("air at a high point"), "one at least is not in this job");
  }

  /** An earlier version named one otherwise; its files and its priors are still read. */
  @Test
  void aSignIsReadUnderItsFormerName() throws IOException {
    String[] twice = {"for weeks", "since weeks"};
    String[] answers = new String[2];
    String priors = WeakCall.about(WeakCall.JOB, "--causes", "--format", "json").out();
    for (int i = 0; i < 2; i++) {
      Path readings = folder.resolve(i + ".yaml");
      Files.writeString(
          readings, "readings: [{at: fall, flow: 2220 gph}]\nsigns: [" + twice[i] + "]\n");
      Path given = folder.resolve(i + ".json");
      Files.writeString(given, priors.replace("\"for weeks\"", "\"" + twice[i] + "\""));
      answers[i] =
          WeakCall.about(
                  WeakCall.JOB, "--readings", readings.toString(), "--priors", given.toString())
              .out();
    }
    assertTrue(answers[0].contains("Signs: for weeks"), answers[0]);
    assertEquals(answers[0], answers[1]);
  }

  @Test
  void aPictureOfCausesAloneIsRefused() {
    Path picture = folder.resolve("c.png");
    WeakCall call = WeakCall.about(WeakCall.JOB, "--causes", "--chart", picture.toString());
    assertEquals(2, call.status());
    assertEquals("", call.out());
    assertTrue(
        call.err().startsWith("--chart: --chart draws the result of readings and --causes"),
        call.err());
    assertFalse(Files.exists(picture));
  }

  @Test
  void itSaysThatPriorsAreScaled() {
    assertTrue(text.flat().contains("priors that do not add up to 1 are scaled"), text.out());
    String help = WeakCall.run("weak", "--help").flat();
    assertTrue(help.contains("the priors are scaled to a sum of 1"), help);
  }
}
