package rillwright.cli.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import rillwright.cli.Main;
import rillwright.cli.page.OpenPage;

/** The live page as a browser shows it and as hands use it. */
class LivePageTest {
  private static final String DRAG =
      """
      const range = document.querySelector(`.drag[data-at="${arguments[0]}"] input`);
      range.value = range.dataset.choices.split('\\t').indexOf(arguments[1]);
      range.dispatchEvent(new Event('input', {bubbles: true}));
      """;
  private static final String LET_GO =
      """
      document.querySelector(`.drag[data-at="${arguments[0]}"] input`)
          .dispatchEvent(new Event('change', {bubbles: true}));
      """;
  private static final String FLOW =
      "return document.querySelector('[data-point=\"high fall\"] .flow').textContent";
  private static final String SIDEWAYS =
      "document.documentElement.scrollWidth <= document.documentElement.clientWidth";
  private static final String SIZE = "lines.supply.pipe.size";
  private static final String AT_FIRST = "1,300 gph";

  private static List<Browser> browsers = List.of();

  @TempDir private Path folder;
  private OpenPage page;
  private Browser browser;

  @BeforeAll
  static void start() {
    browsers = List.of(Browser.open());
  }

  @AfterAll
  static void end() {
    browsers.forEach(Browser::close);
  }

  @BeforeEach
  void open() throws IOException {
    page = OpenPage.ofExample("twin-falls/falls.yaml", folder);
    browser = browsers.get(0);
    browser.show(1280, false, false);
    browser.open(page.address());
    shows(AT_FIRST);
    browser.await("document.body.dataset.fitted !== undefined");
  }

  @AfterEach
  void nothingWentWrong() {
    List<String> complaints = browser.complaints();
    browser.open(URI.create("about:blank"));
    page.close();
    assertEquals(List.of(), page.defects());
    assertEquals(List.of(), complaints);
  }

  private void shows(String flow) {
    browser.await(
        "document.querySelector('[data-point=\"high fall\"] .flow')?.textContent === arguments[0]",
        flow);
  }

  private static String solve(Path file, String... options) {
    StringWriter out = new StringWriter();
    String[] all = new String[options.length + 2];
    all[0] = "solve";
    all[1] = file.toString();
    System.arraycopy(options, 0, all, 2, options.length);
    Main.commandLine(all).setOut(new PrintWriter(out)).execute(all);
    return out.toString();
  }

  /** The flow of the higher fall in the balance as text. */
  private static String flowIn(String solved) {
    return flowIn(solved, "high fall");
  }

  private static String flowIn(String solved, String fall) {
    return solved
        .lines()
        .filter(line -> line.strip().startsWith(fall + "  "))
        .map(line -> line.strip().split("\\s{2,}")[1])
        .findFirst()
        .orElseThrow();
  }

  @Test
  void draggingASizeShowsWhatSolveSays() {
    String solved = flowIn(solve(page.file(), "--set", SIZE + "=3 in"));
    browser.text(DRAG, SIZE, "3 in");
    shows(solved);
    assertFalse(solved.equals(AT_FIRST));
    browser.await(
        "document.querySelector('#changed')?.textContent.includes('3 in instead of 2 in')");
    browser.text(LET_GO, SIZE);
    browser.await("!document.getElementById('do-undo').disabled");
    String effect = browser.text("return document.querySelector('.effect').textContent");
    assertTrue(effect.contains("high fall 1,300 \u2192 " + solved), effect);
    browser.find("#do-undo").click();
    shows(AT_FIRST);
    browser.find("#do-redo").click();
    shows(solved);
  }

  @Test
  void savingChangesThatValueAloneAndSolveAgrees() throws IOException {
    String before = Files.readString(page.file());
    browser.text(DRAG, SIZE, "3 in");
    browser.text(LET_GO, SIZE);
    browser.await("!document.getElementById('do-save').disabled");
    assertTrue(Files.exists(folder.resolve("falls.yaml.draft")));
    browser.find("#do-save").click();
    browser.await("document.querySelector('.file').textContent === 'falls.yaml, as saved'");
    String after = Files.readString(page.file());
    assertEquals(
        before.replaceFirst("size: 2 in\\}\\n    entrance", "size: 3 in}\n    entrance"), after);
    assertEquals(before, Files.readString(folder.resolve("falls.yaml.previous")));
    assertFalse(Files.exists(folder.resolve("falls.yaml.draft")));
    assertEquals(browser.text(FLOW), flowIn(solve(page.file())));
  }

  @Test
  void aFaultStandsBesideItsFieldInTheReadersWords() {
    browser.find("a.touch[href='#at-points-high_20_fall']").sendKeys(Keys.ENTER);
    browser.await("document.activeElement.closest('details')?.id === 'at-points-high_20_fall'");
    String field = "#at-points-high_20_fall-crest-value";
    browser.find(field).sendKeys(Keys.chord(Keys.CONTROL, "a"), "60", Keys.TAB);
    browser.await(
        "document.querySelector(arguments[0] + '[aria-invalid]')"
            + "?.parentElement.textContent.includes('\"60\" has no unit; write for example')",
        field);
    shows(AT_FIRST);
    browser.find(field).sendKeys(Keys.chord(Keys.CONTROL, "a"), "4 ft 6 in", Keys.TAB);
    shows(flowIn(solve(page.file(), "--set", "points.high fall.crest=4 ft 6 in")));
    browser.await("document.querySelector('#notices').childElementCount === 0");
  }

  @Test
  void keysAloneDoIt() {
    browser.text("document.body.focus()");
    for (int i = 0; i < 60 && !focusIs("try-lines-supply-pipe-size"); i++) {
      browser.press(Keys.TAB);
    }
    assertTrue(focusIs("try-lines-supply-pipe-size"));
    browser.press(Keys.ARROW_RIGHT);
    String solved = flowIn(solve(page.file(), "--set", SIZE + "=2-1/2 in"));
    shows(solved);
    browser.await("!document.getElementById('do-undo').disabled");
    assertTrue(focusIs("try-lines-supply-pipe-size"));
    browser.press(Keys.chord(Keys.CONTROL, "z"));
    shows(AT_FIRST);
    browser.press(Keys.chord(Keys.CONTROL, "y"));
    shows(solved);
    browser.press(Keys.chord(Keys.CONTROL, "s"));
    browser.await("document.querySelector('.file').textContent === 'falls.yaml, as saved'");
  }

  private boolean focusIs(String id) {
    return browser.text("return document.activeElement.id").equals(id);
  }

  @Test
  void isWholeAndAccessibleOnPhoneAndDesktop() throws IOException {
    browser.text("document.querySelectorAll('details').forEach(it => it.open = true)");
    for (int width : List.of(320, 1280)) {
      for (boolean dark : List.of(false, true)) {
        browser.show(width, dark, false);
        browser.await(SIDEWAYS);
        assertEquals(List.of(), browser.inaccessible(), width + " px, dark " + dark);
      }
    }
  }

  @Test
  void metricIsShownWithoutChangingTheFile() throws IOException {
    browser.find("#units-metric").click();
    shows(flowIn(solve(page.file(), "--set", "show=metric")));
    assertTrue(browser.find("#do-undo").getDomProperty("disabled").equals("true"));
    assertFalse(Files.exists(folder.resolve("falls.yaml.draft")));
    browser.find("#units-us").click();
    shows(AT_FIRST);
  }

  @Test
  void whatAnotherProgramWritesIsNoticedAndNothingIsWrittenOverIt() throws IOException {
    browser.text(DRAG, SIZE, "3 in");
    browser.text(LET_GO, SIZE);
    browser.await("!document.getElementById('do-save').disabled");
    String other = Files.readString(page.file()).replace("crest: 60 in", "crest: 50 in");
    Files.writeString(page.file(), other);
    browser.await("document.querySelector('#notices').textContent.includes('changed on the disk')");
    browser.find("#do-save").click();
    browser.await("document.querySelector('#said').textContent.includes('not saved')");
    assertEquals(other, Files.readString(page.file()));
    browser.find("[data-do=take-from-disk]").click();
    shows(flowIn(solve(page.file())));
  }

  @Test
  void aSmallPondIsMadeFromNothingAndSolveAgrees() throws IOException {
    Path file = folder.resolve("made.yaml");
    try (OpenPage start = OpenPage.of(file)) {
      browser.open(start.address());
      browser.await("document.body.dataset.fitted !== undefined");
      browser.find("#q-lift").sendKeys("4", Keys.TAB);
      browser.await("document.querySelector('#q-lift-said .fault') !== null");
      browser.find("#q-lift").sendKeys(" ft", Keys.TAB);
      browser.await("document.querySelector('#q-lift-said .fault') === null");
      browser.find("#do-begin").sendKeys(Keys.ENTER);
      browser.await("document.querySelector('[data-point=fall] .flow') !== null");
      browser.await("document.body.dataset.fitted !== undefined");
      assertTrue(Files.readString(file).contains("4 ft"), Files.readString(file));
      browser.find("#new-point summary").click();
      browser.find("#new-point-name").sendKeys("second fall");
      browser.find("#new-point button").click();
      browser.await("document.getElementById('at-points-second_20_fall') !== null");
      browser.find("#new-line summary").click();
      browser.find("#new-line-name").sendKeys("second");
      browser.text(
          """
          document.getElementById('new-line-from').value = 'pond';
          document.getElementById('new-line-to').value = 'second fall';
          """);
      browser.find("#new-line button").click();
      browser.await("document.getElementById('at-lines-second') !== null");
      browser.await("document.querySelector('[data-point=\"second fall\"] .flow') !== null");
      browser.find("#do-save").click();
      browser.await("document.querySelector('.file').textContent.endsWith('as saved')");
      for (String fall : List.of("fall", "second fall")) {
        String shown =
            browser.text(
                "return document.querySelector(`[data-point='${arguments[0]}'] .flow`).textContent",
                fall);
        assertEquals(shown, flowIn(solve(file), fall));
      }
    }
  }

  @Test
  void readingsAreEnteredAsTheyAreTaken() {
    browser.find("#study-weak summary").click();
    enter("\"low fall\", bucket: 5 gal, time", "9.5 s", "7 %");
    enter("gauge: \"G1\", pressure", "3.6 psi", "0.25 psi");
    browser.await("document.querySelector('#besides-weak').textContent.includes('2 readings')");
    browser.find("[data-panel=weak] button").click();
    browser.await("document.querySelector('#answer-weak').textContent.includes('READ NEXT')");
  }

  private void enter(String what, String value, String within) {
    browser.text(
        """
        const kinds = [...document.querySelectorAll('#reading-what option')];
        document.getElementById('reading-what').value =
            kinds.find(it => it.value.includes(arguments[0])).value;
        """,
        what);
    browser.find("#reading-value").sendKeys(value);
    browser.find("#reading-within").sendKeys(within, Keys.ENTER);
    browser.await("document.getElementById('reading-value').value === ''");
  }

  @Test
  void aStudyAnswersInItsPanel() {
    browser.find("#study-mend summary").click();
    browser.find("[data-panel=mend] button").click();
    browser.await("document.querySelector('#answer-mend [data-do=set-all]') !== null");
    String first = browser.text("return document.querySelector('#answer-mend').textContent");
    assertTrue(first.contains("Hydraulic estimate only"), first);
    assertTrue(first.contains("high fall"), first);
    browser.text(
        """
        [...document.querySelectorAll('#answer-mend [data-do=set-all]')]
            .find(it => it.dataset.value.includes('\\t')).click();
        """);
    browser.await("document.querySelectorAll('#changed .changes li').length === 2");
    browser.await("document.querySelector('#changed').textContent.includes('P-600 instead of')");
  }
}
