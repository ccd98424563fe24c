package rillwright.cli.study.asbuilt;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import rillwright.cli.file.DrawnNetworks;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.study.diagnosis.job.Alteration;
import rillwright.solver.study.diagnosis.reading.Looks;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Observed;
import rillwright.solver.study.diagnosis.reading.When;
import rillwright.solver.study.uncertainty.posterior.Model;

/** What would be read at a job with given values, and after it what flows where it runs out. */
final class DrawnJob implements Model {
  private static final When RUNNING = new When.Running();

  private final Network middle;
  private final Map<When, Optional<Observed>> inTheMiddle = new ConcurrentHashMap<>();
  private final DrawnNetworks networks;
  private final List<Measurand> read;
  private final List<PointName> ways;

  /**
   * A job.
   *
   * @param middle with the middle of every quantity: others are found from how it is observed
   * @param read what is read
   * @param ways falls and outlets whose flow is asked for
   */
  DrawnJob(Network middle, DrawnNetworks networks, List<Measurand> read, List<PointName> ways) {
    this.middle = middle;
    this.networks = networks;
    this.read = read;
    this.ways = ways;
  }

  /** The same values, other things read. */
  DrawnJob reading(List<Measurand> others) {
    return new DrawnJob(middle, networks, others, ways);
  }

  @Override
  public Optional<double[]> with(double[] values) {
    List<Double> boxed = new ArrayList<>();
    for (double value : values) {
      boxed.add(value);
    }
    return network(boxed).flatMap(this::outcome);
  }

  private Optional<Network> network(List<Double> values) {
    try {
      return Optional.of(networks.with(values));
    } catch (InvalidInput contradiction) {
      return Optional.empty();
    }
  }

  private Optional<double[]> outcome(Network network) {
    Map<When, Optional<Observed>> states = new HashMap<>();
    Optional<Observed> running = observed(network, RUNNING);
    states.put(RUNNING, running);
    if (running.isEmpty()) {
      return Optional.empty();
    }
    double[] outcome = new double[read.size() + ways.size()];
    for (int i = 0; i < read.size(); i++) {
      outcome[i] =
          states
              .computeIfAbsent(read.get(i).when(), when -> observed(network, when))
              .map(read.get(i)::valueIn)
              .filter(OptionalDouble::isPresent)
              .map(OptionalDouble::getAsDouble)
              .orElse(Double.NaN);
    }
    for (int i = 0; i < ways.size(); i++) {
      outcome[read.size() + i] = running.get().flowM3PerS(ways.get(i));
    }
    return Optional.of(outcome);
  }

  private Optional<Observed> observed(Network network, When when) {
    return inTheMiddle
        .computeIfAbsent(when, state -> Observed.of(new Alteration(middle), state))
        .map(like -> Observed.of(seen(network), when, like))
        .orElseGet(() -> Observed.of(seen(network), when));
  }

  private static Alteration seen(Network network) {
    Alteration job = new Alteration(network);
    Looks.showClogged(job);
    return job;
  }
}
