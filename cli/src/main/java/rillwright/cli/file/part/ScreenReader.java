package rillwright.cli.file.part;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.solver.network.Screen;

/** Reads the screen of an intake. */
public final class ScreenReader {
  /** The field's name. */
  public static final String SCREEN = "screen";

  private static final Range OPEN = Range.between(0.01, 1, "must be 1 % to 100 %");

  private ScreenReader() {}

  /** The screen that a pump or an entrance says; empty if it says none, or says it wrongly. */
  public static Optional<Screen> find(Fields fields) {
    Optional<Fields> given = fields.findFields(SCREEN, List.of("area", "open"));
    if (given.isEmpty()) {
      return Optional.empty();
    }
    double area = given.get().require("area", Measure.AREA, Range.POSITIVE, "2 ft2");
    double open = given.get().findOr("open", Measure.SHARE, OPEN, Screen.USUALLY_OPEN);
    if (!given.get().has("open")) {
      given
          .get()
          .ledger()
          .note(
              fields.nameOf(SCREEN)
                  + ": half of it is taken as holes (common practice, no source); write \"open\""
                  + " in the file");
    }
    if (given.get().has("open") && given.get().areSound()) {
      String part = given.get().findText("area").orElse("");
      String holes = given.get().findText("open").orElse("");
      given.get().ledger().note(fields.nameOf(SCREEN) + ": " + holes + " of " + part + " is open");
    }
    return given.get().areSound() ? Optional.of(new Screen(area, open)) : Optional.empty();
  }
}
