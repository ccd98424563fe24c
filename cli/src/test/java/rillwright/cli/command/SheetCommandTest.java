package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** The job sheet: its figures are those of the studies, its lists can be used. */
class SheetCommandTest {
  private static final Path EXAMPLES = Path.of("..", "examples");
  private static final String JOB = EXAMPLES.resolve("twin-falls/job.yaml").toString();
  private static final String POND = EXAMPLES.resolve("weak-fall/fall.yaml").toString();
  private static final String STREAM = EXAMPLES.resolve("hidden-reservoir/fall.yaml").toString();

  /** What valves set by a text bring, a share: nine figures of an opening. */
  private static final double SET = 1e-6;

  @TempDir private Path folder;

  private static Document page(String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    all.addAll(List.of("--format", "html"));
    return Jsoup.parse(run(all.toArray(String[]::new)).out());
  }

  private static Run run(String... words) {
    Run run = Run.of(words);
    assertEquals(0, run.status(), run::err);
    return run;
  }

  @ParameterizedTest
  @CsvSource({"solve, POND", "mend, POND", "stream, STREAM", "mend, STREAM", "section, POND"})
  void whereNoValveIsSetEachAnswerIsThatOfItsStudy(String study, String which) {
    String file = which.equals("POND") ? POND : STREAM;

    assertEquals(Run.json(study, file), Run.json("sheet", file).get(study));
  }

  @Test
  void valvesAreSetAsBalanceSaysAndAllElseIsOfTheProjectSoSet() {
    JsonNode sheet = Run.json("sheet", JOB);
    JsonNode balance = Run.json("balance", JOB);
    JsonNode valve = balance.get("valves").get(0);
    String set = "lines.low.valve.open=" + 100 * valve.get("opening").asDouble() + " %";
    JsonNode solved = Run.json("solve", JOB, "--set", set);

    assertEquals(balance, sheet.get("balance"));
    assertAlike(solved.get("points"), sheet.get("solve").get("points"));
    assertAlike(solved.get("running"), sheet.get("solve").get("running"));
    assertTrue(sheet.get("solve").get("changed").isEmpty(), "nothing that the user has changed");
  }

  private static void assertAlike(JsonNode expected, JsonNode actual) {
    if (expected.isNumber()) {
      double value = expected.asDouble();
      assertEquals(value, actual.asDouble(), SET * Math.max(1e-3, Math.abs(value)));
      return;
    }
    assertEquals(expected.size(), actual.size());
    Iterator<JsonNode> others = actual.iterator();
    expected.forEach(one -> assertAlike(one, others.next()));
  }

  /** What bounds a change may have no balance to be found, such as without any friction here. */
  @Test
  void aBoundThatIsNotFoundIsLeftOut() {
    String file = EXAMPLES.resolve("twin-falls/falls.yaml").toString();
    Run run = Run.of("sheet", file, "--set", "lines.intake.skimmer.sill=-0.003599 in");
    assertEquals(0, run.status(), run.err());
  }

  @Test
  void aPumpToBeChosenHasItsDutyAndNoReadings() {
    String[] set = {"--set", "lines.supply.pump=to be chosen"};
    JsonNode sheet = Run.json("sheet", JOB, set[0], set[1]);

    assertEquals(Run.json("duty", JOB, set[0], set[1]), sheet.get("duty"));
    assertTrue(sheet.get("solve").isNull() && sheet.get("card").isEmpty());
    assertTrue(page("sheet", JOB, set[0], set[1]).text().contains("DUTY OF THE PUMP"));
  }

  /** The tables of the page are those of the studies' pages, figure by figure. */
  @ParameterizedTest
  @CsvSource({
    "solve, weak-fall/fall.yaml, 'FALLS|PUMPS'",
    "stream, hidden-reservoir/fall.yaml, 'STREAM.*|WATER IN TRANSIT|LEVELS OF.*'",
    "balance, twin-falls/job.yaml, 'SET IN THIS ORDER'"
  })
  void tablesAreThoseOfTheStudies(String study, String file, String captions) {
    String path = EXAMPLES.resolve(file).toString();
    List<String> theirs = tables(page(study, path), captions);

    assertEquals(theirs, tables(page("sheet", path), captions));
    assertFalse(theirs.isEmpty());
  }

  private static List<String> tables(Document page, String captions) {
    return page.select("table").stream()
        .filter(table -> table.select("caption").text().matches(captions))
        .map(Element::outerHtml)
        .toList();
  }

  /** On the card stands what the day's readings of "solve" say. */
  @Test
  void theCardExpectsWhatSolveExpects() {
    Document solve = page("solve", POND);
    List<String> expected = solve.select("td[data-label=expect]").eachText();
    Document sheet = page("sheet", POND);

    assertEquals(expected, sheet.select("td[data-label=expect]").eachText());
    assertEquals(expected.size(), sheet.select("table:has(td[data-label=expect]) td.write").size());
    assertEquals(expected.size(), Run.json("sheet", POND).get("card").size());
  }

  /** The chamber of the twin falls stands 1/16 in below the pond: less than two rulers tell. */
  @Test
  void aLevelWithinItsErrorIsNotOnTheCardButOnTheLid() {
    String level = "level below \"pond\"";
    assertFalse(run("sheet", JOB).out().contains(level));
    Run.assertReported(
        run("sheet", JOB, "--for", "lid").flat(),
        level + ": usually 0 to 9/16 in; more: clean the net.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "crew", "customer", "lid"})
  void nothingIsSaidOfPumpsWhereNothingIsPumped(String whom) {
    String file = EXAMPLES.resolve("header-pond/troughs.yaml").toString();
    String[] words =
        whom.isEmpty() ? new String[] {"sheet", file} : new String[] {"sheet", file, "--for", whom};

    String text = run(words).out().toLowerCase(Locale.ROOT);

    assertFalse(text.matches("(?s).*(pump|electricity|electrician|unplug|wiring|watt).*"), text);
  }

  /**
   * Figures of a sheet are as the valves are to be set, and it says so before the first of them.
   */
  @Test
  void figuresWithThrottledValvesAreCalledThat() {
    String said = "All figures of this sheet are with the valves set";
    String valves = EXAMPLES.resolve("twin-falls/ball-valves.yaml").toString();
    String text = run("sheet", valves).out();
    assertTrue(text.contains(said) && text.indexOf(said) < text.indexOf("FALLS"), text);
    String none = EXAMPLES.resolve("small-pond/pond.yaml").toString();
    assertFalse(run("sheet", none).out().contains(said));
  }

  /** What another pump or pipe would change is for the designer; what may hurt is for all. */
  @Test
  void theCrewIsNotWarnedOfWhatOnlyTheDesignChanges() {
    String pond = EXAMPLES.resolve("small-pond/pond.yaml").toString();
    assertTrue(run("sheet", pond).out().contains("The pump is too small for the targets"));
    String crew = run("sheet", pond, "--for", "crew").out();
    assertTrue(crew.contains("12 % short of the 1,800 gph target"), crew);
    assertFalse(crew.contains("too small") || crew.contains("no speed up to"), crew);
    String danger = EXAMPLES.resolve("header-pond/troughs.yaml").toString();
    assertTrue(run("sheet", danger, "--for", "crew").out().contains("Danger. "));
  }

  @Test
  void theCustomerReadsNoJargonAndNoNotesForTheCrew() {
    String text = run("sheet", JOB, "--for", "customer").out();

    for (String word :
        List.of("K ", "head", "gph", "wire-to-water", "skimmer's sill", "to a hair")) {
      assertFalse(text.contains(word), word + " in " + text);
    }
    Run.assertReported(text, "Customer B", "a full sheet", "USD", "winter");
  }

  @Test
  void theCustomersPictureCarriesTitleFirmAndDate() {
    Element picture = page("sheet", JOB, "--for", "customer").selectFirst("figure svg");

    Run.assertReported(
        picture.text(), "Twin falls at site C", "Firm A, 14 May 2026", "high fall", "low fall");
    assertFalse(picture.text().contains("head"), picture.text());
  }

  /** A picture of many ways would be too small on paper. */
  @Test
  void aSectionOfManyWaysTakesSeveralPictures() {
    String pond = EXAMPLES.resolve("fish-pond/pond.yaml").toString();

    assertEquals(
        List.of("waterfall", "return 2"),
        page("sheet", pond).select("figure svg").stream()
            .map(Element::text)
            .filter(text -> text.contains("Levels to scale"))
            .map(text -> text.contains("waterfall") ? "waterfall" : "return 2")
            .toList());
  }

  @Test
  void theListOfMaterialsIsTheOneOfTheExample() throws IOException {
    Path list = folder.resolve("list.csv");

    Run run = run("sheet", JOB, "--materials", list.toString(), "--format", "json");

    assertEquals(
        Files.readString(EXAMPLES.resolve("twin-falls/materials.csv")), Files.readString(list));
    assertTrue(run.out().startsWith("{"), "nothing else stands in an answer for programs");
  }

  @Test
  void readingsToBeFilledInAreRefusedAtTheirPlacesAndReadOnceFilledIn() throws IOException {
    Path list = folder.resolve("readings.yaml");
    run("sheet", POND, "--readings", list.toString());
    String text = Files.readString(list);
    Run.of("weak", POND, "--readings", list.toString())
        .assertRefused("readings.yaml:6:", "this is still to be filled in", "____");

    Matcher blanks = Pattern.compile("____ \\S+?([,}].*expect )(.*)").matcher(text);
    Path filled = Files.writeString(folder.resolve("filled.yaml"), blanks.replaceAll("$2$1$2"));

    Run weak = Run.of("weak", POND, "--readings", filled.toString());
    assertEquals(0, weak.status(), weak::err);
    assertErrorsAlike(
        Run.json("sheet", POND).get("card"),
        Run.json("weak", POND, "--readings", filled.toString()).get("readings"));
    assertTrue(text.lines().filter(line -> line.contains("____ ")).count() > 3, text);
  }

  /** The card goes by the errors that the same readings have once they are read back. */
  private static void assertErrorsAlike(JsonNode card, JsonNode read) {
    assertEquals(card.size(), read.size());
    for (int i = 0; i < card.size(); i++) {
      JsonNode one = card.get(i);
      double expected = one.get("expected").asDouble();
      double error = one.get("high").asDouble() - expected;
      double within = read.get(i).get("within").asDouble();
      boolean isTime = one.get("unit").asString().equals("s");
      double shown = isTime ? within / read.get(i).get("flowM3PerS").asDouble() : within;

      assertEquals(isTime ? error / expected : error, shown, 0.05 * shown, one::toString);
    }
  }

  @Test
  void whatIsWrittenIsNeitherAnInputNorTwiceTheSame() {
    Run.of("sheet", JOB, "--materials", JOB).assertRefused("this is the project file");
    Path pdf = folder.resolve("a.PDF");
    Run.of("sheet", JOB, "--to", pdf.toString()).assertRefused("end the name in .html");
    assertFalse(Files.exists(pdf));
    String same = folder.resolve("a.html").toString();
    Run.of("sheet", JOB, "--for", "nobody").assertRefused("choose crew, customer or lid");
    assertEquals(2, Run.of("sheet", JOB, "--to", same, "--readings", same).status());
    assertFalse(Files.exists(Path.of(same)));
  }
}
