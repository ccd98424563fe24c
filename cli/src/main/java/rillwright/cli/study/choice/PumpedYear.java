package rillwright.cli.study.choice;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.file.site.Running;
import rillwright.cli.study.PumpSource;
import rillwright.cli.study.Turnover;
import rillwright.cli.study.duty.DutyAnswer;
import rillwright.solver.network.Basin;
import rillwright.solver.trial.PumpTrial;

/** What pumps that are tried take in a year, and how often they turn the water. */
public final class PumpedYear {
  private final Running running;
  private final Optional<Basin> source;

  /**
   * The year of a project.
   *
   * @param duty of the pump that is tried
   */
  public PumpedYear(DutyAnswer duty) {
    this.running = duty.running();
    this.source = PumpSource.of(duty.network(), duty.place());
  }

  /** Electricity of a year as it would run, in the currency of the price; empty if not known. */
  public OptionalDouble cost(PumpTrial trial) {
    OptionalDouble power = trial.inUse().powerW();
    return power.isPresent() ? running.costPerYear(power.getAsDouble()) : power;
  }

  /** How often it would turn the water of the basin that feeds it; empty if not known. */
  public Optional<Turnover> turnover(PumpTrial trial) {
    return source.flatMap(
        basin -> Turnover.of(basin, trial.inUse().flowM3PerS(), running.hoursADay()));
  }
}
