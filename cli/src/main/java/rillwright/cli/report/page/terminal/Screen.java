package rillwright.cli.report.page.terminal;

import java.io.Console;
import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.charset.StandardCharsets;
import java.util.OptionalInt;

/**
 * What text is printed on.
 *
 * @param ink to print with
 * @param columns that fit on a line
 */
public record Screen(Ink ink, int columns) {
  /** Where no person looks at a terminal. */
  public static final Screen PAPER = new Screen(Ink.PLAIN, 100);

  private static final int FEWEST_COLUMNS = 60;
  private static final int MOST_COLUMNS = 160;

  /** When to print in colours. */
  public enum Coloring {
    AUTO,
    ALWAYS,
    NEVER
  }

  /** The screen of this process, as wide as its terminal. */
  public static Screen ofProcess(Coloring coloring) {
    boolean isLive = isLive();
    Ink ink =
        switch (coloring) {
          case ALWAYS -> Ink.COLOUR;
          case NEVER -> Ink.PLAIN;
          case AUTO -> isLive && !isRefused() ? Ink.COLOUR : Ink.PLAIN;
        };
    return new Screen(ink, isLive ? columnsOfTerminal() : PAPER.columns);
  }

  /** Columns of prose: no more than are easily read. */
  public int columnsOfProse() {
    return Math.min(columns, PAPER.columns);
  }

  /** Whether it is narrower than what a page is made for. */
  boolean isNarrow() {
    return columns < PAPER.columns;
  }

  /** Whether the user has set NO_COLOR to anything. */
  private static boolean isRefused() {
    String refused = System.getenv("NO_COLOR");
    return refused != null && !refused.isEmpty();
  }

  /** Whether a person looks at a terminal on which a line can be written over. */
  public static boolean isLive() {
    return !"dumb".equals(System.getenv("TERM")) && isTerminal();
  }

  /** Before Java 22 there is no console unless it is a terminal; from then on it can be asked. */
  @SuppressWarnings("SystemConsoleNull")
  private static boolean isTerminal() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (ReflectiveOperationException olderThanJava22) {
      return true;
    }
  }

  private static int columnsOfTerminal() {
    OptionalInt known = number(System.getenv("COLUMNS"));
    int columns = (known.isPresent() ? known : bySize()).orElse(PAPER.columns);
    return Math.max(FEWEST_COLUMNS, Math.min(MOST_COLUMNS, columns));
  }

  /** What the POSIX command {@code stty} says: "24 80"; empty where there is none. */
  private static OptionalInt bySize() {
    try {
      Process size =
          new ProcessBuilder("stty", "size")
              .redirectInput(Redirect.INHERIT)
              .redirectError(Redirect.DISCARD)
              .start();
      byte[] said = size.getInputStream().readAllBytes();
      return number(new String(said, StandardCharsets.US_ASCII).strip().replaceFirst(".* ", ""));
    } catch (IOException noSuchCommand) {
      return OptionalInt.empty();
    }
  }

  private static OptionalInt number(String written) {
    return written != null && written.matches("[1-9][0-9]{0,3}")
        ? OptionalInt.of(Integer.parseInt(written))
        : OptionalInt.empty();
  }
}
