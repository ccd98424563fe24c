package rillwright.cli.report;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.file.site.Running;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.network.Basin;
import rillwright.solver.trial.PumpTrial;

/** What pumps that are tried take in a year, and how often they turn the water. */
public final class PumpedYear {
  private final Running running;
  private final Optional<Basin> source;

  /**
   * The year of a project.
   *
   * @param running how long the pumps run and what electricity costs
   * @param duty of the pump that is tried
   */
  public PumpedYear(Running running, DutyAnswer duty) {
    this.running = running;
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

  /** Both in words, a sentence each; empty if neither is known. */
  public String sentences(PumpTrial trial, ShownUnits units, Optional<String> currency) {
    OptionalDouble cost = cost(trial);
    String money =
        cost.isPresent()
            ? " Its electricity costs "
                + units.amount(cost.getAsDouble())
                + currency.map(name -> " " + name).orElse("")
                + " a year."
            : "";
    return turnover(trial).map(turnover -> " " + turnover.sentence(units)).orElse("") + money;
  }
}
