package rillwright.cli.study.mend.trial;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.site.Room;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.SteadyState;

/**
 * A change that was put into the project and balanced.
 *
 * @param candidate the changes
 * @param serves points whose need it meets; where it meets none, those that it helps
 * @param meets the needs that it meets
 * @param leaves what is still in need with it, and what is so by it alone
 * @param mends whether every need that it serves is met, and nothing is lost that was met before
 * @param state with the changes
 * @param powerW drawn from the wire then; empty if a sheet gives none
 * @param costPerYear of electricity then; empty if it is not known
 * @param leastShare the least share of its target that any fall gets, 1 at most
 * @param rooms how much ponds may fall while it runs then; none where that was not asked
 */
public record Remedy(
    Candidate candidate,
    List<PointName> serves,
    List<Need> meets,
    List<Need> leaves,
    boolean mends,
    SteadyState state,
    OptionalDouble powerW,
    OptionalDouble costPerYear,
    double leastShare,
    List<Room> rooms) {
  /** Watts that differ by less than this share are the same. */
  private static final double SAME_POWER = 0.01;

  public Remedy {
    serves = List.copyOf(serves);
    meets = List.copyOf(meets);
    leaves = List.copyOf(leaves);
    rooms = List.copyOf(rooms);
  }

  /** Whether every need is met with it. */
  public boolean mendsAllOf(List<Need> needs) {
    return mends && meets.containsAll(needs);
  }

  /** How many of some needs it meets, each fall that lacks water counted once. */
  public int metOf(List<Need> needs) {
    return (int) Need.eachOnce(needs).stream().filter(meets::contains).count();
  }

  /** Whether it does all that another does with some of its changes, so that the rest is idle. */
  public boolean isEnoughFor(Remedy other, List<Need> needs) {
    return candidate.isPartOf(other.candidate)
        && mendsAllOf(needs)
        && other.mendsAllOf(needs)
        && powerW.orElse(0) <= other.powerW.orElse(0) * (1 + SAME_POWER);
  }

  /** Whether it takes neither money nor digging. */
  public boolean isFree() {
    return candidate.price().orElse(1) == 0 && !candidate.work().digs();
  }

  /** What every fall and outlet gets then, m³/s. */
  public Map<PointName, Double> fallsM3PerS() {
    Map<PointName, Double> falls = new LinkedHashMap<>();
    state
        .network()
        .waysOut()
        .forEach(point -> falls.put(point.name(), state.point(point.name()).outflowM3PerS()));
    return falls;
  }

  /** Price and electricity over some years; empty if either is not known. */
  public OptionalDouble costOver(double years) {
    return candidate.price().isPresent() && costPerYear.isPresent()
        ? OptionalDouble.of(candidate.price().getAsDouble() + years * costPerYear.getAsDouble())
        : OptionalDouble.empty();
  }
}
