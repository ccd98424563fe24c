package rillwright.curves.sheet.text;

/** What stands between cells, and with it the mark before decimals. */
public enum Separator {
  COMMA(',', '.'),
  SEMICOLON(';', ',');

  private final char character;
  private final char decimalMark;

  Separator(char character, char decimalMark) {
    this.character = character;
    this.decimalMark = decimalMark;
  }

  /** What a line of headings uses: semicolons if it has any outside quotes and brackets. */
  public static Separator of(String headings) {
    String bare = headings.replaceAll("\"[^\"]*\"|\\[[^\\]]*\\]", "");
    return bare.indexOf(';') >= 0 ? SEMICOLON : COMMA;
  }

  /** Between two cells. */
  public char character() {
    return character;
  }

  /** Before decimals. */
  public char decimalMark() {
    return decimalMark;
  }
}
