package rillwright.curves.chart.mark;

import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import rillwright.curves.chart.content.CausesChart.Mark;
import rillwright.curves.chart.layout.TextBlock;
import rillwright.curves.chart.mark.Words.Anchor;

/**
 * The values of marks in words, in a row below them: each once, the letters that have it before it,
 * moved aside where they would run into each other.
 */
public final class ValueLabels {
  private static final double GAP = 16;

  private final List<Label> labels;

  /** A label and where its middle would best be. */
  private record Label(TextBlock words, double wanted) {}

  private ValueLabels(List<Label> labels) {
    this.labels = labels;
  }

  /**
   * The labels of marks on a line: those of a group that tell the same value share a label.
   *
   * @param x where a value lies
   */
  public static ValueLabels of(List<MarkGroup> groups, DoubleUnaryOperator x) {
    List<Label> labels = new ArrayList<>();
    for (MarkGroup group : groups) {
      Map<String, List<Mark>> alike = new LinkedHashMap<>();
      for (Mark mark : group.marks()) {
        alike.computeIfAbsent(mark.label(), label -> new ArrayList<>()).add(mark);
      }
      alike.forEach((value, marks) -> labels.add(label(value, marks, x)));
    }
    return new ValueLabels(labels);
  }

  private static Label label(String value, List<Mark> alike, DoubleUnaryOperator x) {
    String letters = alike.stream().map(Mark::letter).sorted().collect(Collectors.joining());
    boolean asBuilt = alike.stream().anyMatch(mark -> mark.letter().isEmpty());
    String names = letters + (asBuilt ? (letters.isEmpty() ? "" : ", ") + "by the file" : "");
    double middle =
        alike.stream().mapToDouble(mark -> x.applyAsDouble(mark.value())).average().orElseThrow();
    return new Label(TextBlock.ofLine(names + " " + value, Ink.SMALL_LABEL), middle);
  }

  /** Writes them between two places, their tops at a height. */
  public void write(Graphics2D g, double left, double right, double top) {
    double[] at = new double[labels.size()];
    double free = left;
    for (int i = 0; i < at.length; i++) {
      double half = labels.get(i).words().width() / 2;
      at[i] = Math.max(labels.get(i).wanted(), free + half);
      free = at[i] + half + GAP;
    }
    double end = right;
    for (int i = at.length - 1; i >= 0; i--) {
      double half = labels.get(i).words().width() / 2;
      at[i] = Math.min(at[i], end - half);
      end = at[i] - half - GAP;
      Words.write(g, labels.get(i).words(), at[i], top, Anchor.MIDDLE, Ink.SOFT_TEXT);
    }
  }
}
