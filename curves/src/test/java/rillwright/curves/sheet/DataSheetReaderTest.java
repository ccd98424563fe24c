package rillwright.curves.sheet;

import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.curves.sheet.fact.Price;
import rillwright.curves.sheet.fact.SheetFacts;
import rillwright.curves.sheet.fact.SpeedRange;
import rillwright.curves.sheet.fault.SheetFaults;
import rillwright.solver.law.pump.PumpPoint;

@SuppressWarnings(
    "StringConcatToTextBlock") // their line ends differ, which a text block would hide
class DataSheetReaderTest {
  /** US gallon an hour, m³/s: 231 in³ of 25.4 mm (NIST SP 811, 2008, B.8, from memory). */
  private static final double GPH = 231 * 0.0254 * 0.0254 * 0.0254 / 3600;

  private static final double FT = 0.3048;

  private static final String PLAIN =
      """
      flow [gph],head [ft],power [W]
      0,31,420
      1000,29.5,455
      4000,12,500
      """;

  private static DataSheet read(String content) throws SheetFaults {
    return new DataSheetReader(1000).read("pump.csv", content.getBytes(UTF_8));
  }

  private static void assertIsPlainPump(DataSheet sheet) {
    List<PumpPoint> points = sheet.curve().points();
    assertEquals(3, points.size());
    assertEquals(1000 * GPH, points.get(1).flowM3PerS(), 1e-15);
    assertEquals(29.5 * FT, points.get(1).headM(), 1e-12);
    assertEquals(OptionalDouble.of(455), points.get(1).powerW());
    assertEquals(31 * FT, points.get(0).headM(), 1e-12);
    assertEquals(4000 * GPH, points.get(2).flowM3PerS(), 1e-15);
  }

  @Test
  void readsFlowHeadAndPowerInSi() throws SheetFaults {
    DataSheet sheet = read(PLAIN);
    assertEquals("pump.csv", sheet.name());
    assertIsPlainPump(sheet);
    assertEquals(SheetFacts.none(), sheet.facts());
    assertEquals(List.of(), sheet.passedOver());
  }

  @ParameterizedTest
  @CsvSource({
    "asynchronous wet rotor Submersible, true",
    "solids-handling submersible, true",
    "external non-submersible, false",
    "self-priming, false"
  })
  void aKindSaysWhetherThePumpStandsUnderWater(String kind, boolean under) throws SheetFaults {
    assertEquals(under, read("# kind: " + kind + "\n" + PLAIN).facts().isSubmersible());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        // columns in another order, capitals, blanks
        "Power [W] , FLOW [gph] ,Head[ft]\n420,0,31\n 455 ,\t1000, 29.5\n500,4000,12",
        // other usual headings, round brackets, points in another order
        "Q (gph),H (ft),P (W)\n4000,12,500\n0,31,420\n1000,29.5,455\n",
        "Flow rate [gph],TDH [ft],P1 [W]\n4000,12,500\n1000,29.5,455\n0,31,420\n",
        "capacity [gph],total head [ft],input power [W]\n0,31,420\n1000,29.5,455\n4000,12,500\n",
        // Windows line ends, blank lines, no line end at the end
        "\r\n\r\n"
            + "flow [gph],head [ft],power [W]\r\n"
            + "0,31,420\r\n\r\n"
            + "1000,29.5,455\r\n"
            + "  \r\n"
            + "4000,12,500",
        // old line ends
        "flow [gph],head [ft],power [W]\r0,31,420\r1000,29.5,455\r4000,12,500\r",
        // byte-order mark
        "\uFEFFflow [gph],head [ft],power [W]\n0,31,420\n1000,29.5,455\n4000,12,500\n",
        // semicolons and decimal commas, cells of nothing behind
        "flow [gph];head [ft];power [W];;\n0;31;420;;\n1000;29,5;455;;\n;;;;\n4000;12,00;5e2;;\n",
        // quotes
        "\"flow [gph]\",\"head [ft]\",power [W]\n\"0\",31,420\n1000,\" 29.5 \",455\n4000,12,500\n",
        // numbers in every spelling
        "flow [gph],head [ft],power [W]\n0.0,+31.,4.2e2\n1e3,2950E-2,455\n4000,12,500\n",
      })
  void readsTheSameSheetInManySpellings(String content) throws SheetFaults {
    assertIsPlainPump(read(content));
  }

  @Test
  void readsAllUnitsOfEachColumn() throws SheetFaults {
    List<PumpPoint> points =
        read("head [psi],power [hp],flow [m³/h]\n10,0.5,3.6\n5,1,7.2\n").curve().points();
    assertEquals(0.001, points.get(0).flowM3PerS(), 1e-15);
    // 1 psi = 6894.757293168361 Pa, 1 hp = 745.6998715822702 W (NIST SP 811, 2008, from memory)
    assertEquals(68947.57293168361 / (1000 * 9.80665), points.get(0).headM(), 1e-12);
    assertEquals(745.6998715822702 / 2, points.get(0).powerW().getAsDouble(), 1e-9);
  }

  @Test
  void turnsAPressureIntoTheHeadOfTheWaterAtHand() throws SheetFaults {
    byte[] sheet = "flow [L/s],head [kPa]\n0,98.0665\n1,0\n".getBytes(UTF_8);
    DataSheet warm = new DataSheetReader(980).read("pump.csv", sheet);
    assertEquals(10 / 0.98, warm.curve().points().get(0).headM(), 1e-12);
  }

  @Test
  void keepsTheFactsAndTheOtherComments() throws SheetFaults {
    DataSheet sheet =
        read(
            "# made for the example\n# maker: Maker 1, 2 & 3\n#price: 389.50 USD\n"
                + PLAIN
                + "# Kind: submersible\n  # min submergence: 8 in\n# variable speed: 40..100 %\n"
                + "#\n# solids: 1-1/2 in\n# cord: 20 ft, three wires\n");
    SheetFacts facts = sheet.facts();
    assertEquals(Optional.of("Maker 1, 2 & 3"), facts.maker());
    assertEquals(Optional.of(new Price(389.5, "USD")), facts.price());
    assertEquals(Optional.of("submersible"), facts.kind());
    assertEquals(0.2032, facts.needs().minSubmergenceM().getAsDouble(), 1e-12);
    assertEquals(0.4, facts.variableSpeed().orElseThrow().least(), 1e-12);
    assertEquals(1, facts.variableSpeed().orElseThrow().greatest(), 1e-12);
    assertEquals(0.0381, facts.solidsM().getAsDouble(), 1e-12);
    assertEquals(List.of("made for the example", "cord: 20 ft, three wires"), facts.remarks());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "# price: 389,50 EUR;;\n# maker: Maker 1;;\n",
        "\"# price: 389,50 EUR\";;\n\"# maker: Maker 1\"\n",
      })
  void readsCommentsAsASpreadsheetSavesThem(String comments) throws SheetFaults {
    SheetFacts facts = read(comments + "flow [gph];head [ft];\n0;31;\n1000;29,5;\n").facts();
    assertEquals(Optional.of(new Price(389.5, "EUR")), facts.price());
    assertEquals(Optional.of("Maker 1"), facts.maker());
  }

  @ParameterizedTest
  @ValueSource(strings = {"40..100 %", "40 % .. 100 %", "40 ..100%", "40%..100%"})
  void readsARangeOfSpeedsInAnySpacing(String range) throws SheetFaults {
    SpeedRange speeds =
        read("# variable speed: " + range + "\n" + PLAIN).facts().variableSpeed().orElseThrow();
    assertEquals(0.4, speeds.least(), 1e-12);
    assertEquals(1, speeds.greatest(), 1e-12);
  }

  @Test
  void passesOtherColumnsOverAndTellsWhich() throws SheetFaults {
    DataSheet sheet =
        read(
            """
            flow [gph],head [ft],power [W],npsh [ft],shaft power [hp],note
            0,31,420,6,0.4,"shut, dry"
            1000,29.5,455,6,0.4,
            4000,12,500,7,,
            """);
    assertIsPlainPump(sheet);
    assertEquals(List.of("npsh [ft]", "shaft power [hp]", "note"), sheet.passedOver());
  }

  @Test
  void leavesThePowerOutWhereTheSheetDoes() throws SheetFaults {
    DataSheet sheet = read("flow [gph],head [ft],power [W]\n0,31,420\n1000,29.5,\n4000,12,500\n");
    assertEquals(OptionalDouble.empty(), sheet.curve().points().get(1).powerW());
    assertTrue(sheet.curve().powerAt(0).isPresent());
    assertTrue(read("flow [gph],head [ft]\n0,31\n900,2\n").curve().powerAt(0).isEmpty());
  }

  @Test
  void keepsAHumpAsPublishedAndLetsTheCurveSayThatItIsLevelled() throws SheetFaults {
    DataSheet sheet = read("flow [gph],head [ft]\n0,30\n1000,31\n4000,12\n");
    assertTrue(sheet.curve().isLevelled());
    assertEquals(30 * FT, sheet.curve().points().get(0).headM(), 1e-12);
    assertFalse(read(PLAIN).curve().isLevelled());
  }

  @Test
  void refusesUtf16WithTheRemedy() {
    SheetFaults faults =
        org.junit.jupiter.api.Assertions.assertThrows(
            SheetFaults.class,
            () -> new DataSheetReader(1000).read("pump.csv", PLAIN.getBytes(UTF_16)));
    assertEquals(
        "pump.csv:1:1: the sheet is saved as UTF-16; save it as CSV in UTF-8", faults.getMessage());
  }
}
