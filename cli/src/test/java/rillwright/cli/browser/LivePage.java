package rillwright.cli.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.ResourceLock;
import org.openqa.selenium.Keys;
import rillwright.cli.Main;
import rillwright.cli.page.OpenPage;
import rillwright.cli.page.desk.Places;

/** A live page in a browser, and what hands do with it: all such tests share one browser. */
@ExtendWith(OneBrowser.class)
@ResourceLock("the browser of live pages")
abstract class LivePage {
  static final String DRAG =
      """
      const range = document.querySelector(`.drag[data-at="${arguments[0]}"] input`);
      range.value = range.dataset.choices.split('\\t').indexOf(arguments[1]);
      range.dispatchEvent(new Event('input', {bubbles: true}));
      """;
  static final String LET_GO =
      """
      document.querySelector(`.drag[data-at="${arguments[0]}"] input`)
          .dispatchEvent(new Event('change', {bubbles: true}));
      """;
  static final String FLOW =
      "return document.querySelector('[data-point=\"high fall\"] .flow').textContent";
  static final String SIDEWAYS =
      "document.documentElement.scrollWidth <= document.documentElement.clientWidth";
  static final String SIZE = "lines.supply.pipe.size";
  static final String AT_FIRST = "1,300 gph";

  @TempDir Path folder;
  OpenPage page;
  Browser browser;

  @BeforeEach
  void open(Browser shared) throws IOException {
    browser = shared;
    browser.show(1280, false, false);
    page = OpenPage.ofExample(example(), folder);
    visit(page);
  }

  /** The job that is open before each test. */
  String example() {
    return "twin-falls/falls.yaml";
  }

  /** Opens a page and waits until it has found its width. */
  void visit(OpenPage live) {
    browser.open(live.address());
    browser.await("document.body.dataset.fitted !== undefined");
  }

  @AfterEach
  void nothingWentWrong() {
    List<String> complaints = browser.complaints();
    leave();
    page.close();
    assertEquals(List.of(), page.defects());
    assertEquals(List.of(), complaints);
  }

  /** So that no page asks a server that has ended. */
  void leave() {
    browser.open(URI.create("about:blank"));
  }

  void shows(String flow) {
    browser.await(
        "document.querySelector('[data-point=\"high fall\"] .flow')?.textContent === arguments[0]",
        flow);
  }

  static String solve(Path file, String... options) {
    StringWriter out = new StringWriter();
    String[] all = new String[options.length + 2];
    all[0] = "solve";
    all[1] = file.toString();
    System.arraycopy(options, 0, all, 2, options.length);
    Main.commandLine(all).setOut(new PrintWriter(out)).execute(all);
    return out.toString();
  }

  /** The flow of the higher fall in the balance as text. */
  static String flowIn(String solved) {
    return flowIn(solved, "high fall");
  }

  /** The flow over a fall in the balance as text. */
  static String flowIn(String solved, String fall) {
    return solved
        .lines()
        .filter(line -> line.strip().startsWith(fall + "  "))
        .map(line -> line.strip().split("\\s{2,}")[1])
        .findFirst()
        .orElseThrow();
  }

  /** The flow over a fall as the page shows it. */
  String flowOf(String fall) {
    return browser.text(
        "return document.querySelector(`[data-point='${arguments[0]}'] .flow`).textContent", fall);
  }

  boolean focusIs(String id) {
    return browser.text("return document.activeElement.id").equals(id);
  }

  /** Opens all that can be opened, so that hands reach it. */
  void openAll() {
    browser.text("document.querySelectorAll('details').forEach(it => it.open = true)");
  }

  /** Types a value into the field of an address. */
  void set(String address, String value) {
    String field = "input[data-at='" + address + "']";
    browser.type(field, Keys.chord(Keys.CONTROL, "a"), value, Keys.TAB);
    isDone(Places.words(address) + ": " + value);
  }

  /** Adds a field to a point, line or part. */
  void add(String address, String field, String value) {
    String form = address.isEmpty() ? "#new-section form" : "form.more[data-at='" + address + "']";
    browser.text(
        "document.querySelector(arguments[0] + ' select').value = arguments[1]", form, field);
    browser.type(form + " input", value, Keys.ENTER);
    isDone(Places.words((address.isEmpty() ? "" : address + ".") + field) + ": " + value);
  }

  /** Takes something away. */
  void remove(String address) {
    browser.type("button[data-do=remove][data-at='" + address + "']", Keys.ENTER);
    isDone("take away " + Places.words(address));
  }

  /** Waits until this is what would be undone. */
  void isDone(String what) {
    browser.await("document.getElementById('do-undo').title === arguments[0]", what);
  }

  void save() {
    browser.click("#do-save");
    browser.await("document.querySelector('.file').textContent.endsWith(', as saved')");
  }

  /** Asks a panel and waits for its answer. */
  void ask(String panel) {
    browser.text("document.getElementById('study-' + arguments[0]).open = true", panel);
    browser.text("document.getElementById('answer-' + arguments[0]).replaceChildren()", panel);
    browser.click("[data-panel=" + panel + "] button:not([type=button])");
    browser.await(
        "(answer => answer.childElementCount > 0 && !answer.querySelector('[data-working]'))"
            + "(document.getElementById('answer-' + arguments[0]))",
        panel);
  }
}
