package rillwright.curves.sheet.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.curves.sheet.fault.FaultList;
import rillwright.curves.sheet.fault.SheetFault;
import rillwright.curves.sheet.fault.SheetFaults;

class CellSplitterTest {
  private static List<SheetFault> noted(FaultList faults) {
    return assertThrows(SheetFaults.class, () -> faults.throwIfAny("p.csv")).faults();
  }

  private static List<Cell> split(String line) {
    return new CellSplitter(Separator.COMMA, new FaultList()).cellsOf(new SheetLine(1, line));
  }

  private static List<String> texts(String line) {
    return split(line).stream().map(Cell::text).toList();
  }

  /** RFC 4180 (2005), section 2, rules 4 to 7. */
  @Test
  void splitsAsTheStandardSays() {
    assertEquals(List.of("aaa", "bbb", "ccc"), texts("aaa,bbb,ccc"));
    assertEquals(List.of("aaa", "bbb", "ccc"), texts("\"aaa\",\"bbb\",\"ccc\""));
    assertEquals(List.of("aaa", "b\"bb", "ccc"), texts("\"aaa\",\"b\"\"bb\",\"ccc\""));
    assertEquals(List.of("a,b", "c"), texts("\"a,b\",c"));
  }

  @Test
  void keepsEmptyCells() {
    assertEquals(List.of(""), texts(""));
    assertEquals(List.of("", "", ""), texts(",,"));
    assertEquals(List.of("a", ""), texts("a,"));
    assertEquals(List.of("", "a"), texts("\"\",a"));
  }

  @Test
  void leavesBlanksAroundCellsOut() {
    assertEquals(List.of("a b", "c", "d"), texts("  a b , \" c \" ,\td"));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {"a,b|1 3", "'  a,  b'|3 7", "\"a\",\"b\"|2 6", "\uD83D\uDCA7,b|1 3", ",,|1 2 3"})
  void saysWhereTheTextOfEachCellBegins(String line, String columns) {
    List<String> found = split(line).stream().map(cell -> "" + cell.column()).toList();
    assertEquals(columns, String.join(" ", found));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "a,\"b|3|a quote (\") begins here and does not end",
        "a,\"b\"\"|3|a quote (\") begins here and does not end",
        "\"a\"b,c|4|something follows a closing quote (\"); write a quote inside a cell twice",
      })
  void notesAQuoteThatDoesNotCloseItsCell(String line, int column, String message) {
    FaultList faults = new FaultList();
    new CellSplitter(Separator.COMMA, faults).cellsOf(new SheetLine(4, line));
    assertEquals(1, noted(faults).size());
    assertEquals(message, noted(faults).get(0).message());
    assertEquals(column, noted(faults).get(0).column());
    assertEquals(4, noted(faults).get(0).line());
  }

  /** Any cells, written as the standard says, come back as they were. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void readsBackWhatIsQuoted(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    String pieces = "ab ,;\"#[]9.";
    for (int trial = 0; trial < 500; trial++) {
      List<String> cells = new ArrayList<>();
      StringBuilder line = new StringBuilder();
      int count = random.nextInt(1, 6);
      for (int i = 0; i < count; i++) {
        StringBuilder cell = new StringBuilder();
        random
            .ints(random.nextInt(8), 0, pieces.length())
            .forEach(at -> cell.append(pieces.charAt(at)));
        cells.add(cell.toString().strip());
        line.append(i > 0 ? "," : "").append('"');
        line.append(cell.toString().replace("\"", "\"\"")).append('"');
      }
      assertEquals(cells, texts(line.toString()), "seed " + seed + ": " + line);
    }
  }

  @Test
  void aCommentLosesWhatASpreadsheetPutsBehindIt() {
    CellSplitter splitter = new CellSplitter(Separator.SEMICOLON, new FaultList());
    Cell comment = splitter.commentOf(new SheetLine(2, "  # maker: Maker 1; 2;;; "));
    assertEquals(new Cell(2, 3, "# maker: Maker 1; 2"), comment);
  }

  @Test
  void bytesAreReadAsFarAsTheyAreUtf8() {
    byte[] whole = "\uFEFFm\u00b3/h".getBytes(StandardCharsets.UTF_8);
    assertEquals(new Utf8Text("m\u00b3/h", true), Utf8Text.of(whole));
    byte[] broken = "m\u00b3/h".getBytes(StandardCharsets.ISO_8859_1);
    assertEquals(new Utf8Text("m", false), Utf8Text.of(broken));
    assertEquals(true, Utf8Text.isUtf16("a".getBytes(StandardCharsets.UTF_16)));
    assertEquals(true, Utf8Text.hasZero("a".getBytes(StandardCharsets.UTF_16LE)));
    assertEquals(false, Utf8Text.hasZero(whole));
  }
}
