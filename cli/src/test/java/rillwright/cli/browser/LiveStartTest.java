package rillwright.cli.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;
import rillwright.cli.page.OpenPage;

/** A new job on the live page: by questions and fields, or from an example. */
class LiveStartTest extends LivePage {
  private static final Path SMALL_POND = Path.of("../examples/small-pond/pond.yaml");

  /** Every question by keys, then what only fields have: the flow must be that of the example. */
  @Test
  void theSmallPondIsBuiltFromNothingAndHasTheExamplesFigures() throws IOException {
    Path file = folder.resolve("made.yaml");
    try (OpenPage start = OpenPage.of(file)) {
      visit(start);
      browser.type("#q-lift", "30", Keys.TAB);
      browser.await("document.querySelector('#q-lift-said .fault') !== null");
      browser.type("#q-lift", " in", Keys.TAB);
      browser.await("document.querySelector('#q-lift-said .fault') === null");
      answer("fall-width", "18 in");
      answer("skimmer", "8 in");
      answer("pipe-run", "16 ft");
      answer("pipe", "PVC schedule 40");
      answer("elbows", "3");
      answer("pump", "none yet");
      browser.type("#do-begin", Keys.ENTER);
      browser.await("document.getElementById('at-lines-supply') !== null");
      browser.await("document.body.dataset.fitted !== undefined");
      openAll();
      set("points.chamber.floor", "-20 in");
      set("points.chamber.intake", "-12 in");
      add("points.chamber", "area", "2.4 ft2");
      add("", "water.temperature", "20 C");
      add("lines.supply", "entrance.k", "0.5");
      coefficient("lines.supply.check valve", "2.0");
      coefficient("lines.supply.valve", "0.10");
      remove("lines.supply.valve.open");
      coefficient("lines.supply.fitting", "0.9");
      browser.text("document.getElementById('at-lines-supply-part').value = 'fitting'");
      browser.click("form[data-do=add-part][data-at='lines.supply'] button");
      isDone("add fitting to supply");
      browser.await("document.activeElement.closest('details')?.id.endsWith('fitting_20_2')");
      coefficient("lines.supply.fitting 2", "0.08");
      add("lines.supply.fitting 2", "count", "2");
      String sheet = SMALL_POND.resolveSibling("pumps/P-110.csv").toRealPath().toString();
      browser.type("#panel-pumps-files", sheet);
      browser.await("document.querySelector('.dropped').textContent.startsWith('P-110')");
      ask("pumps");
      browser.click("[data-do=take-sheet][data-value='P-110']");
      browser.await("document.querySelector('[data-point=fall] .flow') !== null");
      save();
      String flow = flowIn(solve(SMALL_POND), "fall");
      assertEquals(flow, flowIn(solve(file), "fall"));
      assertEquals(flow, flowOf("fall"));
      assertTrue(Files.exists(folder.resolve("pumps/P-110.csv")));
      leave();
    }
  }

  private void answer(String question, String answer) {
    browser.type("#q-" + question, answer, Keys.TAB);
    browser.await(
        "document.querySelector(arguments[0]).defaultValue === arguments[1]",
        "#q-" + question,
        answer);
  }

  /** A loss coefficient in place of a type. */
  private void coefficient(String part, String k) {
    add(part, "k", k);
    remove(part + ".type");
  }

  @Test
  void pointsAndLinesAreAddedAndSolveAgrees() throws IOException {
    Path file = folder.resolve("made.yaml");
    try (OpenPage start = OpenPage.of(file)) {
      visit(start);
      browser.type("#do-begin", Keys.ENTER);
      browser.await("document.querySelector('[data-point=fall] .flow') !== null");
      browser.await("document.body.dataset.fitted !== undefined");
      browser.click("#new-point summary");
      browser.type("#new-point-name", "second fall");
      browser.type("#new-point-kind", "fall");
      browser.click("#new-point button");
      isDone("add point second fall");
      browser.click("#new-line summary");
      browser.type("#new-line-name", "second");
      browser.text(
          """
          document.getElementById('new-line-from').value = 'pond';
          document.getElementById('new-line-to').value = 'second fall';
          """);
      browser.click("#new-line button");
      browser.await("document.querySelector('[data-point=\"second fall\"] .flow') !== null");
      save();
      for (String fall : List.of("fall", "second fall")) {
        assertEquals(flowOf(fall), flowIn(solve(file), fall));
      }
      leave();
    }
  }

  @Test
  void aCopyOfAnExampleIsAStart() throws IOException {
    Path file = folder.resolve("copied/made.yaml");
    Files.createDirectory(file.getParent());
    try (OpenPage start = OpenPage.of(file)) {
      visit(start);
      browser.type("#new-example summary", Keys.ENTER);
      browser.type("#example", "Small pond");
      assertFalse(Files.exists(file));
      browser.type("#do-copy", Keys.ENTER);
      browser.await("document.querySelector('[data-point=fall] .flow') !== null");
      browser.await("document.body.dataset.fitted !== undefined");
      assertEquals(Files.readString(SMALL_POND), Files.readString(file));
      assertEquals(flowIn(solve(SMALL_POND), "fall"), flowOf("fall"));
      leave();
    }
  }
}
