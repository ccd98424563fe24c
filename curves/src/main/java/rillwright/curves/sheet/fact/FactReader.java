package rillwright.curves.sheet.fact;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import rillwright.curves.sheet.fault.FaultList;
import rillwright.curves.sheet.text.Cell;
import rillwright.curves.wording.Nearest;
import rillwright.curves.wording.PlainText;
import rillwright.solver.law.pump.SuctionNeeds;

/** Reads the facts in a sheet's comment lines. */
public final class FactReader {
  private final FactValues values;
  private final FaultList faults;
  private final Map<String, Cell> found = new HashMap<>();
  private final List<String> remarks = new ArrayList<>();

  public FactReader(FactValues values, FaultList faults) {
    this.values = values;
    this.faults = faults;
  }

  /** Takes one comment in: a cell that begins with a number sign. */
  public void take(Cell comment) {
    String text = comment.text().substring(1).strip();
    int colon = text.indexOf(':');
    String key = colon < 0 ? "" : text.substring(0, colon).strip().toLowerCase(Locale.ROOT);
    int offset = comment.text().indexOf(text) + colon + 1;
    String value = text.substring(colon + 1);
    int blanks = value.length() - value.stripLeading().length();
    Cell place = new Cell(comment.line(), comment.column() + offset + blanks, value.strip());
    if (FactValues.KEYS.contains(key)) {
      if (found.containsKey(key)) {
        note(comment, "a second \"# " + key + "\"; the first is in line " + found.get(key).line());
      } else if (place.isEmpty()) {
        note(comment, "nothing after \"# " + key + ":\"; write it or leave the line out");
      } else {
        found.put(key, place);
      }
      return;
    }
    if (!key.isEmpty()) {
      Nearest.to(key, FactValues.KEYS).stream()
          .findFirst()
          .filter(meant -> meant.length() > 2 * 2)
          .ifPresent(
              meant ->
                  note(comment, PlainText.quoted(key) + "; did you mean \"# " + meant + "\"?"));
    }
    if (!text.isEmpty()) {
      remarks.add(text);
    }
  }

  /** All facts taken in. */
  public SheetFacts facts() {
    return new SheetFacts(
        fact(FactValues.MAKER, cell -> Optional.of(cell.text())),
        fact(FactValues.PRICE, values::price),
        fact(FactValues.KIND, cell -> Optional.of(cell.text())),
        new SuctionNeeds(
            length(FactValues.MIN_SUBMERGENCE),
            length(FactValues.NPSH_REQUIRED),
            length(FactValues.SELF_PRIMING)),
        fact(FactValues.VARIABLE_SPEED, values::speedRange),
        length(FactValues.SOLIDS),
        new Nameplate(
            number(FactValues.RATED_POWER, values::powerW),
            number(
                found.containsKey(FactValues.VOLTAGE) ? FactValues.VOLTAGE : FactValues.RATED,
                values::volts),
            number(FactValues.POWER_FACTOR, values::powerFactor),
            fact(FactValues.PHASES, values::phases).orElse(1)),
        remarks);
  }

  private <T> Optional<T> fact(String key, Function<Cell, Optional<T>> reading) {
    return Optional.ofNullable(found.get(key)).flatMap(reading);
  }

  private OptionalDouble length(String key) {
    return number(key, cell -> values.lengthM(key, cell));
  }

  private OptionalDouble number(String key, Function<Cell, Optional<Double>> reading) {
    return fact(key, reading).map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }

  private void note(Cell cell, String message) {
    faults.add(cell.line(), cell.column(), message);
  }
}
