package rillwright.solver.study.pipechoice;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.trial.SiteState;

/**
 * Sizes that lines could have, and the network with them.
 *
 * @param sizes by line, in the order in which the lines were named; copied
 * @param network with these sizes
 * @param states the same in the conditions that judge them; empty to judge by the network itself
 * @param materialCost of the lines' pipe and fittings, in the currency of all prices; empty if not
 *     known
 */
public record PipeOption(
    Map<LineName, Size> sizes,
    Network network,
    List<SiteState> states,
    OptionalDouble materialCost) {
  public PipeOption {
    sizes = Collections.unmodifiableMap(new LinkedHashMap<>(sizes));
    states = List.copyOf(states);
  }

  /**
   * A size of pipe.
   *
   * @param name as the catalogue has it
   * @param boreM inside diameter, m
   */
  public record Size(String name, double boreM) {}

  /** Inside diameters of all lines together, m. */
  public double sumOfBoresM() {
    return sizes.values().stream().mapToDouble(Size::boreM).sum();
  }

  /** Whether no line is smaller than in another option and one is larger. */
  boolean isLargerThan(PipeOption other) {
    boolean anyLarger = false;
    for (Map.Entry<LineName, Size> entry : sizes.entrySet()) {
      double bore = entry.getValue().boreM();
      double otherBore = other.sizes.get(entry.getKey()).boreM();
      if (bore < otherBore) {
        return false;
      }
      anyLarger |= bore > otherBore;
    }
    return anyLarger;
  }
}
