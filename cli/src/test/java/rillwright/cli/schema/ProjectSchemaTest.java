package rillwright.cli.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.command.Run;
import rillwright.cli.file.ProjectReader;
import rillwright.curves.unit.Unit;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ProjectSchemaTest {
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(PublishedSchema.PROJECT.text(), InputFormat.JSON);
  private static final JsonNode DOCUMENT =
      JsonMapper.shared().readTree(PublishedSchema.PROJECT.text());

  private static String everyPart() throws IOException {
    try (InputStream stream = ProjectSchemaTest.class.getResourceAsStream("every-part.yaml")) {
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void projectThatUsesEverythingIsValid() throws IOException {
    assertEquals(List.of(), SCHEMA.validate(everyPart(), InputFormat.YAML));
  }

  @Test
  void projectThatUsesEverythingIsReadByTheProgram(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("every-part.yaml");
    Files.writeString(file, everyPart());
    Files.createDirectory(folder.resolve("pumps"));
    Files.writeString(folder.resolve("pumps/D-60.csv"), "flow [m3/h],head [m]\n0,4\n10,2\n");
    assertEquals("Demo 40", ProjectReader.read(file, List.of()).title());
  }

  /** Files that name a sign as earlier versions did stay readable, for the schema too. */
  @ParameterizedTest
  @ValueSource(strings = {"always", "weak only below", "noise", "trips", "hot pump", "rain"})
  void formerSignsAreTakenByBoth(String sign, @TempDir Path folder) throws IOException {
    String text = Files.readString(Path.of("../examples/weak-fall/fall.yaml"));
    String former = text.replaceFirst("signs: \\[.*]", "signs: [" + sign + "]");
    assertNotEquals(text, former);
    assertEquals(List.of(), SCHEMA.validate(former, InputFormat.YAML));
    Path sheets = Files.createDirectory(folder.resolve("pumps"));
    Path sheet = Path.of("../examples/weak-fall/pumps/P-400.csv");
    Files.copy(sheet, sheets.resolve(sheet.getFileName()));
    Path file = Files.writeString(folder.resolve("fall.yaml"), former);
    Run check = Run.of("check", file.toString());
    assertEquals(0, check.status(), check.err());
  }

  @Test
  void schemaItselfIsValidUnderItsDraft() {
    Schema draft =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    for (PublishedSchema schema : PublishedSchema.values()) {
      assertEquals(List.of(), draft.validate(schema.text(), InputFormat.JSON), schema.fileName());
    }
  }

  /** What is replaced, by what, and where the fault is then reported. */
  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "rillwright: 1 | rillwright: 2 | /rillwright",
        "show: metric | show: imperial | /show",
        "title: Demo 40 | titel: Demo 40 | ",
        "temperature: 15 C | temperature: 15 | /water",
        "0.31 EUR/kWh | 0.31 EUR | /running/price",
        "7.40 EUR/m | 7.40 EUR | /prices/pipe",
        "overflow: 30 mm | overflow: 30 | /points/pond/overflow",
        "overflow: 30 mm | overflow: 30 gph | /points/pond/overflow",
        "overflow: 30 mm | overflw: 30 mm | /points/pond",
        "{level: -90 cm, area: 6 m2} | {level: -90 cm} | /points/pond/shape/0",
        "kind: chamber | kind: chambre | /points/chamber",
        "{kind: chamber, floor: -85 cm, | {kind: chamber, | /points/chamber",
        "draw: 120 L/h | draw: 1,5 m3/h | /points/split",
        "width: 70 cm, lip: stone | width: 70 cm, lip: granite | /points/high fall/lip",
        "width: 70 cm, lip: stone | lip: stone | /points/high fall",
        "target: 20 m3/h/m | target: 20 | /points/high fall/target",
        "shape: v notch, angle: 90 | shape: v notch | /points/notch/weir",
        "elevation: 1.4 m, nozzle | nozzle | /points/jet",
        "skimmer: {width: 35 cm | skimer: {width: 35 cm | /lines/intake/parts/0",
        "sill: -11 cm, | | /lines/intake/parts/0/skimmer",
        "size: 63 mm | size: 63 | /lines/supply/pipe/size",
        "material: PVC-U PN 10, | material: PVC-U, | /lines/supply/pipe/material",
        "count: 2, arranged | count: 2.5, arranged | /lines/supply/parts/0/pump",
        "check valve: {type: swing} | check valve: {type: swung} | /lines/supply/parts/2",
        "valve: {type: ball, open: 100 %} | valve: {type: ball} | /lines/supply/parts/4/valve",
        "valve: {k: 4} | valve: {k: 4, open: 50 %} | /lines/side/parts/3/valve",
        "run: 14 m 50 cm | run: 14 | /lines/supply/parts/6/run",
        "type: elbow 90, | type: elbow 91, | /lines/supply/parts/7/fitting/type",
        "exponent: 1.8 | exponent: 3 | /lines/supply/parts/8/filter/rating/exponent",
        "factor: 0.02} | factor: 0.02, hazen c: 150} | /lines/side/parts/0/run",
        "loss: {k: 2.5} | loss: {k: -2.5} | /lines/up/parts/3/loss/k",
        "- loss: {k: 2.5} | - {loss: {k: 2.5}, run: 3 m} | /lines/up/parts/3",
        "from: cistern | form: cistern | /lines/spare",
        "price: 389 EUR | price: 389 | /pumps/D-38",
        "bed: cobble | bed: cobbles | /streams/main/reaches/3/bed",
        "bed: {n: 0.04} | bed: {n: 0.04, stone: 60 mm} | /streams/main/reaches/4/bed",
        "bed: {n: 0.04} | bed: {n: 4} | /streams/main/reaches/4/bed",
        "depth: 35 cm, crest width | crest width | /streams/main/reaches/2/pool",
        "flow: 2.9 m3/h, within | within | /readings/0",
        "bucket: 10 L, time: 12.4 s | bucket: 10 L | /readings/1",
        "when: valve shut, valve: supply | when: valve shut | /readings/4",
        "when: pump off | when: stopped | /readings/5/when",
        "evaporation: 5 mm/day | evaporation: 5 mm | /evaporation"
      })
  void brokenProjectIsRefusedWhereItIsBroken(String right, String wrong, String place)
      throws IOException {
    String whole = everyPart();
    String broken = whole.replaceFirst(Pattern.quote(right), wrong == null ? "" : wrong);
    assertNotEquals(whole, broken, "the case changes something");
    List<Error> errors = SCHEMA.validate(broken, InputFormat.YAML);
    assertFalse(errors.isEmpty(), "refused");
    String expected = place == null ? "" : place;
    assertTrue(
        errors.stream()
            .allMatch(error -> error.getInstanceLocation().toString().startsWith(expected)),
        errors::toString);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "38 ft",
        "38ft",
        ".5 in",
        "3/4 in",
        "1-1/2 in",
        "1 1/2 in",
        "7 ft 3 in",
        "1 m 20 cm",
        "-1 ft 6 in",
        "+2 m",
        "−2 m",
        "1.004e-6 m",
        "60 ft ± 5 ft",
        "60 ft +- 5 ft",
        "0.002 mm .. 0.02 mm",
        "0.002mm..0.02mm"
      })
  void lengthsAreWrittenInEveryWayOfTheGrammar(String length) {
    assertTrue(pattern("length").matcher(length).matches());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "38",
        "ft",
        "1,5 ft",
        "1,000 ft",
        "38 ells",
        "38 gph",
        "38 ft 2",
        "3//4 in",
        "1 ft .. 2",
        "two ft",
        "",
        "--2 ft",
        "1 ft ± ",
        "1.2.3 ft"
      })
  void whatIsNoLengthIsNone(String length) {
    assertFalse(pattern("length").matcher(length).matches());
  }

  private static Pattern pattern(String definition) {
    return Pattern.compile(DOCUMENT.at("/$defs/" + definition + "/pattern").asString());
  }

  @ParameterizedTest
  @EnumSource
  void everyUnitOfTheProgramIsAllowedWhereItBelongs(Unit unit) {
    String definition =
        switch (unit.dimension()) {
          case LENGTH -> "length";
          case FLOW -> "flow";
          case FLOW_PER_WIDTH -> "flowPerWidth";
          case PRESSURE -> "pressure";
          case AREA -> "area";
          case VOLUME -> "volume";
          case POWER -> "power";
          case TIME -> "time";
          case SPEED -> "speed";
          case DENSITY -> "density";
          case KINEMATIC_VISCOSITY -> "viscosity";
          case SHARE -> "share";
        };
    for (String symbol : unit.symbols()) {
      assertTrue(pattern(definition).matcher("2 " + symbol).matches(), symbol);
    }
  }

  @Test
  void knownNamesAreThoseOfTheCatalogue() {
    Catalogue catalogue = Catalogue.standard();
    assertTaken(catalogue.materials(), "/$defs/material/anyOf");
    assertTaken(catalogue.fittingTypes(), part("fitting"));
    assertTaken(catalogue.valveTypes(), part("valve"));
    assertTaken(catalogue.checkValveTypes(), part("check valve"));
    assertTaken(catalogue.lips(), "/$defs/lip/anyOf");
    assertTaken(catalogue.beds(), "/$defs/bed/anyOf");
  }

  private static String part(String kind) {
    return "/$defs/part/properties/" + kind + "/properties/type/anyOf";
  }

  /** Names are offered as the catalogue has them and taken in capitals and with more blanks. */
  private static void assertTaken(List<String> names, String pointer) {
    List<String> offered = new ArrayList<>();
    DOCUMENT.at(pointer + "/0/enum").forEach(each -> offered.add(each.asString()));
    assertEquals(names, offered);
    Pattern spellings = Pattern.compile(DOCUMENT.at(pointer + "/1/pattern").asString());
    for (String name : names) {
      String other = " " + name.toUpperCase(Locale.ROOT).replace(" ", "  ");
      assertTrue(spellings.matcher(other).matches(), name);
      assertFalse(spellings.matcher(name + "x").matches(), name);
    }
  }

  @Test
  void everyFieldOfThePartsIsExplained() {
    JsonNode parts = DOCUMENT.at("/$defs/part/properties");
    List<String> kinds =
        Arrays.asList(
            "run",
            "fitting",
            "valve",
            "check valve",
            "skimmer",
            "filter",
            "pump",
            "gauge",
            "high point",
            "loss");
    for (String kind : kinds) {
      assertFalse(parts.path(kind).path("description").asString("").isBlank(), kind);
    }
    assertEquals(kinds.size(), parts.size());
  }
}
