package rillwright.cli.study.odds;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.DrawnNetworks;
import rillwright.cli.file.UncertainQuantities.Named;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.solver.network.Network;
import rillwright.solver.study.uncertainty.Distribution;
import rillwright.solver.study.uncertainty.UncertainNetwork;

/** A project as the study of uncertainty takes it. */
final class UncertainProject implements UncertainNetwork {
  private final DrawnNetworks networks;
  private final List<Distribution> unknowns;

  UncertainProject(DrawnNetworks networks, List<Named> quantities) {
    this.networks = networks;
    this.unknowns = quantities.stream().map(named -> named.quantity().distribution()).toList();
  }

  @Override
  public List<Distribution> unknowns() {
    return unknowns;
  }

  @Override
  public Optional<Network> with(List<Double> values) {
    try {
      return Optional.of(networks.with(values));
    } catch (InvalidInput contradiction) {
      return Optional.empty();
    }
  }

  /** What is wrong with values; empty if nothing is. */
  Optional<String> whatIsWrongWith(List<Double> values) {
    try {
      networks.with(values);
      return Optional.empty();
    } catch (InvalidInput contradiction) {
      return Optional.of(contradiction.faults().get(0).message());
    }
  }
}
