package rillwright.cli.file.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rillwright.cli.file.edit.EditedTextTest.POND;

import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.file.fault.InvalidInput;

/** What cannot be edited is refused in one message. All data is invented. */
class RefusedEditsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "points.fal.crest | there is no \"fal\"; did you mean \"fall\"",
        "lines.supply.valve 2 | nothing in the file has this address",
        "readings.3 | there is no \"3\"; rows are 1 to 2",
        "title.x | \"title\" is \"A pond: small\" and has no field \"x\""
      })
  void whatCannotBeRemovedIsRefusedInOneMessage(String address, String message) {
    InvalidInput refused =
        assertThrows(InvalidInput.class, () -> EditedTextTest.of(POND).remove(address));
    assertEquals(1, refused.faults().size());
    assertTrue(refused.getMessage().contains(message), refused.getMessage());
  }

  @Test
  void whatCannotBeMadeIsRefusedInOneMessage() {
    assertRefused("is there already", text -> text.add("points.fall", "{kind: tee}"));
    assertRefused("cannot be read", text -> text.add("points.tee", "{kind: tee"));
    assertRefused("it may be 1 to 5", text -> text.insert("lines.supply.parts", 6, "run: 1 m"));
    assertRefused("there is no position 5", text -> text.move("lines.supply.parts", 1, 5));
    assertRefused("not a list", text -> text.move("lines.supply.from", 1, 1));
    assertRefused("is there already", text -> text.rename("points.fall", "jet"));
    assertRefused("is empty", text -> text.rename("points.fall", " "));
    assertRefused("there is no \"x\"", text -> text.rename("lines.x", "y"));
    assertRefused("what can be renamed", text -> text.rename("title", "y"));
  }

  private static void assertRefused(String message, UnaryOperator<EditedText> edit) {
    InvalidInput refused =
        assertThrows(InvalidInput.class, () -> edit.apply(EditedTextTest.of(POND)));
    assertEquals(1, refused.faults().size());
    assertTrue(refused.getMessage().contains(message), refused.getMessage());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "points: &all {pond: {level: 0 ft}}",
        "points: {pond: *all}",
        "? points\n: {pond: {level: 0 ft}}\n? lines\n: {}\n",
        "points: {\"pond\"   : {level: 0 ft}"
      })
  void whatCannotBeWrittenIntoIsRefusedOrRight(String text) {
    try {
      EditedText edited = EditedTextTest.of(text).set("points.pond.level=1 ft");
      assertEquals(text.replace("0 ft", "1 ft"), edited.text());
    } catch (InvalidInput refused) {
      assertEquals(1, refused.faults().size());
    }
  }
}
