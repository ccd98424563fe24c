package rillwright.cli.hardening;

import com.sun.management.ThreadMXBean;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.regex.Pattern;
import rillwright.cli.Main;
import tools.jackson.core.JacksonException;
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
 */
public record MeasuredRun(
    List<String> arguments,
    int status,
    String out,
    String err,
    double processorSeconds,
    long allocatedBytes) {
  private static final double NANOSECONDS = 1e9;
  private static final int DEFECT = 70;
  private static final List<Integer> STATUSES = List.of(0, 1, 2, 3);
  private static final Pattern NO_NUMBER = Pattern.compile("\\b(NaN|Infinity)\\b|∞");
  private static final Pattern TRACE = Pattern.compile("(?m)^\\s+at [\\w.$]+\\(|Exception");

  /** Runs the program, for at most a minute. */
  public static MeasuredRun of(String... arguments) {
    return within(60, arguments);
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
    try {
      status =
          Main.commandLine()
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
        thread.getThreadAllocatedBytes(self) - bytes);
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

  /** What no run may do, whatever it is given; empty if it did none of it. */
  public List<String> defects() {
    List<String> found = new ArrayList<>();
    if (!STATUSES.contains(status)) {
      found.add("ended with " + status + ": " + err);
    }
    if (TRACE.matcher(err).find() || TRACE.matcher(out).find()) {
      found.add("a trace: " + err);
    }
    if (status == 2 && !out.isEmpty()) {
      found.add("an answer to wrong input: " + out);
    }
    if (status != 0 && status != 1 && err.isEmpty() && out.isEmpty()) {
      found.add("ended with " + status + " without a word");
    }
    NO_NUMBER.matcher(out).results().findFirst().ifPresent(it -> found.add(around(it.start())));
    if (isJson()) {
      notJson().ifPresent(found::add);
    }
    return found;
  }

  private String around(int at) {
    return "no number: …" + out.substring(Math.max(0, at - 60), Math.min(out.length(), at + 40));
  }

  private boolean isJson() {
    return arguments.contains("json") && !out.isEmpty();
  }

  private Optional<String> notJson() {
    try {
      json();
      return Optional.empty();
    } catch (JacksonException e) {
      return Optional.of("not JSON: " + e.getOriginalMessage());
    }
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
