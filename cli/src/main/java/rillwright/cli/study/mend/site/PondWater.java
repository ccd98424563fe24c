package rillwright.cli.study.mend.site;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rillwright.solver.network.PointName;

/**
 * What ponds are once their streams run.
 *
 * @param needs what they need
 * @param marks that water does not keep its room to, and that nothing is changed for: what no
 *     change may add
 * @param rooms how much they may fall then
 * @param runningShares what each fall gets of its target at the levels that run, nothing topped up
 */
public record PondWater(
    List<Need> needs, List<Need> marks, List<Room> rooms, Map<PointName, Double> runningShares) {
  /** Where nothing is asked of them. */
  static final PondWater NOT_ASKED = new PondWater(List.of(), List.of(), List.of(), Map.of());

  public PondWater {
    needs = List.copyOf(needs);
    marks = List.copyOf(marks);
    rooms = List.copyOf(rooms);
    runningShares = Collections.unmodifiableMap(new LinkedHashMap<>(runningShares));
  }

  /** What it needs, and marks that it is too near to, that it was not before. */
  public List<Need> addedTo(PondWater before) {
    return Stream.concat(
            needs.stream().filter(need -> before.needs.stream().noneMatch(need::isLike)),
            marks.stream().filter(mark -> before.marks.stream().noneMatch(mark::isLike)))
        .toList();
  }

  /** Whether it has none of some needs. */
  public boolean meets(List<Need> asked) {
    return asked.stream().noneMatch(need -> needs.stream().anyMatch(need::isLike));
  }
}
