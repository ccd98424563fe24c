package rillwright.cli.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.cli.command.Run;
import rillwright.cli.examples.ExampleFolders;

/**
 * Every example's job sheet, on a screen and on paper; with {@code -Drillwright.pages=true} each
 * for every reader.
 */
class SheetsPrintedTest {
  /** Rows of tables, a text each. */
  private static final String ROWS =
      "return [...document.querySelectorAll('tr')].map(row => row.innerText);";

  /** Pictures that may be cut by the end of a page within margins of 16 mm, or are taller. */
  private static final String CUT_PICTURES =
      """
      const tallest = (%s - 32) / 25.4 * 96;
      return [...document.querySelectorAll('figure, .handle')]
          .filter(it => getComputedStyle(it).breakInside !== 'avoid'
              || it.getBoundingClientRect().height > tallest)
          .map(it => it.className + ' ' + it.textContent.slice(0, 60));
      """;

  private enum Paper {
    A4(210, 297),
    LETTER(215.9, 279.4);

    private final double widthMm;
    private final double heightMm;

    Paper(double widthMm, double heightMm) {
      this.widthMm = widthMm;
      this.heightMm = heightMm;
    }

    private int widthWithinMarginsPx() {
      return (int) ((widthMm - 32) / 25.4 * 96);
    }
  }

  private record Sheet(Path project, String whom) {
    private String html() {
      List<String> words = new ArrayList<>(List.of("sheet", project.toString()));
      words.addAll(whom.isEmpty() ? List.of() : List.of("--for", whom));
      words.addAll(List.of("--format", "html"));
      Run run = Run.of(words.toArray(String[]::new));
      assertEquals(0, run.status(), run::err);
      return run.out();
    }

    /** Leaves of paper that are enough for what its reader is to carry. */
    private int mostPages() {
      return switch (whom) {
        case "customer" -> 2;
        case "crew" -> 6;
        case "lid" -> 12;
        default -> 9;
      };
    }

    @Override
    public String toString() {
      return project + (whom.isEmpty() ? "" : " for " + whom);
    }
  }

  @TempDir private static Path folder;

  private static List<Browser> browsers = List.of();

  @BeforeAll
  static void open() {
    browsers = List.of(Browser.open());
  }

  @AfterAll
  static void close() {
    browsers.forEach(Browser::close);
  }

  static List<Sheet> sheets() {
    boolean all = Boolean.getBoolean("rillwright.pages");
    return ExampleFolders.projects().stream()
        .flatMap(
            project ->
                Stream.of("", "crew", "customer", "lid")
                    .filter(whom -> all || whom.isEmpty() || project.endsWith("job.yaml"))
                    .map(whom -> new Sheet(project, whom)))
        .toList();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("sheets")
  void isWholeOnScreensAndOnPaper(Sheet sheet) throws IOException {
    Path page = Files.writeString(folder.resolve("sheet.html"), sheet.html());

    assertEquals(List.of(), PagesTest.troublesOnAPhone(page, browsers.get(0)));
    for (Paper paper : Paper.values()) {
      List<String> leaves = leaves(paper);
      assertEquals(List.of(), cut(paper, leaves), paper.name());
      assertTrue(leaves.size() <= sheet.mostPages(), leaves.size() + " pages of " + paper);
      leaves.forEach(leaf -> assertFalse(leaf.isBlank(), "an empty page of " + paper));
    }
  }

  /** So that a row and a picture over two pages do not pass. */
  @Test
  void whatIsCutIsSeen() throws IOException {
    String lines = "line<br>".repeat(100);
    Path page =
        Files.writeString(
            folder.resolve("cut.html"),
            "<style>@page {margin: 16mm}</style><table><tr><td>first<br>"
                + lines
                + "last</td></tr></table><figure>picture</figure>");
    browsers.get(0).open(page);

    List<String> cut = cut(Paper.A4, leaves(Paper.A4));

    assertEquals(2, cut.size(), cut::toString);
  }

  private static List<String> cut(Paper paper, List<String> leaves) {
    Browser browser = browsers.get(0);
    browser.show(paper.widthWithinMarginsPx(), false, true);
    List<String> cut = new ArrayList<>(browser.texts(CUT_PICTURES.formatted(paper.heightMm)));
    browser.texts(ROWS).stream()
        .filter(row -> leaves.stream().noneMatch(leaf -> leaf.contains(bare(row))))
        .forEach(cut::add);
    return cut;
  }

  /** The text of each page, without white space. */
  private static List<String> leaves(Paper paper) throws IOException {
    byte[] pdf = browsers.get(0).print(paper.widthMm, paper.heightMm);
    List<String> leaves = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        PDFTextStripper text = new PDFTextStripper();
        text.setStartPage(page);
        text.setEndPage(page);
        leaves.add(bare(text.getText(document)));
      }
    }
    return leaves;
  }

  private static String bare(String text) {
    return text.replaceAll("[\\s\u00a0]+", "");
  }
}
