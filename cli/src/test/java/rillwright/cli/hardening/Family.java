package rillwright.cli.hardening;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.LongFunction;
import java.util.function.Predicate;

/** Kinds of drawn projects: each is drawn until one is of the kind. */
@SuppressWarnings("ImmutableEnumChecker") // method references and lambdas without state
enum Family {
  TREE("trees", RandomProject::large, tree -> pumps(tree) == 1 && has(tree, "high point") == 0),
  HIGH_POINTS("high points", RandomProject::large, tree -> has(tree, "high point") > 1),
  PUMPS("several pumps", RandomProject::large, tree -> pumps(tree) > 1),
  GRAVITY("no pump", RandomProject::large, tree -> pumps(tree) == 0),
  CHAMBER("skimmer and chamber", RandomProject::large, tree -> has(tree, "skimmer") > 0),
  DRAWN("draws", RandomProject::large, tree -> tree.toString().contains("draw=")),
  MESH("rings", RandomProject::mesh, tree -> has(tree, "high point") == 0),
  MESH_OVER("rings over high points", RandomProject::mesh, tree -> has(tree, "high point") > 1),
  SMALL("up to 8 lines", RandomProject::of, tree -> true);

  private static final int MOST_TRIES = 10_000;

  private final String title;
  private final LongFunction<Map<String, Object>> source;
  private final Predicate<Map<String, Object>> isOfIt;

  Family(
      String title,
      LongFunction<Map<String, Object>> source,
      Predicate<Map<String, Object>> isOfIt) {
    this.title = title;
    this.source = source;
    this.isOfIt = isOfIt;
  }

  /** What its projects have. */
  String title() {
    return title;
  }

  /** So many projects of up to 40 lines, the same for the same first seed. */
  List<Map<String, Object>> draw(int count, long firstSeed) {
    List<Map<String, Object>> drawn = new ArrayList<>();
    for (long seed = firstSeed; drawn.size() < count && seed < firstSeed + MOST_TRIES; seed++) {
      Map<String, Object> tree = source.apply(seed);
      if (((Map<?, ?>) tree.get("lines")).size() <= 40 && isOfIt.test(tree)) {
        drawn.add(tree);
      }
    }
    return drawn;
  }

  /** So many small projects of the first seeds, and so many of each family. */
  static List<Map<String, Object>> drawn(int small, int ofEach) {
    List<Map<String, Object>> drawn = new ArrayList<>();
    for (long seed = 0; seed < small; seed++) {
      drawn.add(RandomProject.of(seed));
    }
    for (Family family : values()) {
      drawn.addAll(family.draw(ofEach, 1));
    }
    return drawn;
  }

  private static int has(Map<String, Object> tree, String part) {
    return ProjectTree.linesWith(part, tree).size();
  }

  private static int pumps(Map<String, Object> tree) {
    return tree.get("pumps") instanceof Map<?, ?> pumps ? pumps.size() : 0;
  }
}
