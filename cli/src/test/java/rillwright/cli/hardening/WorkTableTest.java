package rillwright.cli.hardening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/**
 * What every command takes on drawn projects of up to 40 lines, as a table: {@code
 * -Drillwright.work=5} draws five of each family, {@code -Drillwright.seed=1000} others. It
 * measures and holds nothing but that every command ends; how much work is done is held by tests
 * that count.
 */
@EnabledIfSystemProperty(named = "rillwright.work", matches = "[1-9]\\d*")
class WorkTableTest {
  private static final int PROJECTS = Integer.getInteger("rillwright.work", 1);
  private static final long SEED = Long.getLong("rillwright.seed", 1);
  private static final String ASKED = System.getProperty("rillwright.command", "");
  private static final Path SHEETS = Path.of("..", "examples", "long-stream", "supplier");
  private static final int MOST_SECONDS = 120;
  private static final double WORTH_TELLING_S = 5;

  @TempDir private Path folder;

  private final PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
  private final Map<String, Map<Family, List<MeasuredRun>>> runs = new LinkedHashMap<>();

  @Test
  void showWhatCommandsTake() {
    List<String> unended = new ArrayList<>();
    for (boolean warm : List.of(false, true)) {
      runs.clear();
      for (Family family : Family.values()) {
        List<Map<String, Object>> projects = family.draw(warm ? PROJECTS : 1, SEED);
        projects.forEach(tree -> runAll(family, tree, unended));
      }
    }
    out.println(table());
    assertEquals(List.of(), unended);
  }

  private void runAll(Family family, Map<String, Object> tree, List<String> unended) {
    String file = Scratch.file(folder, ProjectTree.yaml(tree));
    OrderlyRun.clear(Path.of(file), text -> {});
    String line = ProjectTree.linesWith("run", tree).get(0);
    Set<String> done = new TreeSet<>();
    for (List<String> words : new EveryCommand(file, line, SHEETS.toString()).list()) {
      String name = name(words, file, line);
      if (!words.contains("text") && name.contains(ASKED) && done.add(name)) {
        measure(family, name, words, tree.get("title") + ": ", unended);
      }
    }
  }

  private void measure(
      Family family, String name, List<String> words, String project, List<String> unended) {
    try {
      MeasuredRun run = MeasuredRun.within(MOST_SECONDS, words.toArray(String[]::new));
      runs.computeIfAbsent(name, key -> new LinkedHashMap<>())
          .computeIfAbsent(family, key -> new ArrayList<>())
          .add(run);
      if (run.processorSeconds() > WORTH_TELLING_S) {
        out.printf(Locale.ROOT, "%s%s: %.1f s%n", project, name, run.processorSeconds());
      }
    } catch (AssertionError unfinished) {
      unended.add(project + unfinished.getMessage());
      out.println(project + unfinished.getMessage());
    }
  }

  /** A command without what differs from project to project. */
  private static String name(List<String> words, String file, String line) {
    List<String> kept = new ArrayList<>(words);
    kept.removeAll(List.of(file, line, SHEETS.toString(), "--format", "json", "html", "--line"));
    kept.removeIf(word -> word.contains("/made/") || word.startsWith("lines."));
    return String.join(" ", kept);
  }

  private String table() {
    StringBuilder table = new StringBuilder("| processor time, s |");
    for (Family family : Family.values()) {
      table.append(' ').append(family.title()).append(" |");
    }
    table.append(" MB at most |\n|---|").append("---|".repeat(Family.values().length + 1));
    runs.forEach(
        (name, byFamily) -> {
          table.append("\n| `").append(name).append("` |");
          long most = 0;
          for (Family family : Family.values()) {
            List<MeasuredRun> of = byFamily.getOrDefault(family, List.of());
            table.append(' ').append(medianAndMost(of)).append(" |");
            for (MeasuredRun run : of) {
              most = Math.max(most, run.keptBytes());
            }
          }
          table.append(String.format(Locale.ROOT, " %.0f |", most / 1e6));
        });
    return table.toString();
  }

  private static String medianAndMost(List<MeasuredRun> runs) {
    double[] seconds = runs.stream().mapToDouble(MeasuredRun::processorSeconds).sorted().toArray();
    return seconds.length == 0
        ? "-"
        : String.format(
            Locale.ROOT, "%.2f; %.2f", seconds[seconds.length / 2], seconds[seconds.length - 1]);
  }
}
