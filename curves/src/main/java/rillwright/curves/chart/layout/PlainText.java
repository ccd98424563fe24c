package rillwright.curves.chart.layout;

/** Makes any text harmless to show: one line, no characters that do not show or that steer. */
public final class PlainText {
  private static final int REPLACEMENT = 0xFFFD;
  private static final int LONGEST = 1000;

  private PlainText() {}

  /** The text in one line, blanks single, control and direction characters taken out. */
  public static String of(String text) {
    StringBuilder plain = new StringBuilder();
    text.codePoints().limit(LONGEST).map(PlainText::harmless).forEach(plain::appendCodePoint);
    return plain.toString().strip().replaceAll(" {2,}", " ");
  }

  private static int harmless(int code) {
    return switch (Character.getType(code)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.SPACE_SEPARATOR ->
          ' ';
      case Character.SURROGATE, Character.PRIVATE_USE, Character.UNASSIGNED -> REPLACEMENT;
      default -> code;
    };
  }
}
