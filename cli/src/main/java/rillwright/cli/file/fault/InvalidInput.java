package rillwright.cli.file.fault;

import java.util.List;
import java.util.stream.Collectors;

/** An input that cannot be used, with everything that was found wrong with it. */
public final class InvalidInput extends RuntimeException {
  private static final long serialVersionUID = 1;

  private final transient List<Fault> faults;

  /**
   * An input with faults.
   *
   * @param faults in the order in which to tell them, at least one
   */
  public InvalidInput(List<Fault> faults) {
    super(faults.stream().map(Fault::toString).collect(Collectors.joining("\n")));
    this.faults = List.copyOf(faults);
  }

  /** An input with one fault. */
  public InvalidInput(Place place, String message) {
    this(List.of(Fault.at(place, message)));
  }

  /** The faults, in the order in which to tell them. */
  public List<Fault> faults() {
    return faults;
  }
}
