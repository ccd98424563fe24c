package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import rillwright.cli.catalogue.Catalogue;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

@Isolated
class CatalogueCommandTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... words) {
    CommandLine commandLine = new CommandLine(new CatalogueCommand());
    commandLine.setOut(new PrintWriter(out)).setErr(new PrintWriter(err));
    return commandLine.execute(words);
  }

  @ParameterizedTest
  @ValueSource(strings = {"lips", "beds", "check-valves"})
  void sectionIsPrintedAsItAlwaysWas(String section) throws IOException {
    assertEquals(0, run(section.split("-")));
    try (InputStream golden = getClass().getResourceAsStream("catalogue-" + section + ".txt")) {
      String expected = new String(golden.readAllBytes(), StandardCharsets.UTF_8);
      assertEquals(expected, out.toString().replace(System.lineSeparator(), "\n"));
    }
    assertEquals("", err.toString());
  }

  @Test
  void numbersHaveDecimalPointsInEveryLocale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      run("pipes", "flexible", "PVC", "2", "in");
    } finally {
      Locale.setDefault(before);
    }
    assertTrue(
        out.toString().contains("flexible PVC  2 in       2.049        52.0"), out.toString());
  }

  @Test
  void wholeCatalogueHasEverySectionAndANoteForEverySource() {
    assertEquals(0, run());
    String text = out.toString();
    for (String section :
        List.of(
            "pipes: ",
            "fittings: ",
            "ends: ",
            "valves: ",
            "check valves: ",
            "devices: ",
            "skimmers: ",
            "lips: ",
            "beds: ",
            "notes: ")) {
      assertTrue(text.lines().anyMatch(line -> line.startsWith(section)), section);
    }
    long notes = text.lines().filter(line -> line.matches(" +\\d+ [A-Za-z0-9].*")).count();
    Set<String> sources = new HashSet<>();
    Catalogue.standard().listPipes().forEach(pipe -> sources.add(pipe.source()));
    Catalogue.standard().listBeds().forEach(bed -> sources.add(bed.source()));
    assertTrue(notes >= sources.size(), notes + " notes");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "elbow 90, elbow 90, elbow 45",
    "pipes PE100 SDR 11, PE100 SDR 11, PE100 SDR 17",
    "flexible PVC 2.5 in, 2-1/2 in, 1-1/2 in",
    "FLEXIBLE pvc 1 1/2 in, 1-1/2 in, 2-1/2 in",
    "check valve spring, spring, swing",
    "fittings threaded, elbow 45 threaded, sweep 90",
    "gate valve, gate, butterfly",
    "filters, bead filter, skimmer",
    "boulders, boulders, stone   "
  })
  void nameShowsWhatIsCalledSoAndNothingElse(String asked, String shown, String absent) {
    assertEquals(0, run(asked.split(" ")));
    String tables = out.toString().substring(0, out.toString().indexOf("notes:"));
    assertTrue(tables.contains("  " + shown), tables);
    assertTrue(!tables.contains("  " + absent + "  "), tables);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "elbo 90 | the catalogue has nothing called \"elbo 90\"; did you mean elbow 90?",
        "fittings elbow 91 | the catalogue has nothing among the fittings called \"elbow 91\";"
            + " did you mean elbow 90, elbow 45?",
        "pipes flexble | the catalogue has nothing among the pipes called \"flexble\";"
            + " did you mean flexible PVC?",
        "poly | the catalogue has nothing called \"poly\"; did you mean polyethylene?",
        "lips graniet | the catalogue has nothing among the lips called \"graniet\";"
            + " they are metal, plastic, stone, broad, boulders",
        "zzzz | the catalogue has nothing called \"zzzz\"; its sections are pipes, fittings,"
            + " ends, valves, check valves, devices, skimmers, lips, beds"
      })
  void nameItLacksIsAnsweredWithTheNearest(String asked, String message) {
    assertEquals(2, run(asked.split(" ")));
    assertEquals(message, err.toString().lines().findFirst().orElseThrow());
    assertEquals("", out.toString());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "xml | Invalid value for option '--format': unknown format \"xml\"; choose text, html, json"
            + " or csv",
        "csv | csv holds one table; ask for one of pipes, fittings, ends, valves, check valves,"
            + " devices, skimmers, lips, beds"
      })
  void formatThatCannotBeIsRefused(String format, String message) {
    assertEquals(2, run("--format", format));
    assertEquals(message, err.toString().lines().findFirst().orElseThrow());
    assertEquals("", out.toString());
  }

  @Test
  void jsonHoldsTheWholeCatalogueInSi() {
    assertEquals(0, run("--format", "json"));
    JsonNode root = JsonMapper.shared().readTree(out.toString());
    Catalogue catalogue = Catalogue.standard();
    assertEquals(catalogue.listPipes().size(), root.get("pipes").size());
    assertEquals(catalogue.listFittings().size(), root.get("fittings").size());
    assertEquals(catalogue.listValveOpenings().size(), root.get("valves").size());
    assertEquals(catalogue.listCheckValves().size(), root.get("checkValves").size());
    assertEquals(catalogue.listLips().size(), root.get("lips").size());
    assertEquals(catalogue.listBeds().size(), root.get("beds").size());
    assertEquals(catalogue.listEnds().size(), root.get("ends").size());
    assertEquals(catalogue.listDevices().size(), root.get("devices").size());
    assertEquals(catalogue.listSkimmers().size(), root.get("skimmers").size());
    JsonNode first = root.get("pipes").get(0);
    assertEquals("PVC schedule 40", first.get("material").asString());
    assertEquals(0.609 * 0.0254, first.get("insideM").asDouble(), 1e-12);
    assertEquals(1e-5, first.get("greatestRoughnessM").asDouble(), 1e-15);
    JsonNode cobble =
        root.get("beds")
            .valueStream()
            .filter(bed -> bed.get("name").asString().equals("cobble"))
            .findFirst()
            .orElseThrow();
    assertTrue(cobble.get("manningN").isNull());
    assertEquals(0.09, cobble.get("stoneM").asDouble());
  }

  @Test
  void csvHasOneLineARowAndTheSameCellsInEach() {
    assertEquals(0, run("fittings", "--format", "csv"));
    List<String> lines = out.toString().lines().toList();
    assertEquals("type,size,lossCoefficient,least,greatest,source", lines.get(0));
    assertEquals(1 + Catalogue.standard().listFittings().size(), lines.size());
    assertTrue(lines.get(1).startsWith("elbow 90,1/2 in,0.81,0.42,1.5,"), lines.get(1));
  }

  @Test
  void csvQuotesCellsThatHoldCommas() {
    assertEquals(0, run("beds", "clean", "straight", "--format", "csv"));
    assertEquals(
        "clean straight,0.03,,0.025,0.033,no rifts or deep pools,"
            + "\"Chow: Open-Channel Hydraulics (1959), Table 5-6, natural streams\"",
        out.toString().lines().toList().get(1));
  }

  @Test
  void controlCharactersOfANameItLacksDoNotReachTheTerminal() {
    assertEquals(2, run("zz\u001b[31mzz"));
    assertFalse(err.toString().contains("\u001b"), err.toString());
  }

  @Test
  void noLineOfTextIsWiderThanAPage() {
    run();
    assertEquals(List.of(), out.toString().lines().filter(line -> line.length() > 100).toList());
  }

  @Test
  void everyLineOfTextIsFreeOfTrailingSpaces() {
    run();
    assertTrue(out.toString().lines().noneMatch(line -> line.endsWith(" ")));
  }
}
