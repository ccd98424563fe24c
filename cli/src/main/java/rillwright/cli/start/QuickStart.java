package rillwright.cli.start;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import rillwright.cli.wording.FileNames;

/**
 * Starts the program a second time, in a Java machine that reads its classes from an archive.
 *
 * <p>Three quarters of a short command are the loading and checking of classes. A Java machine can
 * take them ready-made from an archive (class data sharing, JEP 310), but it has to be named before
 * it starts, which {@code java -jar} cannot. The build lays such an archive beside the jar, named
 * after the machine that made it and that alone can read it; without it, where it is not whole, or
 * where the user has set options of his own, the program simply runs as it is.
 */
public final class QuickStart {
  /** What a shell reports of a program that was interrupted: 128 and the signal's number. */
  private static final int INTERRUPTED = 130;

  /** Without the second compiler, which takes more than it gives even in a minute of work. */
  private static final List<String> LEAN =
      List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-XX:-UsePerfData");

  /**
   * The archive is verified and mapped where it was made for: laid elsewhere, each of its addresses
   * would have to be changed first.
   */
  private static final List<String> WHOLE_AND_IN_PLACE =
      List.of(
          "-XX:+VerifySharedSpaces",
          "-XX:+IgnoreUnrecognizedVMOptions",
          "-XX:+UnlockDiagnosticVMOptions",
          "-XX:ArchiveRelocationMode=0");

  /** Property of a prepared machine: the process that waits for it, 0 where none does. */
  private static final String PARENT = "rillwright.parent";

  /**
   * What the second machine says for 1, which is also what a Java machine says that could not
   * start.
   */
  private static final int STARTED_AND_1 = 101;

  private static final long WATCH_MS = 500;

  private static final String ARCHIVE_OPTION = "-XX:SharedArchiveFile=";

  private QuickStart() {}

  /**
   * Runs the program in a prepared Java machine and waits for its end.
   *
   * @param arguments of the program
   * @return its exit status; empty if it has not been started
   */
  public static OptionalInt run(String[] arguments) {
    if (Long.getLong(PARENT) != null) {
      return OptionalInt.empty();
    }
    ProcessHandle.Info self = ProcessHandle.current().info();
    String[] ownArguments = self.arguments().orElse(new String[0]);
    List<String> command =
        commandFor(
            ownArguments,
            arguments,
            System.getenv(),
            javaHome(),
            System.getProperty("java.vm.version"));
    return command.isEmpty() ? OptionalInt.empty() : start(command);
  }

  /**
   * What this process does as the second machine: it ends soon after the first has, however that
   * came to its end. In the first it does nothing.
   */
  public static void endWithParent() {
    long parent = Long.getLong(PARENT, 0);
    if (parent != 0) {
      Thread watch = new Thread(() -> watch(parent), "parent");
      watch.setDaemon(true);
      watch.start();
    }
  }

  private static void watch(long parent) {
    try {
      while (ProcessHandle.current().parent().filter(it -> it.pid() == parent).isPresent()) {
        Thread.sleep(WATCH_MS);
      }
      Runtime.getRuntime().halt(INTERRUPTED);
    } catch (InterruptedException ending) {
      Thread.currentThread().interrupt();
    }
  }

  /** What the process is to end with: its exit status, kept apart from the second machine's own. */
  public static int ending(int status) {
    return status == 1 && Long.getLong(PARENT, 0) != 0 ? STARTED_AND_1 : status;
  }

  private static OptionalInt ended(int status) {
    return switch (status) {
      case 1 -> OptionalInt.empty();
      case STARTED_AND_1 -> OptionalInt.of(1);
      default -> OptionalInt.of(status);
    };
  }

  private static Path javaHome() {
    return Path.of(System.getProperty("java.home"));
  }

  /**
   * The command that starts the prepared machine; empty if this machine was not started by a plain
   * {@code java -jar}, was given options by the environment, or has no archive.
   */
  static List<String> commandFor(
      String[] ownArguments,
      String[] arguments,
      Map<String, String> environment,
      Path javaHome,
      String machine) {
    boolean plain = ownArguments.length == 2 + arguments.length && ownArguments[0].equals("-jar");
    if (!plain
        || !List.of(arguments).stream().allMatch(FileNames::canWrite)
        || environment.containsKey("JAVA_TOOL_OPTIONS")
        || environment.containsKey("JDK_JAVA_OPTIONS")) {
      return List.of();
    }
    String jar = ownArguments[1];
    Path archive;
    try {
      archive = Path.of(jar).resolveSibling(archiveName(machine));
    } catch (InvalidPathException strangeName) {
      return List.of();
    }
    if (!new ClassArchive(archive).isWhole()) {
      return List.of();
    }
    List<String> command = new ArrayList<>();
    command.add(javaHome.resolve("bin").resolve("java").toString());
    command.add(ARCHIVE_OPTION + archive);
    command.addAll(WHOLE_AND_IN_PLACE);
    command.add("-Xshare:auto");
    command.add("-Xlog:disable");
    command.add("-XX:+DisplayVMOutputToStderr");
    command.add("-D" + PARENT + "=" + ProcessHandle.current().pid());
    command.addAll(LEAN);
    command.add("-jar");
    command.add(jar);
    command.addAll(List.of(arguments));
    return command;
  }

  /** The archive that a Java machine of a version looks for beside the jar. */
  static String archiveName(String machine) {
    return "rillwright-" + machine + ".jsa";
  }

  private static OptionalInt start(List<String> command) {
    Process process;
    try {
      process = new ProcessBuilder(command).inheritIO().start();
    } catch (IOException cannotStart) {
      return OptionalInt.empty();
    }
    Thread stopIt = new Thread(new Stop(process));
    try {
      Runtime.getRuntime().addShutdownHook(stopIt);
      return ended(process.waitFor());
    } catch (IllegalStateException shuttingDown) {
      process.destroy();
      return OptionalInt.of(INTERRUPTED);
    } catch (InterruptedException stopped) {
      process.destroy();
      Thread.currentThread().interrupt();
      return OptionalInt.of(INTERRUPTED);
    }
  }

  /** What stops this machine stops the other. */
  private record Stop(Process process) implements Runnable {
    @Override
    public void run() {
      process.destroy();
    }
  }
}
