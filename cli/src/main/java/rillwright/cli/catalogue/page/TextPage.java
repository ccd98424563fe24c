package rillwright.cli.catalogue.page;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** The catalogue for people: tables that line up, sources as numbered notes below. */
public final class TextPage {
  private static final String INDENT = "  ";
  private static final int WIDTH = 78;

  private TextPage() {}

  /** Prints what was asked. */
  public static void print(Selection selection, PrintWriter out) {
    Notes notes = new Notes();
    for (Section<?> section : selection.sections()) {
      out.println(section.title());
      print(section, notes, out);
      out.println();
    }
    out.println(Notes.HEADING);
    for (int i = 0; i < notes.texts().size(); i++) {
      printNote(i + 1, notes.texts().get(i), out);
    }
  }

  private static <T> void print(Section<T> section, Notes notes, PrintWriter out) {
    List<String> headings =
        section.columns().stream().map(Column::heading).collect(Collectors.toList());
    headings.add("note");
    List<Boolean> numeric =
        section.columns().stream().map(Column::numeric).collect(Collectors.toList());
    numeric.add(true);
    List<List<String>> cells = section.cells(notes);
    List<Integer> widths = widths(headings, cells);
    out.println(line(headings, widths, numeric));
    String before = "";
    for (List<String> row : cells) {
      List<String> shown = new ArrayList<>(row);
      if (row.get(0).equals(before)) {
        shown.set(0, "");
      }
      before = row.get(0);
      out.println(line(shown, widths, numeric));
    }
  }

  private static List<Integer> widths(List<String> headings, List<List<String>> cells) {
    List<Integer> widths = new ArrayList<>();
    for (int i = 0; i < headings.size(); i++) {
      int column = i;
      int widest = cells.stream().mapToInt(row -> row.get(column).length()).max().orElse(0);
      widths.add(Math.max(widest, headings.get(i).length()));
    }
    return widths;
  }

  private static String line(List<String> cells, List<Integer> widths, List<Boolean> numeric) {
    StringBuilder line = new StringBuilder();
    for (int i = 0; i < cells.size(); i++) {
      String space = " ".repeat(widths.get(i) - cells.get(i).length());
      line.append(INDENT).append(numeric.get(i) ? space + cells.get(i) : cells.get(i) + space);
    }
    return line.toString().stripTrailing();
  }

  private static void printNote(int number, String text, PrintWriter out) {
    String start = String.format(Locale.ROOT, "%3d  ", number);
    StringBuilder line = new StringBuilder(start);
    for (String word : text.split(" ")) {
      boolean begun = line.length() > start.length();
      if (begun && line.length() + 1 + word.length() > WIDTH) {
        out.println(line);
        line = new StringBuilder(" ".repeat(start.length()));
        begun = false;
      }
      line.append(begun ? " " : "").append(word);
    }
    out.println(line);
  }
}
