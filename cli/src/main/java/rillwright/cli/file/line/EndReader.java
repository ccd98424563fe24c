package rillwright.cli.file.line;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Limits;
import rillwright.cli.file.part.ScreenReader;
import rillwright.cli.file.quantity.Measure;
import rillwright.solver.law.Bore;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.Point;
import rillwright.solver.network.Screen;

/** Reads what the ends of a line cost. */
final class EndReader {
  static final String ENTRANCE = "entrance";
  static final String EXIT = "exit";

  private EndReader() {}

  /**
   * One end of a line.
   *
   * @param line the line's fields
   * @param field {@link #ENTRANCE} or {@link #EXIT}
   * @param point where the line ends; empty if that is faulty
   * @param bore of the line's pipe, else of the nearest part
   * @param usual what it costs if the file does not say
   */
  static LineEnd read(
      Fields line, String field, Optional<Point> point, Optional<Bore> bore, EndLoss usual) {
    boolean into = field.equals(ENTRANCE);
    Optional<Fields> given =
        line.findFields(
            field, into ? List.of("k", "inside", ScreenReader.SCREEN) : List.of("k", "inside"));
    if (given.isEmpty()) {
      return new LineEnd(usual, bore);
    }
    Fields end = given.get();
    Optional<Screen> screen = into ? ScreenReader.find(end) : Optional.empty();
    if (end.has(ScreenReader.SCREEN) && !end.has("k") && !end.has("inside")) {
      return new LineEnd(usual, bore, screen);
    }
    double k = end.require("k", Measure.NUMBER, Limits.LOSS_COEFFICIENT, "0.5");
    Optional<Bore> own =
        end.find("inside", Measure.SMALL_LENGTH, Limits.BORE).stream()
            .mapToObj(Bore::new)
            .findFirst();
    boolean atTee = point.filter(there -> there.kind().equals("tee")).isPresent();
    if (k != 0 && atTee) {
      end.fault(
          "k",
          "a line end at a tee has no loss of its own; write it as a fitting, for example"
              + " \"fitting: {type: tee branch}\"");
    }
    Optional<Bore> known = own.or(() -> bore);
    if (k != 0 && !atTee && known.isEmpty()) {
      end.ledger()
          .note(
              line.nameOf(field)
                  + " takes no head, because no pipe is known there; give its inside diameter");
    }
    return new LineEnd(EndLoss.bothWays(k), known, screen);
  }
}
