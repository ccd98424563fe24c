package rillwright.cli.bench;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import rillwright.solver.steady.SteadyStateFinder;

/**
 * Runs the benchmarks and prints a table: machine, case, median, spread.
 *
 * <p>Arguments: the folder of the packed jar, {@code whole} or {@code short} (three measurements of
 * networks of up to 10,000 lines), patterns of benchmarks to run; none for all.
 */
public final class BenchmarkTable {
  private static final int STARTS = 15;

  /** After so many seconds of running it a whole command is compiled. */
  private static final int UNTIL_COMPILED = 20;

  private static final double MILLISECONDS = 1e-6;

  private final PrintStream out;
  private final String machine;
  private final Map<String, Double> medians = new TreeMap<>();

  private BenchmarkTable(PrintStream out) {
    this.out = out;
    this.machine =
        String.format(
            Locale.ROOT,
            "%s, %d processors, Java %s",
            LocalDate.now(),
            Runtime.getRuntime().availableProcessors(),
            System.getProperty("java.version"));
  }

  /** Prints the table. */
  public static void main(String[] arguments) throws Exception {
    boolean whole = arguments[1].equals("whole");
    List<String> patterns = Arrays.asList(arguments).subList(2, arguments.length);
    BenchmarkTable table = new BenchmarkTable(System.out);
    table.out.println("| machine | case | median, ms | spread, ms |\n|---|---|---|---|");
    ChainedOptionsBuilder options = options(whole ? 7 : 3);
    if (!whole) {
      options.param("network", upTo10000());
    }
    List<String> asked = patterns.isEmpty() ? List.of("Balance", "Factor") : patterns;
    asked.forEach(options::include);
    table.measured(options);
    if (patterns.isEmpty()) {
      table.measured(
          options(whole ? 7 : 3).warmupIterations(UNTIL_COMPILED).include("Command"));
      table.measured(options(whole ? 7 : 3).include("Dense").include("Library"));
      table.measured(
          options(1).warmupIterations(0).include("Dense").param("network", "LOOPS 1000"));
      table.balancesByFactors();
      table.starts(Path.of(arguments[0]).toAbsolutePath());
    }
  }

  private static String[] upTo10000() {
    return Stream.of("TREE ", "LOOPS ", "GRID ")
        .flatMap(kind -> Stream.of(12, 100, 1000, 10000).map(lines -> kind + lines))
        .toArray(String[]::new);
  }

  private static ChainedOptionsBuilder options(int measured) {
    return new OptionsBuilder()
        .mode(Mode.AverageTime)
        .timeUnit(TimeUnit.NANOSECONDS)
        .forks(1)
        .warmupIterations(3)
        .warmupTime(TimeValue.seconds(1))
        .measurementIterations(measured)
        .measurementTime(TimeValue.seconds(1))
        .output(System.getProperty("java.io.tmpdir") + "/rillwright-jmh.log");
  }

  private void measured(ChainedOptionsBuilder options) throws RunnerException {
    for (RunResult result : new Runner(options.build()).run()) {
      String method = result.getParams().getBenchmark();
      String name = method.substring(method.lastIndexOf('.', method.lastIndexOf('.') - 1) + 1);
      String network = result.getParams().getParam("network");
      row(
          name.replace("Benchmark.", " ") + (network == null ? "" : ", " + network),
          result.getBenchmarkResults().stream()
              .flatMap(run -> run.getIterationResults().stream())
              .mapToDouble(it -> it.getPrimaryResult().getScore() * MILLISECONDS));
    }
  }

  /** What a whole balance takes against its steps times one factor. */
  private void balancesByFactors() {
    for (Map.Entry<String, Double> entry : new TreeMap<>(medians).entrySet()) {
      String network = entry.getKey().replace("Balance balance, ", "");
      Double factor = medians.get("Factor ours, " + network);
      if (!network.equals(entry.getKey()) && factor != null) {
        int steps = SteadyStateFinder.find(Networks.of(network)).iterations();
        print(
            "Balance by steps times factor, " + network,
            String.format(Locale.ROOT, "%.1f times", entry.getValue() / (steps * factor)),
            steps + " steps");
      }
    }
  }

  private void starts(Path folder) throws IOException, InterruptedException {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String example = folder.resolve("../../examples/twin-falls/falls.yaml").toString();
    Path empty = Files.createTempDirectory("rillwright-empty").resolve("Empty.java");
    Files.writeString(empty, "class Empty { public static void main(String[] none) {} }");
    run(List.of(java + "c", "-d", empty.getParent().toString(), empty.toString()));
    start("Start of an empty Java process", java, "-cp", empty.getParent().toString(), "Empty");
    start("solve by launcher", folder.resolve("rillwright").toString(), "solve", example);
    String jar = folder.resolve("rillwright.jar").toString();
    start("solve by java -jar", java, "-jar", jar, "solve", example);
  }

  private void start(String name, String... command) throws IOException, InterruptedException {
    double[] taken = new double[STARTS];
    for (int i = 0; i < STARTS; i++) {
      taken[i] = run(List.of(command));
    }
    row(name, DoubleStream.of(taken).skip(2));
  }

  private static double run(List<String> command) throws IOException, InterruptedException {
    long start = System.nanoTime();
    Process process =
        new ProcessBuilder(new ArrayList<>(command))
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    if (process.waitFor() != 0) {
      throw new IOException("failed: " + command);
    }
    return (System.nanoTime() - start) * MILLISECONDS;
  }

  private void row(String name, DoubleStream milliseconds) {
    double[] sorted = milliseconds.sorted().toArray();
    double median = sorted[sorted.length / 2];
    medians.put(name, median);
    String spread = shown(sorted[0]) + " to " + shown(sorted[sorted.length - 1]);
    print(name, shown(median), spread);
  }

  private void print(String name, String median, String spread) {
    out.println("| " + machine + " | " + name + " | " + median + " | " + spread + " |");
  }

  private static String shown(double milliseconds) {
    int decimals = (int) Math.max(0, 2 - Math.floor(Math.log10(milliseconds)));
    return String.format(Locale.ROOT, "%." + decimals + "f", milliseconds);
  }
}
