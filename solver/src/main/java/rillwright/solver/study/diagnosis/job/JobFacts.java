package rillwright.solver.study.diagnosis.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;

/**
 * What is known of a job besides its network.
 *
 * @param sizeBelow the same run of pipe one size smaller; empty where there is none
 * @param isSoft whether a run can kink or be crushed
 * @param sheets data sheets by model, in the order of the file
 * @param evaporationMPerS by how much open water falls by evaporation, m/s, where known
 */
public record JobFacts(
    Function<Run, Optional<Run>> sizeBelow,
    Predicate<Run> isSoft,
    Map<String, Sheet> sheets,
    OptionalDouble evaporationMPerS) {
  /** Nothing. */
  public static final JobFacts NONE =
      new JobFacts(run -> Optional.empty(), run -> false, Map.of(), OptionalDouble.empty());

  public JobFacts {
    sheets = Collections.unmodifiableMap(new LinkedHashMap<>(sheets));
  }

  /**
   * A pump's data sheet.
   *
   * @param curve its head and power by flow
   * @param voltageV that it is rated for, V, where known
   * @param threePhase whether it runs on three phases
   */
  public record Sheet(PumpCurve curve, OptionalDouble voltageV, boolean threePhase) {}

  /** The voltage that a pump is rated for, V; empty where no sheet says it. */
  public OptionalDouble ratedV(Pump pump) {
    Sheet sheet = sheets.get(pump.model());
    return sheet == null ? OptionalDouble.empty() : sheet.voltageV();
  }

  /** Whether a pump runs on three phases by its sheet. */
  public boolean isThreePhase(Pump pump) {
    Sheet sheet = sheets.get(pump.model());
    return sheet != null && sheet.threePhase();
  }
}
