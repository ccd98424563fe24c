package rillwright.curves.sheet.fault;

import java.util.List;
import java.util.stream.Collectors;

/** A data sheet that cannot be used, with everything that is wrong with it. */
public final class SheetFaults extends Exception {
  private static final long serialVersionUID = 1;

  private final transient List<SheetFault> faults;

  /**
   * The faults of one sheet.
   *
   * @param sheet name for the messages, such as the file's
   * @param faults in the order of the sheet, at least one
   */
  public SheetFaults(String sheet, List<SheetFault> faults) {
    super(
        faults.stream()
            .map(
                fault -> sheet + ":" + fault.line() + ":" + fault.column() + ": " + fault.message())
            .collect(Collectors.joining("\n")));
    this.faults = List.copyOf(faults);
  }

  /** The faults, in the order of the sheet. */
  public List<SheetFault> faults() {
    return faults;
  }
}
