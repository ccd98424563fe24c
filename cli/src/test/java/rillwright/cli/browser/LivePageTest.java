package rillwright.cli.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** The live page as hands use it: dragging, fields, keys, saving. */
class LivePageTest extends LivePage {
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
    browser.click("#do-undo");
    shows(AT_FIRST);
    browser.click("#do-redo");
    shows(solved);
    browser.text(DRAG, SIZE, "2-1/2 in");
    browser.text(LET_GO, SIZE);
    browser.await(
        "document.getElementById('said').textContent.includes('2-1/2 in instead of 3 in')");
    browser.await(
        "document.querySelector('.changes').textContent.includes('2-1/2 in instead of 2 in')");
    String did = browser.text("return document.getElementById('said').textContent");
    assertTrue(did.contains("high fall " + solved.replace(" gph", "") + " \u2192 "), did);
  }

  @Test
  void savingChangesThatValueAloneAndSolveAgrees() throws IOException {
    String before = Files.readString(page.file());
    browser.text(DRAG, SIZE, "3 in");
    browser.text(LET_GO, SIZE);
    browser.await("!document.getElementById('do-save').disabled");
    assertTrue(Files.exists(folder.resolve("falls.yaml.draft")));
    browser.click("#do-save");
    browser.await("document.querySelector('.file').textContent === 'falls.yaml, as saved'");
    String after = Files.readString(page.file());
    assertEquals(
        before.replaceFirst("size: 2 in\\}\\n    entrance", "size: 3 in}\n    entrance"), after);
    assertEquals(before, Files.readString(folder.resolve("falls.yaml.previous")));
    assertFalse(Files.exists(folder.resolve("falls.yaml.draft")));
    assertEquals(browser.text(FLOW), flowIn(solve(page.file())));
  }

  @Test
  void aPartTouchedInTheDrawingOpensItsFields() {
    browser.click("a.touch[href='#at-lines-supply-gauge']");
    browser.await("document.activeElement.closest('details')?.id === 'at-lines-supply-gauge'");
    browser.await("document.getElementById('at-lines-supply').open");
    browser.type("a.touch[href='#at-lines-high-valve']", Keys.ENTER);
    browser.await("document.activeElement.closest('details')?.id === 'at-lines-high-valve'");
  }

  @Test
  void aFaultStandsBesideItsFieldInTheReadersWords() {
    browser.type("a.touch[href='#at-points-high_20_fall']", Keys.ENTER);
    browser.await("document.activeElement.closest('details')?.id === 'at-points-high_20_fall'");
    String field = "#at-points-high_20_fall-crest-value";
    browser.type(field, Keys.chord(Keys.CONTROL, "a"), "60", Keys.TAB);
    browser.await(
        "document.querySelector(arguments[0] + '[aria-invalid]')"
            + "?.parentElement.textContent.includes('\"60\" has no unit; write for example')",
        field);
    shows(AT_FIRST);
    browser.type(field, Keys.chord(Keys.CONTROL, "a"), "4 ft 6 in", Keys.TAB);
    shows(flowIn(solve(page.file(), "--set", "points.high fall.crest=4 ft 6 in")));
    browser.await("document.querySelector('#notices').childElementCount === 0");
  }

  @Test
  void keysAloneDoIt() {
    browser.text("document.body.focus()");
    browser.press(Keys.TAB, Keys.TAB, Keys.ENTER, Keys.TAB, Keys.ENTER, Keys.TAB);
    assertTrue(focusIs("at-points-pond-kind-value"));
    browser.text("document.activeElement.blur()");
    browser.type("#skip-to-try", Keys.ENTER);
    browser.press(Keys.TAB, Keys.TAB);
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

  @Test
  void metricIsShownWithoutChangingTheFile() throws IOException {
    browser.click("#units-metric");
    shows(flowIn(solve(page.file(), "--set", "show=metric")));
    assertTrue(browser.find("#do-undo").getDomProperty("disabled").equals("true"));
    assertFalse(Files.exists(folder.resolve("falls.yaml.draft")));
    browser.click("#units-us");
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
    browser.click("#do-save");
    browser.await("document.querySelector('#said').textContent.includes('not saved')");
    assertEquals(other, Files.readString(page.file()));
    browser.click("[data-do=take-from-disk]");
    shows(flowIn(solve(page.file())));
  }
}
