package rillwright.cli.file.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;

/** Fields under names that earlier versions wrote; files that use them stay readable. */
public final class FormerNames {
  private static final String POINTS = "points";
  private static final String WANT = "want";
  private static final String TARGET = "target";
  private static final String SIGNS = "signs";
  private static final Map<String, String> FORMER_SIGNS =
      Map.of(
          "since weeks", "for weeks",
          "always", "since it was built",
          "weak only below", "weak only downstream",
          "noise", "loud pump",
          "trips", "breaker trips",
          "hot pump", "pump runs hot",
          "rain", "after rain");

  private FormerNames() {}

  /** The tree with today's names; a field that is there under both names is left alone. */
  public static MapNode renewedIn(MapNode tree) {
    return renewed(tree, List.of());
  }

  private static MapNode renewed(MapNode map, List<String> above) {
    List<Entry> entries = new ArrayList<>();
    for (Entry entry : map.entries()) {
      List<String> steps = new ArrayList<>(above);
      steps.add(entry.key());
      Node value = entry.value() instanceof MapNode below ? renewed(below, steps) : entry.value();
      String today = lastOf(renewed(steps));
      boolean renames = !today.equals(entry.key()) && map.find(today).isEmpty();
      entries.add(new Entry(renames ? today : entry.key(), entry.keyPlace(), value));
    }
    return new MapNode(entries, map.place());
  }

  /** Today's name of a sign. */
  public static String sign(String name) {
    return FORMER_SIGNS.getOrDefault(name, name);
  }

  /** An address with today's names, be it one of the file or of a change in a condition. */
  static List<String> renewed(List<String> steps) {
    int last = steps.size() - 1;
    if (last == 1 && steps.get(0).equals(SIGNS)) {
      return List.of(SIGNS, sign(steps.get(1)));
    }
    boolean isPoints = last >= 2 && steps.get(last - 2).equals(POINTS);
    if (!isPoints || !lastOf(steps).equals(WANT)) {
      return steps;
    }
    List<String> renewed = new ArrayList<>(steps.subList(0, last));
    renewed.add(TARGET);
    return renewed;
  }

  private static String lastOf(List<String> steps) {
    return steps.get(steps.size() - 1);
  }
}
