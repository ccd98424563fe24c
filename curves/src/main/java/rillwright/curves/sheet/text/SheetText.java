package rillwright.curves.sheet.text;

import java.util.ArrayList;
import java.util.List;
import rillwright.curves.sheet.fault.FaultList;

/** Makes lines of a sheet's bytes: UTF-8 with or without a byte-order mark, any line ends. */
public final class SheetText {
  private static final int MOST_BYTES = 1_000_000;
  private static final int LONGEST_LINE = 2000;
  private static final String ONE_LINE_EACH =
      "each point of a pump's curve stands in a line of its own";
  private static final String NOT_A_TEXT =
      "the sheet is not a text; a pump's data sheet is a CSV such as a spreadsheet saves";

  private SheetText() {}

  /**
   * The lines of a sheet; none if it is not a text.
   *
   * @param content all its bytes
   * @param faults where to note what is wrong
   */
  public static List<SheetLine> linesOf(byte[] content, FaultList faults) {
    if (content.length > MOST_BYTES) {
      faults.add(
          1, 1, "the sheet is larger than 1 MB; a pump's data sheet is a page of text in a CSV");
      return List.of();
    }
    if (Utf8Text.isUtf16(content)) {
      faults.add(1, 1, "the sheet is saved as UTF-16; save it as CSV in UTF-8");
      return List.of();
    }
    if (Utf8Text.hasZero(content)) {
      faults.add(1, 1, NOT_A_TEXT);
      return List.of();
    }
    Utf8Text text = Utf8Text.of(content);
    List<SheetLine> lines = split(text.text());
    if (!areLinesOfText(lines, faults)) {
      return List.of();
    }
    if (!text.isWhole()) {
      SheetLine last = lines.get(lines.size() - 1);
      faults.add(
          last.number(),
          last.columnAt(last.text().length()),
          "a character here is not UTF-8; save the sheet as CSV in UTF-8");
      return List.of();
    }
    return lines;
  }

  private static List<SheetLine> split(String text) {
    List<SheetLine> lines = new ArrayList<>();
    for (String line : text.split("\r\n|\n|\r", -1)) {
      lines.add(new SheetLine(lines.size() + 1, line));
    }
    return lines;
  }

  private static boolean areLinesOfText(List<SheetLine> lines, FaultList faults) {
    for (SheetLine line : lines) {
      if (line.text().length() > LONGEST_LINE) {
        faults.add(line.number(), 1, "this line has more than 2000 characters; " + ONE_LINE_EACH);
        return false;
      }
      for (int i = 0; i < line.text().length(); i++) {
        char character = line.text().charAt(i);
        if (Character.isISOControl(character) && character != '\t') {
          faults.add(line.number(), line.columnAt(i), NOT_A_TEXT);
          return false;
        }
      }
    }
    return true;
  }
}
