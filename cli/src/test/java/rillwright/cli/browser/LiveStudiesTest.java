package rillwright.cli.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.openqa.selenium.Keys;

/** The studies' panels on the live page. */
class LiveStudiesTest extends LivePage {
  private static final String DROP =
      """
      const data = new DataTransfer();
      data.items.add(new File([arguments[0]], 'D-77.csv'));
      document.querySelector('main').dispatchEvent(
          new DragEvent('drop', {dataTransfer: data, bubbles: true, cancelable: true}));
      """;

  private static final String PRESSED =
      "document.querySelector('#looks-weak [aria-pressed=true]')?.textContent === arguments[0]";

  private String answer(String panel) {
    return browser.text(
        "return document.getElementById('answer-' + arguments[0]).textContent", panel);
  }

  @Test
  void readingsAreEnteredAsTheyAreTakenAndTheNextIsProposed() {
    browser.click("#study-weak summary");
    enter("\"low fall\", bucket: 5 gal, time", "9.5 s", "7 %", "1 reading,");
    enter("gauge: \"G1\", pressure", "3.6 psi", "0.25 psi", "2 readings,");
    ask("weak");
    assertTrue(answer("weak").contains("READ NEXT"), answer("weak"));
    browser.type("#answer-weak [data-reading]", Keys.ENTER);
    browser.await("document.activeElement.id === 'reading-value'");
    String proposed =
        browser.text(
            "return document.querySelector('#reading-what').selectedOptions[0].dataset.example");
    browser.press(proposed, Keys.ENTER);
    browser.await("document.querySelector('#besides-weak').textContent.includes('3 readings')");
    browser.await("document.querySelector('#answer-weak .since') !== null");
    assertTrue(answer("weak").contains("from before the last change"), answer("weak"));
    browser.type("#answer-weak .since button", Keys.ENTER);
    browser.await(
        "!document.querySelector('#answer-weak .since')"
            + " && document.querySelector('#answer-weak').textContent.includes('MOST LIKELY')");
    save();
  }

  /** Each look is in the job once: touched again it goes, the other answer takes its place. */
  @Test
  void looksAreTakenAtATouch() {
    browser.click("#study-weak summary");
    browser.click("#looks-weak summary");
    look("add-reading", "wet");
    browser.await("document.querySelector('#besides-weak').textContent.includes('1 reading,')");
    look("set", "dry");
    browser.await(PRESSED, "dry");
    browser.await("document.querySelector('#besides-weak').textContent.includes('1 reading,')");
    save();
    look("remove", "dry");
    browser.await("document.querySelector('#besides-weak').textContent.includes('0 readings,')");
    browser.press(Keys.chord(Keys.CONTROL, "z"));
    browser.await(PRESSED, "dry");
  }

  private void look(String does, String seen) {
    browser.text(
        """
        const look = document.getElementById('at-look ground supply');
        const button = [...look.querySelectorAll('button')]
            .find(it => it.textContent === arguments[1] && it.dataset.do === arguments[0]);
        button.focus();
        button.click();
        """,
        does,
        seen);
  }

  private void enter(String what, String value, String within, String counted) {
    browser.text(
        """
        const kinds = [...document.querySelectorAll('#reading-what option')];
        document.getElementById('reading-what').value =
            kinds.find(it => it.value.includes(arguments[0])).value;
        """,
        what);
    browser.type("#reading-value", value);
    browser.type("#reading-within", within, Keys.ENTER);
    browser.await(
        "document.querySelector('#besides-weak').textContent.includes(arguments[0])", counted);
  }

  @Test
  void whatMendsIsTakenAtATouch() {
    ask("mend");
    String first = answer("mend");
    assertTrue(first.contains("Hydraulic estimate only"), first);
    assertTrue(first.contains("high fall"), first);
    browser.click("#answer-mend [data-value*='pipe.size=2 in']");
    browser.await("document.querySelectorAll('#changed .changes li').length === 1");
    browser.await("document.querySelector('#changed').textContent.includes('2 in instead of')");
  }

  @Test
  void allValvesAreSetAtATouch() {
    ask("balance");
    browser.click("#answer-balance [data-do=set-all]");
    browser.await("document.querySelectorAll('#changed .changes li').length === 1");
    shows("1,480 gph");
  }

  @Test
  void aSheetDroppedOntoThePageIsTriedAndTaken() throws IOException {
    browser.text(DROP, "flow [gph],head [ft],power [W]\n0,30,500\n3000,24,600\n6000,6,650\n");
    browser.await("document.querySelector('.dropped').textContent.startsWith('D-77')");
    ask("pumps");
    browser.click("[data-do=take-sheet][data-value='D-77']");
    browser.await("document.querySelector('#changed').textContent.includes('D-77 instead of')");
    save();
    assertTrue(Files.exists(folder.resolve("pumps/D-77.csv")));
    assertEquals(flowOf("high fall"), flowIn(solve(page.file())));
  }

  /** Each document as a page of its own, and on paper. */
  @Test
  void theJobSheetAndItsListsOpenAndPrint() {
    ask("sheet");
    List<String> links =
        browser.texts(
            "return [...document.querySelectorAll('#answer-sheet a')].map(it => it.href)");
    assertEquals(6, links.size(), links.toString());
    for (String link : links) {
      if (link.contains("sheet")) {
        browser.open(java.net.URI.create(link));
        browser.await("document.body.innerText.includes('Twin falls off one pump')");
        String begins =
            new String(Arrays.copyOf(browser.print(210, 297), 5), StandardCharsets.ISO_8859_1);
        assertEquals("%PDF-", begins, link);
      } else {
        visit(page);
        String text =
            browser.text(
                "const got = await fetch(arguments[0]); return got.status + await got.text()",
                link);
        assertTrue(text.startsWith("200") && text.length() > 200, text);
        assertTrue(text.contains(link.contains("materials") ? "PVC schedule 40" : "readings:"));
      }
    }
  }

  @Test
  void inConditionsTheWorstIsNamed() {
    browser.text("document.getElementById('panel-solve-conditions').checked = true");
    ask("solve");
    assertTrue(answer("solve").contains("autumn"), answer("solve"));
  }
}
