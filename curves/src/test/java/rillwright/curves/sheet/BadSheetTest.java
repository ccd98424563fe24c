package rillwright.curves.sheet;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.curves.sheet.fault.SheetFault;
import rillwright.curves.sheet.fault.SheetFaults;

class BadSheetTest {
  private static final String GOOD =
      """
      # maker: Maker 1
      # price: 389 USD
      # variable speed: 40..100 %
      # solids: 1/2 in
      flow [gph],head [ft],power [W]
      0,31,420
      1000,29.5,455
      4000,12,500
      """;

  private static final String FLOW_UNITS =
      "gph, gpm, imp gph, imp gpm, cfs, L/h, L/min, L/s, m3/h or m3/s";

  private static SheetFaults refused(byte[] content) {
    return assertThrows(SheetFaults.class, () -> new DataSheetReader(1000).read("p.csv", content));
  }

  private static String messageOf(String content) {
    return refused(content.getBytes(UTF_8)).getMessage();
  }

  static Stream<Arguments> wrongSheets() {
    String heads = "flow [gph],head [ft]\n";
    String powers = "flow [gph],head [ft],power [W]\n";
    return Stream.of(
        arguments(
            "",
            "1:1: the sheet is empty; write headings such as \"flow [gph],head [ft],power [W]\" and"
                + " the points of the curve below them"),
        arguments(
            "0,31\n1000,29\n",
            "1:1: the headings are missing; the first line must name the columns with their units,"
                + " such as \"flow [gph],head [ft],power [W]\""),
        arguments(
            "flow [gph],power [W]\n0,31\n9,1\n",
            "1:1: no column \"head\"; the headings need one such as \"head [ft]\""),
        arguments(
            "flow [gph],haed [ft]\n0,31\n9,1\n",
            "1:12: \"haed [ft]\" is not a column of this sheet; did you mean \"head [ft]\"?"),
        arguments(
            "Q [gpm],P [bar]\n0,31\n9,1\n",
            "1:1: no column \"head\"; the headings need one such as \"head [ft]\""),
        arguments(
            "Q (gph),H\n0,31\n9,1\n",
            "1:9: the column \"head\" has no unit; write it in brackets, such as \"head [ft]\""),
        arguments(
            "flow [gph],H [ft],Q [gpm]\n0,31,1\n9,1,2\n",
            "1:19: a second column \"flow\"; leave one of them out"),
        arguments(
            "flow [gph],head [ft],input [W]\n0,31,3\n9,1,3\n",
            "1:22: \"input [W]\" is not a column of this sheet; did you mean \"power [W]\", the"
                + " electrical power drawn? If it is something else, leave it out"),
        arguments(
            "flow [gph],head [ft],flow [L/h]\n0,31,0\n9,1,0\n",
            "1:22: a second column \"flow\"; leave one of them out"),
        arguments(
            "flow,head [ft]\n0,31\n9,1\n",
            "1:1: the column \"flow\" has no unit; write it in brackets, such as \"flow [gph]\""),
        arguments(
            "flow [GPH],head [ft]\n0,31\n9,1\n",
            "1:1: \"GPH\" is not a unit of flow; "
                + FLOW_UNITS
                + " would do; did you mean \"gph\"?"),
        arguments(
            "flow [W],head [ft]\n0,31\n9,1\n",
            "1:1: \"W\" is not a unit of flow; " + FLOW_UNITS + " would do"),
        arguments(
            heads + "0,31\n1000,abc\n",
            "3:6: head \"abc\" is not a number; write one such as 29.5"),
        arguments(
            heads + "0,31 ft\n1000,3\n",
            "2:3: head \"31 ft\" is not a number; write the number alone, its unit stands in the"
                + " heading"),
        arguments(
            heads + "0,31 # shut\n1000,3\n",
            "2:3: head \"31 # shut\" is not a number; a comment needs a line of its own"),
        arguments(
            heads + "\"1,000\",31\n2000,3\n",
            "2:2: flow \"1,000\" has a mark between thousands; write the digits without it"),
        arguments(
            heads + "0,\"31,5\"\n2000,3\n",
            "2:4: head \"31,5\" has a decimal comma; write a decimal point, or put semicolons"
                + " between all columns"),
        arguments(
            heads + "0,31,5\n2000,3\n",
            "2:6: \"5\" has no heading: the row has more cells than there are columns; write"
                + " 2000 and not 2,000, and decimals with a point (or semicolons between all"
                + " columns)"),
        arguments(
            heads + "0,31\n2,000,22.5\n",
            "3:7: \"22.5\" has no heading: the row has more cells than there are columns; write"
                + " 2000 and not 2,000, and decimals with a point (or semicolons between all"
                + " columns)"),
        arguments(
            "flow [gph]\thead [ft]\n0\t31\n1000\t3\n",
            "1:1: tabs stand between the columns; put commas there, or semicolons where decimals"
                + " have a comma"),
        arguments(
            "flow [gph];head [ft]\n1.000;31\n2000;3\n",
            "2:1: flow \"1.000\" has a decimal point; between semicolons decimals have a comma,"
                + " such as 29,5, and thousands no mark"),
        arguments(heads + "0,-3\n1000,3\n", "2:3: head \"-3\" is negative; it must be 0 or more"),
        arguments(
            heads + "0,NaN\n1000,3\n",
            "2:3: head \"NaN\" is not a finite number; write the number of the data sheet"),
        arguments(
            heads + "0,1e999\n1000,3\n",
            "2:3: head \"1e999\" is not a finite number; write the number of the data sheet"),
        arguments(
            "flow [m3/s],head [ft]\n0,31\n1000,3\n",
            "3:1: flow \"1000\" is more than 10 m3/s; is its unit right?"),
        arguments(heads + "0,31\n1000\n", "3:5: the head is missing in this row"),
        arguments(heads + ",31\n1000,3\n", "2:1: the flow is missing in this row"),
        arguments(
            heads + "1000,20\n0,31\n\n1000,12\n",
            "5:1: flow \"1000\" is the same as \"1000\" in line 2; leave one of the two out"),
        arguments(
            heads + "0,31\n1000,20\n1000.0,12\n",
            "4:1: flow \"1000.0\" is the same as \"1000\" in line 3; leave one of the two"
                + " out"),
        arguments(
            heads,
            "1:1: a pump's curve needs two points or more, each with a flow and a head; here is"
                + " none"),
        arguments(
            "\n# x\n" + heads + "0,31\n",
            "3:1: a pump's curve needs two points or more, each with a flow and a head; here is"
                + " only one"),
        arguments(
            heads + "0,31\n1000,31\n",
            "3:6: head \"31\" is the last and is not below the first, \"31\" in line 2; a pump's"
                + " head falls as its flow rises"),
        arguments(
            powers + "0,31,400\n1000,20,\n",
            "1:1: only one point has a power; give it at two points or more, or at none"),
        arguments(heads + "\"0,31\n1000,20\n", "2:1: a quote (\") begins here and does not end"),
        arguments(
            heads + "\"0\"1,31\n1000,20\n",
            "2:4: something follows a closing quote (\"); write a quote inside a cell twice"),
        arguments(
            "# price: cheap\n" + GOOD.substring(GOOD.indexOf("flow")),
            "1:10: \"cheap\" is not a price; write the amount and the three letters of its"
                + " currency, such as 389 USD, or leave the line out"),
        arguments(
            "#  maker:\n" + GOOD.substring(GOOD.indexOf("flow")),
            "1:1: nothing after \"# maker:\"; write it or leave the line out"),
        arguments("# maker: a\n" + GOOD, "2:1: a second \"# maker\"; the first is in line 1"),
        arguments(
            "# min submergance: 8 in\n" + GOOD,
            "1:1: \"min submergance\"; did you mean \"# min submergence\"?"),
        arguments(
            "# min submergence: 8 hands\n" + GOOD,
            "1:20: \"8 hands\" is not a length for \"min submergence\"; write a number and ft, in,"
                + " m, cm or mm, or leave the line out"),
        arguments(
            "# variable speed: 100..40 %\n" + GOOD.substring(GOOD.indexOf("# solids")),
            "1:19: \"100..40 %\" is not a range of speeds; write the least and the greatest, above"
                + " 0 and up to 200 %, such as 40..100 %, or leave the line out"));
  }

  @ParameterizedTest
  @MethodSource("wrongSheets")
  void saysWhereWhatAndWhatWouldBeRight(String content, String expected) {
    String first = messageOf(content).lines().findFirst().orElseThrow();
    assertEquals("p.csv:" + expected, first);
  }

  @Test
  void tellsAllFaultsAtOnceInTheirOrder() {
    SheetFaults faults =
        refused("# price: 3\nflow [GPH],head [ft]\n0,x\n5,-1\n4,NaN\n3,1,7\n".getBytes(UTF_8));
    assertEquals(
        List.of("1:10", "2:1", "3:3", "4:3", "5:3", "6:5"),
        faults.faults().stream().map(fault -> fault.line() + ":" + fault.column()).toList());
  }

  @Test
  void countsColumnsInCharactersAsAnEditorDoes() {
    // the first cell holds a character beyond the basic plane, two units in memory
    SheetFault fault =
        refused("note,flow [gph],head [ft]\n\uD83D\uDCA7,0,x\n,9,1\n".getBytes(UTF_8))
            .faults()
            .get(0);
    assertEquals(new SheetFault(2, 5, fault.message()), fault);
  }

  @Test
  void refusesWhatIsNotAText() {
    byte[] picture = {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0, 0, 13};
    assertTrue(refused(picture).getMessage().contains("the sheet is not a text"));
    assertTrue(messageOf(GOOD + "\u0007").startsWith("p.csv:9:1: the sheet is not a text"));
  }

  @Test
  void saysWhereACharacterIsNotUtf8() {
    assertEquals(
        "p.csv:1:8: a character here is not UTF-8; save the sheet as CSV in UTF-8",
        refused("flow [m\u00b3/h],head [m]\n0,9\n5,1\n".getBytes(ISO_8859_1)).getMessage());
  }

  @Test
  void refusesMoreThanAMegabyte() {
    assertTrue(
        refused(new byte[1_000_001]).getMessage().startsWith("p.csv:1:1: the sheet is larger"));
  }

  @Test
  void refusesLinesWithoutEnd() {
    String message = messageOf("flow [gph],head [ft]\n1" + ",000".repeat(100_000) + ",3\n");
    assertTrue(message.startsWith("p.csv:2:1: this line has more than 2000 characters"), message);
  }

  @Test
  void tellsOnlyTheFirstFiftyOfVeryManyFaults() {
    SheetFaults faults = refused(("flow [gph],head [ft]\n" + "x,1\n".repeat(200)).getBytes(UTF_8));
    assertEquals(51, faults.faults().size());
    assertEquals("150 more faults after this one", faults.faults().get(50).message());
  }

  @Test
  void quotesNothingThatCouldSteerATerminal() {
    String message = messageOf("flow [gph],head [ft]\n0,\u202e3\n9,1\n");
    assertTrue(message.contains("\"\\u202e3\""), message);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4})
  void anyOtherBytesAreASheetOrItsFaultsAndNothingElse(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    String pieces = "0123456789.,;\"#[]%-+eE \t\r\n:/NaninfgphftWm\u00b3";
    int sheets = 0;
    int refusals = 0;
    for (int trial = 0; trial < 1500; trial++) {
      StringBuilder text = new StringBuilder(GOOD);
      int changes = random.nextInt(1, 8);
      for (int i = 0; i < changes; i++) {
        int at = random.nextInt(text.length());
        int end = Math.min(text.length(), at + random.nextInt(4));
        int piece = random.nextInt(pieces.length());
        text.replace(at, end, pieces.substring(piece, Math.min(pieces.length(), piece + 2)));
      }
      byte[] bytes = text.toString().getBytes(UTF_8);
      if (random.nextInt(10) == 0) {
        bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
      }
      try {
        DataSheet sheet = new DataSheetReader(1000).read("p.csv", bytes);
        assertTrue(Double.isFinite(sheet.curve().headAt(1e-3)), "seed " + seed + ": " + text);
        sheets++;
      } catch (SheetFaults faults) {
        assertTrue(!faults.faults().isEmpty(), "seed " + seed + ": " + text);
        refusals++;
      }
    }
    assertTrue(sheets > 30 && refusals > 30, sheets + " sheets, " + refusals + " refusals");
  }
}
