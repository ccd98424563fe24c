package rillwright.cli.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.cli.examples.ExampleFolders;

/** What the page writes: no more than was changed, and nothing that was not asked for. */
class EditedByPageTest {
  @TempDir private Path folder;
  private int number;

  private Knock.Answer post(OpenPage page, String form) throws IOException {
    URI at = page.address();
    Knock.Answer answer = Knock.post(at, "do", form + "&seen=" + number).send(at.getPort());
    assertEquals(200, answer.status());
    number = Integer.parseInt(answer.body().replaceAll("(?s).*data-number=\"(\\d+)\".*", "$1"));
    return answer;
  }

  private static String coded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  static List<Path> examples() {
    return ExampleFolders.projects().stream().filter(EditedByPageTest::isProject).toList();
  }

  private static boolean isProject(Path file) {
    try {
      return Files.readString(file).contains("\npoints:");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The title is changed, since every example has one; what differs is the title's line. */
  @ParameterizedTest(name = "{0}")
  @MethodSource("examples")
  void anExampleOpenedChangedAndSavedDiffersInThatValueAlone(Path example) throws IOException {
    String before = Files.readString(example);
    try (OpenPage page =
        OpenPage.ofExample(Path.of("../examples").relativize(example).toString(), folder)) {
      post(page, "do=set&at=title&value=" + coded("Another: title"));
      post(page, "do=save");
      List<String> now = Files.readString(page.file()).lines().toList();
      List<String> was = before.lines().toList();
      assertEquals(was.size(), now.size());
      for (int i = 0; i < was.size(); i++) {
        String line = was.get(i);
        boolean isTitle = line.startsWith("title:");
        assertTrue(isTitle ? now.get(i).contains("Another: title") : now.get(i).equals(line), line);
      }
      assertEquals(before, Files.readString(folder.resolve(example.getFileName() + ".previous")));
    }
  }

  @Test
  void aProjectInJsonStaysJsonAndDiffersInThatValueAlone() throws IOException {
    String before =
        """
        {"rillwright": 1, "title": "In JSON",
         "points": {"pond": {"kind": "basin", "level": "0 ft"},
                    "end": {"kind": "outlet", "elevation": "-3 ft"}},
         "lines": {"drain": {"from": "pond", "to": "end",
           "pipe": {"material": "PVC schedule 40", "size": "2 in"}, "parts": [{"run": "20 ft"}]}}}
        """;
    Path file = Files.writeString(folder.resolve("pond.json"), before);
    try (OpenPage page = OpenPage.of(file)) {
      post(page, "do=set&at=lines.drain.run.length&value=25+ft");
      post(page, "do=save");
      assertEquals(before.replace("20 ft", "25 ft"), Files.readString(file));
      assertEquals(List.of(), page.defects());
    }
  }

  @Test
  void anAnswerOfANewJobIsNotBlamedForAnother() throws IOException {
    try (OpenPage page = OpenPage.of(folder.resolve("new.yaml"))) {
      URI at = page.address();
      String answers = "pond+length=10&pond+width=8+ft&lip=slate&lift=4+ft";
      String body = Knock.post(at, "begin", answers).send(at.getPort()).body();
      assertTrue(body.contains("not made yet: look at what is marked"), body);
      assertEquals(3, body.split("class=\"fault\"", -1).length - 1, body);
      assertTrue(body.contains("&quot;10&quot; has no unit"), body);
      assertTrue(body.contains("&quot;slate&quot;"), body);
      assertFalse(Files.exists(page.file()));
    }
  }

  @Test
  void piecesAreAddedMovedRenamedAndTakenAwayAndAllIsUndone() throws IOException {
    try (OpenPage page = OpenPage.ofExample("twin-falls/falls.yaml", folder)) {
      String before = Files.readString(page.file());
      post(page, "do=add-point&kind=fall&name=third+fall");
      post(page, "do=add-line&name=third&from=split&to=third+fall");
      post(page, "do=add-part&kind=valve&at=lines.third");
      post(page, "do=move-up&at=lines.third.valve&value=2");
      post(page, "do=rename&at=points.split&name=branch");
      String valve = Files.readString(folder.resolve("falls.yaml.draft"));
      assertTrue(valve.contains("valve: {type: ball, open: 100 %, adjustable: yes}"), valve);
      String body = post(page, "do=remove&at=lines.supply.gauge").body();
      assertFalse(body.contains("class=\"fault\""), body);
      assertTrue(body.contains("data-point=\"third fall\""), body);
      assertTrue(body.contains("<b>third:</b> new</li>"), body);
      String draft = Files.readString(folder.resolve("falls.yaml.draft"));
      assertTrue(draft.contains("from: branch"), draft);
      for (int i = 0; i < 6; i++) {
        post(page, "do=undo");
      }
      assertFalse(Files.exists(folder.resolve("falls.yaml.draft")), "nothing is unsaved");
      for (int i = 0; i < 6; i++) {
        post(page, "do=redo");
      }
      assertEquals(draft, Files.readString(folder.resolve("falls.yaml.draft")));
      assertEquals(before, Files.readString(page.file()));
      assertEquals(List.of(), page.defects());
    }
  }

  /** One step for the one who undoes it. */
  @Test
  void severalChangesAreMadeAtOnce() throws IOException {
    try (OpenPage page = OpenPage.ofExample("twin-falls/falls.yaml", folder)) {
      String before = Files.readString(page.file());
      post(page, "do=set-all&value=lines.low.valve.k%3D4.4%09lines.high.valve.k%3D5.5");
      post(page, "do=save");
      String after = Files.readString(page.file());
      assertTrue(after.contains("4.4") && after.contains("5.5"), after);
      post(page, "do=undo");
      post(page, "do=save");
      assertEquals(before, Files.readString(page.file()));
    }
  }

  @Test
  void whatIsWrongIsNeitherSavedNorEnteredAsAReading() throws IOException {
    try (OpenPage page = OpenPage.ofExample("twin-falls/falls.yaml", folder)) {
      String before = Files.readString(page.file());
      String reading = post(page, "do=add-reading&at=gauge%3A+G1%2C+pressure&value=abc").body();
      assertTrue(reading.contains("&quot;abc&quot; is not a quantity"), reading);
      assertFalse(Files.exists(folder.resolve("falls.yaml.draft")), "nothing was changed");
      String twice = post(page, "do=add-point&kind=fall&name=high+fall").body();
      assertTrue(twice.contains("is there already; choose another name"), twice);
      post(page, "do=set&at=points.high+fall.crest&value=60");
      assertTrue(post(page, "do=save").body().contains("not saved: put right first"));
      assertEquals(before, Files.readString(page.file()));
      post(page, "do=undo");
      post(page, "do=save");
      assertEquals(before, Files.readString(page.file()));
    }
  }

  @Test
  void whatIsNotSavedIsOfferedAgain() throws IOException {
    Path draft = folder.resolve("falls.yaml.draft");
    try (OpenPage page = OpenPage.ofExample("twin-falls/falls.yaml", folder)) {
      post(page, "do=set&at=title&value=Kept");
    }
    long ended = ProcessHandle.current().pid() == 1 ? 2 : 999_999_999;
    Files.writeString(
        draft, Files.readString(draft).replaceFirst("process \\d+", "process " + ended));
    number = 0;
    try (OpenPage page = OpenPage.of(folder.resolve("falls.yaml"))) {
      String shown = Knock.look(page.address(), "").send(page.address().getPort()).body();
      assertTrue(shown.contains("take-up-draft"), shown);
      String early = post(page, "do=set&at=title&value=Early").body();
      assertTrue(early.contains("first take up the unsaved changes"), early);
      assertTrue(post(page, "do=take-up-draft").body().contains("<h1>Kept</h1>"));
    }
  }

  @Test
  void twoPagesOnOneFileNoticeEachOther() throws IOException {
    try (OpenPage page = OpenPage.ofExample("twin-falls/falls.yaml", folder)) {
      post(page, "do=set&at=title&value=Kept");
      long other =
          ProcessHandle.allProcesses()
              .filter(it -> it.isAlive() && it.pid() != ProcessHandle.current().pid())
              .findFirst()
              .orElseThrow()
              .pid();
      Path draft = folder.resolve("falls.yaml.draft");
      Files.writeString(
          draft, Files.readString(draft).replaceFirst("process \\d+", "process " + other));
      String shown = Knock.look(page.address(), "").send(page.address().getPort()).body();
      assertTrue(shown.contains("Another page has unsaved changes"), shown);
    }
  }

  @Test
  void aPageThatHasNotSeenTheLastChangeIsRefused() throws IOException {
    try (OpenPage page = OpenPage.ofExample("twin-falls/falls.yaml", folder)) {
      post(page, "do=set&at=title&value=First");
      number = 0;
      String body = post(page, "do=set&at=title&value=Second").body();
      assertTrue(body.contains("another page has changed the job meanwhile"), body);
      assertTrue(body.contains("<h1>First</h1>"), body);
    }
  }

  @Test
  void aDroppedSheetIsTriedAndTakenWithoutTouchingOthers() throws IOException {
    try (OpenPage page = OpenPage.ofExample("twin-falls/falls.yaml", folder)) {
      URI at = page.address();
      String sheet = coded("flow [gph],head [ft],power [W]\n0,30,500\n3000,24,600\n6000,6,650\n");
      Knock.Answer asked =
          Knock.post(at, "ask", "panel=pumps&from=&sheet%3AD-77=" + sheet).send(at.getPort());
      String answer = asked.body();
      for (int i = 0; i < 100 && answer.contains("data-working"); i++) {
        answer = Knock.look(at, "work?panel=pumps").send(at.getPort()).body();
      }
      assertTrue(answer.contains("Take D-77"), answer);
      assertFalse(Files.exists(folder.resolve("pumps/D-77.csv")));
      String own = "panel=pipes&line=supply&from=the+pump+that+is+there&sheet%3AD-77=" + sheet;
      String sizes = Knock.post(at, "ask", own).send(at.getPort()).body();
      for (int i = 0; i < 100 && sizes.contains("data-working"); i++) {
        sizes = Knock.look(at, "work?panel=pipes").send(at.getPort()).body();
      }
      assertFalse(sizes.contains("D-77"), sizes);
      String taken =
          post(
                  page,
                  "do=take-sheet&at=lines.supply.pump.model%3DD-77&value=D-77&sheet%3AD-77="
                      + sheet)
              .body();
      assertFalse(taken.contains("class=\"fault\""), taken);
      assertTrue(Files.exists(folder.resolve("pumps/D-77.csv")));
      String before = Files.readString(folder.resolve("pumps/P-180.csv"));
      post(
          page,
          "do=take-sheet&at=lines.supply.pump.model%3DP-180&value=P-180&sheet%3AP-180=" + sheet);
      assertTrue(Files.readString(folder.resolve("pumps/P-180.csv")).endsWith("6000,6,650\n"));
      assertEquals(before, Files.readString(folder.resolve("pumps/P-180.csv.previous")));
      String outside =
          post(
                  page,
                  "do=take-sheet&at=lines.supply.pump.model%3DD-77&value=..%2FX&sheet%3A..%2FX="
                      + sheet)
              .body();
      assertTrue(outside.contains("letters, digits"), outside);
    }
  }

  /** Samples, and every pump of a large folder with every size of pipe. */
  @ParameterizedTest(name = "{0}")
  @CsvSource({
    "old-falls/falls.yaml, odds, samples=1000000",
    "long-stream/stream.yaml, pipes, from=supplier&line=supply&conditions=yes"
        + "&sizes=50 mm%2C63 mm%2C75 mm%2C90 mm%2C110 mm%2C125 mm"
  })
  void longWorkShowsHowFarItHasComeAndCanBeStopped(String example, String panel, String fields)
      throws IOException {
    try (OpenPage page = OpenPage.ofExample(example, folder)) {
      if (fields.contains("from=supplier")) {
        copyEachSheet(folder.resolve("supplier"), 60);
      }
      URI at = page.address();
      String form = "panel=" + panel + "&" + fields.replace(' ', '+');
      String answer = Knock.post(at, "ask", form).send(at.getPort()).body();
      assertTrue(answer.contains("data-working=\"" + panel + "\""), answer);
      assertTrue(answer.contains("<progress"), answer);
      Knock.post(at, "stop", "panel=" + panel).send(at.getPort());
      for (int i = 0; i < 100 && answer.contains("data-working"); i++) {
        answer = Knock.look(at, "work?panel=" + panel).send(at.getPort()).body();
      }
      assertTrue(answer.contains("Stopped at"), answer);
    }
  }

  private static void copyEachSheet(Path supplier, int times) throws IOException {
    List<Path> sheets;
    try (Stream<Path> files = Files.list(supplier)) {
      sheets = files.filter(file -> file.toString().endsWith(".csv")).toList();
    }
    for (Path sheet : sheets) {
      for (int i = 0; i < times; i++) {
        Files.copy(sheet, supplier.resolve(i + "-" + sheet.getFileName()));
      }
    }
  }
}
