package rillwright.curves.chart;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import rillwright.curves.chart.content.CausesChart;
import rillwright.curves.chart.content.CausesChart.Band;
import rillwright.curves.chart.content.CausesChart.CauseBar;
import rillwright.curves.chart.content.CausesChart.Mark;
import rillwright.curves.chart.content.CausesChart.Strip;
import rillwright.curves.chart.layout.TextBlock;
import rillwright.curves.chart.mark.Ink;
import rillwright.curves.chart.mark.MarkGroup;

/** Marks and their values in words: none hides another, each has its value. Invented numbers. */
class PredictionStripsTest {
  private static final Pattern TEXT =
      Pattern.compile("<text[^>]* x=\"([0-9.]+)\"[^>]* y=\"([0-9.]+)\"[^>]*>([^<]*)<");

  private record Written(double x, double y, String words) {}

  private static String svg(List<Strip> strips) {
    CausesChart chart =
        new CausesChart(
            "Demo 40", "", List.of(new CauseBar("A", "nothing wrong", 0.6, "60 %")), strips);
    return new String(ChartWriter.svg(chart), StandardCharsets.UTF_8);
  }

  private static List<Written> written(List<Strip> strips) {
    List<Written> all = new ArrayList<>();
    Matcher matcher = TEXT.matcher(svg(strips));
    while (matcher.find()) {
      double x = Double.parseDouble(matcher.group(1));
      all.add(new Written(x, Double.parseDouble(matcher.group(2)), matcher.group(3).strip()));
    }
    return all;
  }

  private static Written find(List<Written> all, String words) {
    return all.stream()
        .filter(text -> text.words().equals(words))
        .findFirst()
        .orElseThrow(() -> new AssertionError(words + " in " + all));
  }

  private static Strip strip(Optional<Band> read, Mark... marks) {
    return new Strip("Flow", read, Optional.of(new Mark("", 2.04, "2,040 gph")), List.of(marks));
  }

  @Test
  void everyMarkHasItsOwnValueEvenWhereRingsAreShared() {
    List<Written> all =
        written(
            List.of(
                strip(
                    Optional.empty(),
                    new Mark("A", 1.520, "1,520 gph"),
                    new Mark("B", 1.521, "1,530 gph"),
                    new Mark("C", 1.700, "1,700 gph"),
                    new Mark("D", 1.701, "1,700 gph"))));
    find(all, "AB");
    for (String label :
        List.of("A 1,520 gph", "B 1,530 gph", "CD 1,700 gph", "by the file 2,040 gph")) {
      find(all, label);
    }
  }

  /** "Nothing wrong" reads what was built: its ring and the diamond stand side by side. */
  @Test
  void theJobAsBuiltIsNotHiddenByACauseThatReadsTheSame() {
    List<Mark> marks = List.of(new Mark("A", 2, "2"), new Mark("", 2, "2"), new Mark("B", 9, "9"));
    List<MarkGroup> groups = MarkGroup.list(marks, value -> 100 * value);
    assertEquals(2, groups.size());
    assertEquals(2, groups.get(0).marks().size());
    Strip same = strip(Optional.empty(), new Mark("A", 2.04, "2,040 gph"), new Mark("B", 9, "9"));
    List<Written> all = written(List.of(same));
    Written ring = all.stream().filter(text -> text.words().equals("A")).toList().get(1);
    Written label = find(all, "A, by the file 2,040 gph");
    assertTrue(ring.x() < label.x() - 5, "the ring moves aside for the diamond: " + all);
  }

  @Test
  void labelsStayApartAndClearOfTheNextHeading() {
    List<Strip> seven = new ArrayList<>();
    for (int i = 0; i < 7; i++) {
      seven.add(
          strip(
              Optional.of(new Band(2, 0.2, "2,000 gph")),
              new Mark("A", 2.030, "12,030 gph"),
              new Mark("B", 2.031, "12,040 gph"),
              new Mark("C", 2.032, "12,050 gph"),
              new Mark("D", 2.033, "12,060 gph")));
    }
    List<Written> all = written(seven);
    List<Written> headings = all.stream().filter(text -> text.words().equals("Flow")).toList();
    List<Written> values = all.stream().filter(text -> text.words().endsWith("0 gph")).toList();
    List<Written> below = values.stream().filter(v -> !v.words().startsWith("read")).toList();
    assertEquals(7, headings.size());
    assertEquals(7 * 5, below.size());
    for (int i = 0; i + 1 < headings.size(); i++) {
      double top = headings.get(i + 1).y() - Ink.NOTE.getSize();
      for (Written value : below.subList(5 * i, 5 * i + 5)) {
        assertTrue(value.y() + 0.25 * Ink.SMALL_LABEL.getSize() + 4 < top, value + " " + top);
      }
    }
    for (int i = 0; i < below.size(); i += 5) {
      List<Written> row = new ArrayList<>(below.subList(i, i + 5));
      row.sort((one, other) -> Double.compare(one.x(), other.x()));
      for (int k = 0; k + 1 < row.size(); k++) {
        double halves = (width(row.get(k)) + width(row.get(k + 1))) / 2;
        assertTrue(row.get(k + 1).x() - row.get(k).x() > halves + 5, row.toString());
      }
    }
  }

  private static double width(Written text) {
    return TextBlock.ofLines(List.of(text.words()), Ink.SMALL_LABEL, Double.POSITIVE_INFINITY)
        .width();
  }

  @Test
  void theHeadingSpeaksOfReadingsOnlyWhereThereAreSome() {
    Mark mark = new Mark("A", 1, "1,000 gph");
    assertFalse(svg(List.of(strip(Optional.empty(), mark))).contains("and what was read"));
    Band read = new Band(1, 0.1, "1,000 gph");
    assertTrue(svg(List.of(strip(Optional.of(read), mark))).contains("and what was read"));
  }
}
