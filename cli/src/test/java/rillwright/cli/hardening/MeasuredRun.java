package rillwright.cli.hardening;

import com.sun.management.ThreadMXBean;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import rillwright.cli.Main;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/**
 * One run of the program in this process: what it answered and what it cost. It runs in a pool of
 * one thread, which takes what the program does in parallel too; only the threads of {@code odds}
 * are not counted.
 *
 * @param arguments of the command line
 * @param status with which it ended; 70 if it threw
 * @param out what it printed
 * @param err what it complained about
 * @param processorSeconds processor time
 * @param allocatedBytes memory asked for, whether or not it was given back
 * @param keptBytes the most memory of this process in use after a collection; 0 if none took place
 */
public record MeasuredRun(
    List<String> arguments,
    int status,
    String out,
    String err,
    double processorSeconds,
    long allocatedBytes,
    long keptBytes) {
  private static final double NANOSECONDS = 1e9;
  private static final int DEFECT = 70;

  /** Seconds after which a run is given up; more of them where other work wants the machine too. */
  private static final int PATIENCE_S = Integer.getInteger("rillwright.patience", 60);

  /** Runs the program, for at most a minute. */
  public static MeasuredRun of(String... arguments) {
    return within(PATIENCE_S, arguments);
  }

  /**
   * Runs the program.
   *
   * @param mostSeconds after which it is given up
   * @throws AssertionError with the place where it is, if it does not end by then
   */
  public static MeasuredRun within(int mostSeconds, String... arguments) {
    ForkJoinPool alone = new ForkJoinPool(1);
    try {
      Future<MeasuredRun> run = alone.submit(() -> measured(arguments));
      return run.get(mostSeconds, TimeUnit.SECONDS);
    } catch (TimeoutException tooLong) {
      throw new AssertionError(
          "not done in " + mostSeconds + " s: " + String.join(" ", arguments) + whereItIs());
    } catch (ExecutionException | InterruptedException failed) {
      throw new AssertionError(String.join(" ", arguments), failed);
    } finally {
      alone.shutdownNow();
    }
  }

  private static MeasuredRun measured(String... arguments) {
    ThreadMXBean thread = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long self = Thread.currentThread().getId();
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    final long bytes = thread.getThreadAllocatedBytes(self);
    final long start = thread.getCurrentThreadCpuTime();
    int status;
    KeptMemory kept = new KeptMemory();
    try (kept) {
      status =
          Main.commandLine(arguments)
              .setOut(new PrintWriter(out))
              .setErr(new PrintWriter(err))
              .execute(arguments);
    } catch (StackOverflowError | OutOfMemoryError e) {
      status = DEFECT;
      err.append(e.toString());
    }
    return new MeasuredRun(
        List.of(arguments),
        status,
        out.toString(),
        err.toString(),
        (thread.getCurrentThreadCpuTime() - start) / NANOSECONDS,
        thread.getThreadAllocatedBytes(self) - bytes,
        kept.mostBytes());
  }

  private static String whereItIs() {
    StringBuilder where = new StringBuilder();
    Thread.getAllStackTraces()
        .forEach(
            (thread, stack) -> {
              boolean ours =
                  Arrays.stream(stack).anyMatch(at -> at.getMethodName().equals("measured"));
              if (ours) {
                Arrays.stream(stack).limit(40).forEach(at -> where.append("\n  at ").append(at));
              }
            });
    return where.toString();
  }

  /** Flow at a point of the answer of {@code solve} in JSON, m³/s. */
  double flow(String point) {
    return json().get("points").get(point).get("flowM3PerS").asDouble();
  }

  /** The answer as JSON. */
  public JsonNode json() {
    return new ObjectMapper().readTree(out);
  }
}
