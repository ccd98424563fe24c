package rillwright.curves.sheet.fault;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects the faults of one sheet while it is read. */
public final class FaultList {
  private static final int MOST = 50;

  private final List<SheetFault> faults = new ArrayList<>();

  /** Notes a fault; line and column count from 1. */
  public void add(int line, int column, String message) {
    faults.add(new SheetFault(line, column, message));
  }

  /** Whether nothing is wrong so far. */
  public boolean isEmpty() {
    return faults.isEmpty();
  }

  /** Refuses the sheet if anything is wrong; of very many faults the first fifty are reported. */
  public void throwIfAny(String sheet) throws SheetFaults {
    if (faults.isEmpty()) {
      return;
    }
    List<SheetFault> shown = new ArrayList<>(faults);
    shown.sort(Comparator.comparingInt(SheetFault::line).thenComparingInt(SheetFault::column));
    if (shown.size() > MOST) {
      int left = shown.size() - MOST;
      shown.subList(MOST, shown.size()).clear();
      SheetFault last = shown.get(MOST - 1);
      shown.add(new SheetFault(last.line(), last.column(), left + " more faults after this one"));
    }
    throw new SheetFaults(sheet, shown);
  }
}
