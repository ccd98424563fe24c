package rillwright.cli.large;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.cli.hardening.MeasuredRun;

/** What solving a network of many lines asks for grows with its lines, in both forms. */
class ManyLinesTest {
  private static final int FEW = 300;
  private static final int MANY = 4 * FEW;
  private static final double MOST_TIMES = 5;
  private static final int MOST_STEPS = 30;

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({"TREE, text", "LOOPS, text", "LOOPS, json", "GRID, json"})
  void memoryAskedForGrowsWithTheLines(LargeProject kind, String form) throws Exception {
    solve(kind, FEW, form);
    double few = solve(kind, FEW, form).allocatedBytes();
    MeasuredRun many = solve(kind, MANY, form);
    assertTrue(many.allocatedBytes() < MOST_TIMES * few, many.allocatedBytes() / few + " times");
    if (form.equals("json")) {
      int steps = many.json().get("iterations").asInt();
      assertTrue(steps < MOST_STEPS, steps + " steps");
    }
  }

  private MeasuredRun solve(LargeProject kind, int lines, String form) throws IOException {
    Path file = folder.resolve("large.yaml");
    Files.writeString(file, kind.of(lines));
    MeasuredRun run = MeasuredRun.of("solve", file.toString(), "--format", form);
    assertEquals(0, run.status(), run.err());
    return run;
  }
}
