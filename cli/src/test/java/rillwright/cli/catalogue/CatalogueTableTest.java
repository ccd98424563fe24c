package rillwright.cli.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.StringReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CatalogueTableTest {
  private static final String HEAD = "#   book = A Book, 1900\n#   talk = hearsay\nname,k,source\n";

  @Test
  void rowKeepsItsCellsAndItsSourcesInFull() throws IOException {
    TableRow row = onlyRow("elbow,0.9,book+talk");
    assertEquals("elbow", row.text("name"));
    assertEquals(0.9, row.number("k"));
    assertEquals("A Book, 1900; hearsay", row.source());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "A Book, Table 2 (from memory)      | A Book, Table 2",
        "A Book (1900; from memory)         | A Book (1900)",
        "A Book (from memory; seen in part) | A Book (seen in part)",
        "A Book from memory                 | A Book"
      })
  void whatIsFromMemorySaysSoInTheTableOnly(String written, String shown) throws IOException {
    String table = "# a = " + written + "\nname,source\nelbow,a\n";
    assertEquals(
        shown, CatalogueTable.parse("made.csv", new StringReader(table)).rows().get(0).source());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "elbow,high,book | made.csv:4: \"high\" is not a number",
        "elbow,,book | made.csv:4: nothing in column \"k\"",
        "elbow,1,gossip | made.csv:4: source \"gossip\" is not defined",
        "elbow,1 | made.csv:4: 2 cells; there are 3 columns"
      })
  void faultInATableNamesFileAndLine(String line, String message) {
    IllegalStateException fault =
        assertThrows(
            IllegalStateException.class,
            () -> {
              TableRow row = onlyRow(line);
              row.number("k");
              row.source();
            });
    assertEquals(message, fault.getMessage());
  }

  private static TableRow onlyRow(String line) throws IOException {
    return CatalogueTable.parse("made.csv", new StringReader(HEAD + line + "\n")).rows().get(0);
  }
}
