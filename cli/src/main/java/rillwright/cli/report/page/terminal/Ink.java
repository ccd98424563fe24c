package rillwright.cli.report.page.terminal;

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
      return text.isEmpty() ? text : "\u001b[" + sequence + "m" + text + "\u001b[0m";
    }
  };

  /** The text in a tone. */
  abstract String paint(String text, Tone tone);
}
