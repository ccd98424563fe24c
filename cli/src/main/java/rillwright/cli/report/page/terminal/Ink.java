package rillwright.cli.report.page.terminal;

import java.io.Console;
import rillwright.cli.report.page.Tone;

/** Ink to print with: colours on a terminal, none elsewhere. */
public enum Ink {
  /** No colours. */
  PLAIN {
    @Override
    String paint(String text, Tone tone) {
      return text;
    }
  },

  /** Colours by the escape sequences of ECMA-48. */
  COLOUR {
    @Override
    String paint(String text, Tone tone) {
      return switch (tone) {
        case PLAIN, AGAIN, TO_WRITE -> text;
        case HEADING -> painted("1", text);
        case GOOD -> painted("32", text);
        case WARNING -> painted("33;1", text);
      };
    }

    private static String painted(String sequence, String text) {
      return "\u001b[" + sequence + "m" + text + "\u001b[0m";
    }
  };

  /** The ink for this process: colour if a person looks at a terminal and has not refused it. */
  public static Ink ofTerminal() {
    String refused = System.getenv("NO_COLOR");
    boolean wanted = refused == null || refused.isEmpty();
    return wanted && isLiveTerminal() ? COLOUR : PLAIN;
  }

  /** Whether a person looks at a terminal on which a line can be written over. */
  public static boolean isLiveTerminal() {
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

  /** The text in a tone. */
  abstract String paint(String text, Tone tone);
}
