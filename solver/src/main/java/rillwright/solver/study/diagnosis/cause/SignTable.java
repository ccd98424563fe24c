package rillwright.solver.study.diagnosis.cause;

import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * By what factor a sign changes how likely a cause is; 1 where nothing is said.
 *
 * @param factors by sign and name of cause; each greater than 0
 */
public record SignTable(Map<Sign, Map<String, Double>> factors) {
  public SignTable {
    factors = Collections.unmodifiableMap(new EnumMap<>(factors));
  }

  /** By what factor some signs together change how likely a cause is. */
  public double factor(Collection<Sign> signs, String cause) {
    double factor = 1;
    for (Sign sign : signs) {
      factor *= factors.getOrDefault(sign, Map.of()).getOrDefault(cause, 1.0);
    }
    return factor;
  }

  /** What crews go by; common practice, no source. */
  public static SignTable commonPractice() {
    Map<Sign, Map<String, Double>> table = new EnumMap<>(Sign.class);
    table.put(
        Sign.SUDDEN,
        row()
            .with(
                2,
                "valve not where the file says",
                "check valve stuck",
                "hose kinked",
                "bypass open")
            .with(1.5, "leak", "pump turning backwards", "runs back through an idle pump")
            .with(0.4, "pump worn", "filter clogged", "spill box mats clogged", "stream leak")
            .with(1.5, "water behind the rocks")
            .with(0.4, "loss clogged")
            .with(0.1, "pipe fouled", "pipe smaller than drawn", "more lift than drawn")
            .with(0.1, "nothing wrong", "other pump")
            .factors());
    table.put(
        Sign.FOR_WEEKS,
        row()
            .with(2, "pipe fouled", "filter clogged", "spill box mats clogged")
            .with(2, "loss clogged")
            .with(1.5, "net clogged", "intake cage packed", "pump worn", "skimmer clogged")
            .with(0.4, "valve not where the file says", "hose kinked", "bypass open")
            .with(0.2, "pump turning backwards", "more lift than drawn")
            .with(0.1, "pipe smaller than drawn", "nothing wrong", "other pump")
            .factors());
    table.put(
        Sign.SINCE_BUILT,
        row()
            .with(6, "pipe smaller than drawn", "nothing wrong", "other pump")
            .with(4, "more lift than drawn", "low voltage")
            .with(2, "valve not where the file says", "water behind the rocks")
            .with(0.2, "loss clogged")
            .with(1.5, "crest wider", "crest not level", "pump turning backwards")
            .with(0.2, "skimmer clogged", "net clogged", "intake cage packed", "pump worn")
            .with(0.2, "filter clogged", "spill box mats clogged", "pipe fouled", "pond low")
            .factors());
    table.put(
        Sign.BUBBLES,
        row()
            .with(6, "air in the pump")
            .with(2.5, "skimmer clogged", "net clogged", "pond low", "air at a high point")
            .with(
                0.6,
                "hose kinked",
                "valve not where the file says",
                "check valve stuck",
                "pipe fouled")
            .factors());
    table.put(
        Sign.NO_BUBBLES,
        row().with(0.15, "air in the pump").with(0.6, "skimmer clogged", "pond low").factors());
    table.put(
        Sign.SURGING,
        row()
            .with(2.5, "skimmer clogged", "net clogged", "pond low", "air in the pump")
            .with(1.5, "air at a high point")
            .with(0.5, "pipe fouled", "pipe smaller than drawn", "more lift than drawn")
            .with(0.5, "nothing wrong", "pump worn")
            .factors());
    table.put(
        Sign.BETTER_AFTER_RESTART,
        row()
            .with(4, "intake cage packed")
            .with(2, "air in the pump")
            .with(1.5, "skimmer clogged", "net clogged", "check valve stuck")
            .with(0.3, "pump worn", "pump slow", "pipe fouled", "hose kinked", "leak")
            .with(0.1, "pipe smaller than drawn", "more lift than drawn", "nothing wrong")
            .factors());
    table.put(
        Sign.POND_DROPPING,
        row()
            .with(4, "leak", "stream leak", "pond leak")
            .with(3, "pond low")
            .with(0.2, "water behind the rocks")
            .with(0.6, "bypass open", "nothing wrong")
            .factors());
    table.put(
        Sign.POND_STEADY,
        row()
            .with(3, "water behind the rocks")
            .with(0.5, "pond low")
            .with(0.2, "leak", "stream leak", "pond leak")
            .factors());
    table.put(
        Sign.WEAK_AT_THE_TOP, row().with(0.2, "stream leak", "water behind the rocks").factors());
    table.put(
        Sign.WEAK_ONLY_DOWNSTREAM,
        row()
            .with(10, "stream leak", "water behind the rocks")
            .with(2, "crest wider", "crest not level")
            .factors());
    table.put(
        Sign.AFTER_ELECTRICAL_WORK,
        row()
            .with(20, "pump turning backwards")
            .with(4, "low voltage")
            .with(3, "pump slow")
            .factors());
    table.put(
        Sign.AFTER_DIGGING,
        row().with(5, "hose kinked", "leak").with(1.5, "bypass open", "stream leak").factors());
    table.put(
        Sign.AFTER_CLEANING,
        row()
            .with(4, "valve not where the file says")
            .with(2, "bypass open", "air in the pump", "check valve stuck", "hose kinked")
            .with(0.3, "net clogged", "skimmer clogged", "intake cage packed", "filter clogged")
            .with(0.3, "spill box mats clogged")
            .factors());
    table.put(
        Sign.AFTER_WINTER,
        row()
            .with(3, "leak", "stream leak")
            .with(2, "valve not where the file says", "bypass open", "water behind the rocks")
            .with(2, "crest not level", "check valve stuck")
            .with(1.5, "air in the pump", "hose kinked")
            .factors());
    table.put(
        Sign.LOUD_PUMP,
        row()
            .with(3, "air in the pump", "intake cage packed")
            .with(2, "pump worn", "check valve stuck")
            .with(1.5, "net clogged", "skimmer clogged", "pond low")
            .with(0.6, "pipe smaller than drawn", "more lift than drawn", "nothing wrong")
            .factors());
    table.put(
        Sign.MILKY_WATER,
        row()
            .with(5, "air in the pump")
            .with(2, "skimmer clogged", "net clogged", "pond low", "air at a high point")
            .factors());
    table.put(
        Sign.BREAKER_TRIPS,
        row()
            .with(3, "low voltage", "pump worn")
            .with(2, "pump slow", "pump turning backwards")
            .factors());
    table.put(
        Sign.RUNS_HOT,
        row()
            .with(4, "low voltage")
            .with(2, "pump slow", "intake cage packed", "check valve stuck")
            .with(1.5, "valve not where the file says", "hose kinked", "pump worn")
            .factors());
    table.put(
        Sign.AFTER_RAIN,
        row()
            .with(2, "net clogged", "skimmer clogged", "intake cage packed")
            .with(0.3, "pond low")
            .factors());
    return new SignTable(table);
  }

  private static Row row() {
    return new Row(new LinkedHashMap<>());
  }

  private record Row(Map<String, Double> factors) {
    Row with(double factor, String... causes) {
      for (String cause : causes) {
        factors.put(cause, factor);
      }
      return this;
    }
  }
}
