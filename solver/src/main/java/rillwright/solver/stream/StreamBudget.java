package rillwright.solver.stream;

import java.util.List;
import rillwright.solver.finding.Finding;

/**
 * Where a plan's water is.
 *
 * @param running with the pumps running and nothing topped up
 * @param toppedUp with the pumps running and the basins topped up to their levels at rest
 * @param basins in the order of the network
 * @param findings what the crew should know, the gravest first
 * @param iterations Newton steps of the balances at the levels that were tried
 */
public record StreamBudget(
    RunningWater running,
    RunningWater toppedUp,
    List<LevelBudget> basins,
    List<Finding> findings,
    int iterations) {
  public StreamBudget {
    basins = List.copyOf(basins);
    findings = List.copyOf(findings);
  }
}
