package rillwright.cli.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import rillwright.cli.command.Run;
import rillwright.cli.large.LargeProject;

/** Whole commands, once the machine has started. */
@State(Scope.Benchmark)
public class CommandBenchmark {
  private static final int SHEETS = 1000;

  private Path folder;
  private String twelve;

  /** A job of twelve lines whose roughnesses are not known, and the sheets of a thousand pumps. */
  @Setup
  public void write() throws IOException {
    folder = Files.createTempDirectory("rillwright-bench");
    String text = LargeProject.TREE.of(12).replace("0.01 mm", "0.002 mm .. 0.3 mm");
    twelve = Files.writeString(folder.resolve("twelve.yaml"), text).toString();
    Path sheets = Files.createDirectory(folder.resolve("sheets"));
    for (int i = 0; i < SHEETS; i++) {
      StringBuilder sheet = new StringBuilder("flow [L/s],head [m],power [W]\n");
      for (int p = 0; p <= 4; p++) {
        double flow = p * (0.4 + i % 40 * 0.05);
        double head = (3 + i / 40 * 0.2) * (1 - p * p / 20.0);
        sheet.append(String.format(Locale.ROOT, "%.3f,%.3f,%.0f%n", flow, head, 150 + 10.0 * p));
      }
      Files.writeString(sheets.resolve("P-" + i + ".csv"), sheet);
    }
  }

  @Benchmark
  public String tenThousandSamples() {
    return run("odds", twelve, "--samples", "10000");
  }

  @Benchmark
  public String thousandSheets() {
    return run("pumps", "../examples/long-stream/stream.yaml", "--from", folder + "/sheets");
  }

  private static String run(String... arguments) {
    Run run = Run.of(arguments);
    if (run.status() != 0) {
      throw new IllegalStateException(run.err());
    }
    return run.out();
  }
}
