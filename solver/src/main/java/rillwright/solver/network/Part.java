package rillwright.solver.network;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;

/**
 * One piece of a line, in the order the water meets them. All that the balance asks of it is its
 * head law.
 */
public sealed interface Part
    permits Run,
        Fitting,
        Valve,
        CheckValve,
        Skimmer,
        Filter,
        Pump,
        PlannedPump,
        Gauge,
        HighPoint,
        Loss {

  /** The word for its kind in project files and results. */
  String kind();

  /** What it is, for a person: "38 ft of 2 in flexible PVC" without the length. */
  default String label() {
    return kind();
  }

  /** Its bore, where it has one. */
  Optional<Bore> bore();

  /** The head that it takes. */
  HeadLaw law(Setting setting);

  /**
   * Whether what it takes, as its maker or the file states it, takes in the change of bore between
   * the runs beside it.
   */
  default boolean coversChangeOfBore() {
    return false;
  }

  /** The same part with its bore multiplied; a part without a bore is as it was. */
  default Part narrowed(double factor) {
    return this;
  }

  /**
   * The head loss over it in a line without flow, m, seen from upstream; empty if it is closed then
   * and so cuts off what lies downstream of it.
   */
  default OptionalDouble headLossAtRest(Setting setting) {
    HeadLaw law = law(setting);
    boolean openBothWays = law.leastFlow() < 0 && law.greatestFlow() > 0;
    return openBothWays ? OptionalDouble.of(law.headLossAt(0)) : OptionalDouble.empty();
  }
}
