package rillwright.cli.report.page.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;

/** Where the words of a last column stand. */
class TerminalTableTest {
  private static final String WORDS =
      "it cannot deliver that flow at any head: take a larger one, or two";

  private static String printed(String figure) {
    return printed(figure, Screen.PAPER);
  }

  private static String printed(String figure, Screen screen) {
    TableBuilder table =
        new TableBuilder("FALL SHORT")
            .column("flow", Side.RIGHT)
            .column("change needed", Side.LEFT);
    table.row("P-1", figure, WORDS);
    table.row("P-2", "2 gph", "none");
    PageBuilder page = new PageBuilder("Title");
    page.table(table);
    return TerminalPage.of(page.build(), screen);
  }

  @Test
  void besideTheFiguresWhereThereIsRoom() {
    assertEquals(
        """
        Title
        =====

        FALL SHORT   flow  change needed
          P-1       1 gph  it cannot deliver that flow at any head: take a larger one, or two
          P-2       2 gph  none
        """,
        printed("1 gph"));
  }

  @Test
  void oneBelowTheOtherOnAScreenTooNarrowForTheColumns() {
    assertEquals(
        """
        Title
        =====

        FALL SHORT
          P-1
              flow: 1111111111111111111111111111111111111111
              change needed: it cannot deliver that flow at any
              head: take a larger one, or two
          P-2
              flow: 2 gph
              change needed: none
        """,
        printed("1".repeat(40), new Screen(Ink.PLAIN, 60)));
  }

  @Test
  void noLineBeginsWithTheUnitOfANumberAboveWhereBothFit() {
    String text = "short by 20 %, or 7 %";
    assertEquals(List.of("short by", "20 %, or", "7 %"), Wrapping.lines(text, 9));
    assertEquals(List.of("sill", "(10 mm", "down)"), Wrapping.lines("sill (10 mm down)", 8));
    assertEquals(List.of("1,440", "gph"), Wrapping.lines("1,440 gph", 6));
  }

  @Test
  void onALineOfTheirOwnWhereTheColumnWouldBeTooNarrowToRead() {
    String page = printed("1".repeat(70));
    String[] lines = page.split("\n");
    assertTrue(lines[3].endsWith("  flow"), page);
    assertTrue(lines[4].endsWith("11"), page);
    assertEquals("      change needed: " + WORDS, lines[5]);
    assertEquals("      change needed: none", lines[7]);
  }
}
