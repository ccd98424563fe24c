package rillwright.curves.chart.mark;

import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Collectors;
import rillwright.curves.chart.content.CausesChart.Mark;

/**
 * Marks on a line so near to each other that they are drawn as one: the letters of causes share a
 * ring, and the diamond of the job as built, whose letter is empty, stands beside it.
 */
public final class MarkGroup {
  public static final double DIAMOND = 10;

  /** From the middle of a diamond to its corner, and a little. */
  private static final double DIAMOND_REACH = 1.3 * DIAMOND + 1;

  private static final double GAP = 3;

  /** Nobody sees so little between two marks. */
  private static final double ALIKE = 0.5;

  private final List<Mark> marks;
  private final DoubleUnaryOperator x;

  private MarkGroup(List<Mark> marks, DoubleUnaryOperator x) {
    this.marks = List.copyOf(marks);
    this.x = x;
  }

  /**
   * Marks grouped so that no group covers another.
   *
   * @param x where a value lies
   */
  public static List<MarkGroup> list(List<Mark> marks, DoubleUnaryOperator x) {
    List<Mark> sorted = new ArrayList<>(marks);
    sorted.sort(Comparator.comparingDouble(Mark::value).thenComparing(Mark::letter));
    List<MarkGroup> groups = new ArrayList<>();
    for (Mark mark : sorted) {
      MarkGroup group = new MarkGroup(List.of(mark), x);
      while (!groups.isEmpty() && groups.get(groups.size() - 1).reaches(group)) {
        group = groups.remove(groups.size() - 1).with(group);
      }
      groups.add(group);
    }
    return groups;
  }

  /** Its marks. */
  public List<Mark> marks() {
    return marks;
  }

  private boolean reaches(MarkGroup next) {
    return next.middle() - next.halfWidth() < middle() + halfWidth() + GAP;
  }

  private MarkGroup with(MarkGroup next) {
    List<Mark> all = new ArrayList<>(marks);
    all.addAll(next.marks);
    return new MarkGroup(all, x);
  }

  private double middle() {
    return middle(marks);
  }

  private double middle(List<Mark> some) {
    return some.stream().mapToDouble(mark -> x.applyAsDouble(mark.value())).average().orElse(0);
  }

  private double halfWidth() {
    double ring = letters().isEmpty() ? 0 : LetterMark.halfWidth(letters().length());
    int diamonds = marks.size() - causes().size();
    return ring + diamonds * DIAMOND_REACH + (ring > 0 && diamonds > 0 ? GAP / 2 : 0);
  }

  private List<Mark> causes() {
    return marks.stream().filter(mark -> !mark.letter().isEmpty()).toList();
  }

  private List<Mark> asBuilt() {
    return marks.stream().filter(mark -> mark.letter().isEmpty()).toList();
  }

  private String letters() {
    return causes().stream().map(Mark::letter).sorted().collect(Collectors.joining());
  }

  public void draw(Graphics2D g, double y) {
    String letters = letters();
    if (asBuilt().isEmpty() || letters.isEmpty()) {
      if (letters.isEmpty()) {
        diamond(g, new Point2D.Double(middle(), y));
      } else {
        LetterMark.draw(g, letters, new Point2D.Double(middle(), y));
      }
      return;
    }
    boolean diamondFirst = middle(asBuilt()) < middle(causes()) - ALIKE;
    double ring = LetterMark.halfWidth(letters.length());
    double side = diamondFirst ? -1 : 1;
    LetterMark.draw(g, letters, new Point2D.Double(middle() + side * (ring - halfWidth()), y));
    diamond(g, new Point2D.Double(middle() + side * (halfWidth() - DIAMOND_REACH), y));
  }

  public static void diamond(Graphics2D g, Point2D at) {
    MarkShape.DIAMOND.draw(g, at, DIAMOND, Ink.TEXT, Ink.PAPER);
  }
}
