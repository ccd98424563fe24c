package rillwright.curves.wording;

import java.util.regex.Pattern;

/** Text of a user made fit to print: nothing in it can move a cursor, colour or reorder a line. */
public final class PlainText {
  private static final int LONGEST_QUOTE = 60;
  private static final int LONGEST_LINE = 1000;
  private static final Pattern BLANKS = Pattern.compile("[\\s\\p{Z}]+");

  private PlainText() {}

  /**
   * The text with every control, format (such as those that turn the direction of writing), lone
   * surrogate and line-separating character written out as its number: {@code \u001b}.
   */
  public static String harmless(String text) {
    if (isHarmless(text)) {
      return text;
    }
    StringBuilder shown = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); ) {
      int code = text.codePointAt(i);
      if (isHarmless(code)) {
        shown.appendCodePoint(code);
      } else {
        String hex = Integer.toHexString(code);
        shown.append("\\u").append("0".repeat(Math.max(0, 4 - hex.length()))).append(hex);
      }
      i += Character.charCount(code);
    }
    return shown.toString();
  }

  /** The text in quotes, harmless, and shortened if it is long. */
  public static String quoted(String text) {
    int length = text.codePointCount(0, text.length());
    String kept =
        length <= LONGEST_QUOTE
            ? text
            : text.substring(0, text.offsetByCodePoints(0, LONGEST_QUOTE)) + "\u2026";
    return "\"" + harmless(kept) + "\"";
  }

  /** The text in one line, harmless, its blanks single, cut where nobody reads on. */
  public static String line(String text) {
    String kept = text.substring(0, Math.min(text.length(), LONGEST_LINE));
    return harmless(BLANKS.matcher(kept).replaceAll(" ").strip());
  }

  private static boolean isHarmless(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (!isPrintableAscii(text.charAt(i))) {
        return text.codePoints().allMatch(PlainText::isHarmless);
      }
    }
    return true;
  }

  private static boolean isPrintableAscii(int code) {
    return code >= ' ' && code <= '~';
  }

  private static boolean isHarmless(int code) {
    if (isPrintableAscii(code)) {
      return true;
    }
    int type = Character.getType(code);
    return type != Character.CONTROL
        && type != Character.FORMAT
        && type != Character.SURROGATE
        && type != Character.PRIVATE_USE
        && type != Character.UNASSIGNED
        && type != Character.LINE_SEPARATOR
        && type != Character.PARAGRAPH_SEPARATOR;
  }
}
