package rillwright.cli.hardening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * What studies of drawn projects must say in one way, whoever is asked: that of {@code solve} where
 * they balance what {@code solve} does, and the same whatever the file's notation and order. {@code
 * -Drillwright.projects=1000} tries that many small ones and fifty of each family of large ones.
 */
class StudyIdentitiesTest {
  private static final int PROJECTS = Integer.getInteger("rillwright.projects", 4);

  /** Of each family of large projects, for what takes long and what does not. */
  private static final int MANY = PROJECTS / 20;

  private static final int AT_LEAST_ONE = Math.max(1, MANY);

  /** What balances of one network by two ways agree to, a share of the largest flow. */
  private static final double CLOSE = 1e-6;

  /** What valves set by a balance bring, a share of a target. */
  private static final double SET = 1e-4;

  private static final List<String> STUDIES =
      List.of("duty", "balance", "stream", "weak", "odds --samples 100", "pumps --from SHEETS");

  @TempDir private Path folder;

  private MeasuredRun run(Map<String, Object> tree, String... words) {
    return runOf(Scratch.file(folder, ProjectTree.yaml(tree)), words);
  }

  private static MeasuredRun runOf(String file, String... words) {
    List<String> command = new ArrayList<>(Arrays.asList(words));
    command.add(1, file);
    command.addAll(List.of("--format", "json"));
    return MeasuredRun.of(command.toArray(String[]::new));
  }

  /** Asks of small projects and some of each family; some must be able to answer. */
  private static void each(int ofEachFamily, Asked asked) throws IOException {
    List<Map<String, Object>> drawn = Family.drawn(PROJECTS, ofEachFamily);
    int answers = 0;
    for (Map<String, Object> tree : drawn) {
      String lines = ", " + map(tree.get("lines")).size() + " lines";
      answers += asked.of(tree.get("title") + lines, tree) ? 1 : 0;
    }
    assertTrue(answers > 0, "none of " + drawn.size() + " projects could answer");
  }

  private interface Asked {
    boolean of(String seed, Map<String, Object> tree) throws IOException;
  }

  @Test
  void aSecondRunAndAnotherNotationAreTheSameBytes() throws IOException {
    String sheets =
        Scratch.sheets(
            folder,
            List.of(
                Map.of("flow", "0 m3/h", "head", "6 m"), Map.of("flow", "9 m3/h", "head", "1 m")));
    each(
        MANY,
        (seed, tree) -> {
          boolean answered = false;
          String json = Scratch.file(folder, "pond.json", ProjectTree.json(tree));
          for (String study : STUDIES) {
            String[] words = study.replace("SHEETS", sheets).split(" ", -1);
            MeasuredRun first = run(tree, words);
            answered |= first.status() == 0;
            assertEquals(first.out(), run(tree, words).out(), seed + " " + study);
            assertEquals(first.out(), runOf(json, words).out(), seed + " " + study);
          }
          return answered;
        });
  }

  @Test
  void aConditionIsASettingIsAnEdit() throws IOException {
    for (String study : List.of("solve", "stream", "odds --samples 100")) {
      each(
          AT_LEAST_ONE,
          (seed, tree) -> {
            tree.put("conditions", Map.of("low", level("-8 cm")));
            String[] words = study.split(" ", -1);
            MeasuredRun condition = run(tree, with(words, "--condition", "low"));
            MeasuredRun set = run(tree, with(words, "--set", "points.pond.level=-8 cm"));
            map(map(tree.get("points")).get("pond")).put("level", "-8 cm");
            MeasuredRun edited = run(tree, words);
            assertEquals(edited.status(), set.status(), study + ", seed " + seed + set.err());
            if (edited.status() != 0) {
              return false;
            }
            String member = words[0];
            JsonNode shown = condition.json().get("conditions").get(0).get(member);
            assertSame(edited.json(), set.json(), study + ", seed " + seed);
            assertSame(edited.json(), shown, study + ", seed " + seed);
            return true;
          });
    }
  }

  private static Map<String, Object> level(String level) {
    return Map.of("points", Map.of("pond", Map.of("level", level)));
  }

  /** But for what each tells of itself. */
  private static void assertSame(JsonNode expected, JsonNode found, String what) {
    for (String member : found.propertyNames()) {
      boolean isOwn = List.of("changed", "findings", "kind", "title").contains(member);
      if (!found.get(member).isNull() && !isOwn) {
        assertEquals(expected.get(member), found.get(member), what + ": " + member);
      }
    }
  }

  @Test
  void thePumpsOwnSheetAndThePipesOwnSizeGiveWhatSolveGives() throws IOException {
    each(
        AT_LEAST_ONE,
        (seed, tree) -> {
          List<String> pumped = ProjectTree.linesWith("pump", tree);
          MeasuredRun solve = run(tree, "solve");
          if (pumped.size() != 1 || solve.status() != 0) {
            return false;
          }
          Map<String, Object> pump = map(map(tree.get("pumps")).values().iterator().next());
          MeasuredRun pumps =
              run(tree, "pumps", "--from", Scratch.sheets(folder, list(pump.get("points"))));
          boolean asked = pumps.status() == 0;
          if (asked) {
            assertFalls(solve, pumps.json().get("candidates").get(0), "pumps, seed " + seed);
          }
          for (Map.Entry<String, Object> line : map(tree.get("lines")).entrySet()) {
            Object pipe = map(line.getValue()).get("pipe");
            if (pipe != null && map(pipe).containsKey("size")) {
              String size = (String) map(pipe).get("size");
              MeasuredRun pipes = run(tree, "pipes", "--line", line.getKey(), "--sizes", size);
              asked |= pipes.status() == 0;
              if (pipes.status() == 0) {
                assertFalls(solve, pipes.json().get("candidates").get(0), "pipes, seed " + seed);
              }
            }
          }
          return asked;
        });
  }

  private static void assertFalls(MeasuredRun solve, JsonNode candidate, String what) {
    JsonNode falls = candidate.get("fallsM3PerS");
    for (String fall : falls.propertyNames()) {
      double flow = solve.flow(fall);
      assertEquals(flow, falls.get(fall).asDouble(), CLOSE * (1e-4 + Math.abs(flow)), what);
    }
  }

  @Test
  void openingsAndLossesOfABalancePutBackGiveItsFlows() throws IOException {
    each(
        AT_LEAST_ONE,
        (seed, tree) -> {
          MeasuredRun balance = run(tree, "balance");
          if (balance.status() != 0) {
            return false;
          }
          List<String> words = new ArrayList<>(List.of("solve"));
          for (JsonNode valve : balance.json().get("valves")) {
            String at = valve.get("line").asString() + "." + valve.get("part").asString();
            Optional<String> setting = setting(valve);
            if (setting.isEmpty()) {
              return false; // no file says that
            }
            words.addAll(List.of("--set", "lines." + at + "." + setting.get()));
          }
          MeasuredRun solve = run(tree, words.toArray(String[]::new));
          assertEquals(0, solve.status(), "seed " + seed + solve.err());
          JsonNode falls = balance.json().get("falls");
          for (String fall : falls.propertyNames()) {
            double flow = falls.get(fall).get("flowM3PerS").asDouble();
            assertEquals(flow, solve.flow(fall), SET * (1e-4 + Math.abs(flow)), "seed " + seed);
          }
          return true;
        });
  }

  /** How a valve is set, as a file says it; empty for one that is to be shut and has no opening. */
  private static Optional<String> setting(JsonNode valve) {
    if (!valve.get("opening").isNull()) {
      return Optional.of("open=" + 100 * valve.get("opening").asDouble() + " %");
    }
    JsonNode lossCoefficient = valve.get("lossCoefficient");
    return lossCoefficient.isNull()
        ? Optional.empty()
        : Optional.of("k=" + lossCoefficient.asString());
  }

  @Test
  void rangesWithoutWidthGiveOddsOfWhatSolveGives() throws IOException {
    each(
        AT_LEAST_ONE,
        (seed, tree) -> {
          String json = ProjectTree.json(tree).replace(" ± 40 cm", "");
          String exact = json.replaceAll("\"(\\d+) % \\.\\. 40 %\"", "\"$1 %\"");
          String file = Scratch.file(folder, "pond.json", exact);
          String line = ProjectTree.linesWith("run", tree).get(0);
          String run = "lines." + line + ".run=5 m .. 5.0000000001 m";
          MeasuredRun odds = runOf(file, "odds", "--samples", "100", "--set", run);
          MeasuredRun solve = runOf(file, "solve", "--set", "lines." + line + ".run=5 m");
          if (odds.status() != 0) {
            return false;
          }
          JsonNode falls = odds.json().get("falls");
          for (String fall : falls.propertyNames()) {
            if (solve.status() != 0) {
              assertTrue(falls.get(fall).get("p50M3PerS").isNull(), "seed " + seed + solve.err());
              continue;
            }
            double flow = solve.flow(fall);
            for (String quantile : List.of("p5M3PerS", "p50M3PerS", "p95M3PerS")) {
              double drawn = falls.get(fall).get(quantile).asDouble();
              assertEquals(flow, drawn, CLOSE * (1e-4 + Math.abs(flow)), "seed " + seed);
            }
          }
          return true;
        });
  }

  @Test
  void probabilitiesOfCausesAddUpToOne() throws IOException {
    each(
        MANY,
        (seed, tree) -> {
          MeasuredRun weak = run(tree, "weak");
          if (weak.status() != 0) {
            return false;
          }
          double sum = 0;
          for (JsonNode cause : weak.json().get("causes")) {
            sum += cause.get("probability").asDouble();
          }
          assertEquals(1, sum, 1e-9, "seed " + seed);
          return true;
        });
  }

  @Test
  void volumesAddUp() throws IOException {
    each(
        AT_LEAST_ONE,
        (seed, tree) -> {
          MeasuredRun stream = run(tree, "stream");
          if (stream.status() != 0) {
            return false;
          }
          for (JsonNode basin : stream.json().get("basins")) {
            double sum = 0;
            for (JsonNode item : basin.get("firstFill")) {
              sum += item.get("volumeM3").asDouble();
            }
            assertEquals(basin.get("firstFillM3").asDouble(), sum, 1e-12, "seed " + seed);
          }
          return true;
        });
  }

  private static String[] with(String[] words, String... more) {
    return Stream.of(words, more).flatMap(Arrays::stream).toArray(String[]::new);
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> map(Object section) {
    return (Map<String, Object>) section;
  }

  @SuppressWarnings("unchecked")
  private static List<Map<String, Object>> list(Object section) {
    return (List<Map<String, Object>>) section;
  }
}
