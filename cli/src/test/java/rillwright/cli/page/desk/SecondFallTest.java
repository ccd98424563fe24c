package rillwright.cli.page.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import rillwright.cli.file.Show;
import rillwright.cli.file.edit.EditedText;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.tree.SourceText;

/** A tee in a run, with its branch and fall. */
class SecondFallTest {
  private static final Path POND = Path.of("../examples/small-pond/pond.yaml");

  private static EditedText with(String after) {
    EditedText pond = EditedText.of(SourceText.read(POND));
    return SecondFall.in(pond, "lines.supply.run", "16 ft", after, "low fall", Show.US);
  }

  /** All that stood behind the tee goes on to the first fall; its line keeps what is before. */
  @Test
  void theRunIsDividedAndTheRestOfTheLineGoesOn() {
    EditedText made = with("6 ft");
    List<String> lines = List.of("intake", "supply", "to fall", "to low fall");
    assertEquals(lines, made.tree().findMap("lines").orElseThrow().keys());
    String text = made.text();
    assertTrue(text.contains("    to: split\n    pipe: {material: PVC"), text);
    assertTrue(text.contains("- run: 6 ft\n  to fall:"), text);
    assertTrue(text.contains("- run: 10 ft"), text);
    assertTrue(text.indexOf("count: 3") > text.indexOf("to fall:"), text);
    assertEquals(List.of(), Sight.of(text, POND).faults());
  }

  @Test
  void aTeeBeyondTheRunIsRefused() {
    for (String after : List.of("16 ft", "0 ft", "2 m", "soon")) {
      String wrong = assertThrows(InvalidInput.class, () -> with(after)).getMessage();
      assertTrue(wrong.contains("within the run of 16 ft; write for example \"8 ft\""), wrong);
    }
  }
}
