package rillwright.curves.sheet;

import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import rillwright.curves.wording.PlainText;

/** What points must be to make a pump's curve together, wherever they are written. */
public final class CurveRules {
  /** Flows nearer than this, m³/s, are the same: a few millilitres an hour. */
  private static final double SAME_FLOW_M3_PER_S = 1e-9;

  /** Where breaches of the rules are noted. */
  public interface Faults {
    /**
     * Notes what is wrong with one value.
     *
     * @param index of its point, from 0
     * @param column {@code flow}, {@code head} or {@code power}
     * @param message which begins with the value in quotes
     */
    void at(int index, String column, String message);

    /** Notes what is wrong with all points together. */
    void together(String message);
  }

  private final Faults faults;

  /** The rules, with the place for what breaks them. */
  public CurveRules(Faults faults) {
    this.faults = faults;
  }

  /** Points, or what has one, from the least flow to the greatest. */
  public static <T> List<T> inOrder(List<T> points, Function<T, WrittenPoint> pointOf) {
    return points.stream()
        .sorted(Comparator.comparingDouble(each -> pointOf.apply(each).point().flowM3PerS()))
        .toList();
  }

  /** Checks the size of each value, and that no flow comes twice; the points in order of flow. */
  public void checkEach(List<WrittenPoint> points) {
    for (int i = 0; i < points.size(); i++) {
      WrittenPoint written = points.get(i);
      checkSize(i, ColumnKind.FLOW, written.flow(), written.point().flowM3PerS());
      checkSize(i, ColumnKind.HEAD, written.head(), written.point().headM());
      checkSize(i, ColumnKind.POWER, written.power(), written.point().powerW().orElse(0));
      if (i > 0) {
        checkOrder(i, points.get(i - 1), written);
      }
    }
  }

  /** Checks what needs all points. */
  public void checkTogether(List<WrittenPoint> points) {
    if (points.size() < 2) {
      faults.together(
          "a pump's curve needs two points or more, each with a flow and a head; here "
              + (points.isEmpty() ? "is none" : "is only one"));
      return;
    }
    WrittenPoint first = points.get(0);
    int last = points.size() - 1;
    if (!(points.get(last).point().headM() < first.point().headM())) {
      faults.at(
          last,
          ColumnKind.HEAD.heading(),
          "%s is the last and is not below the first, %s in %s; a pump's head falls as its flow rises"
              .formatted(
                  PlainText.quoted(points.get(last).head()),
                  PlainText.quoted(first.head()),
                  first.name()));
    }
    if (points.stream().filter(each -> each.point().powerW().isPresent()).count() == 1) {
      faults.together("only one point has a power; give it at two points or more, or at none");
    }
  }

  private void checkSize(int index, ColumnKind kind, String written, double si) {
    if (si > kind.greatest()) {
      faults.at(
          index,
          kind.heading(),
          "%s is more than %s; is its unit right?"
              .formatted(PlainText.quoted(written), kind.greatestInWords()));
    }
  }

  private void checkOrder(int index, WrittenPoint before, WrittenPoint written) {
    if (written.point().flowM3PerS() - before.point().flowM3PerS() <= SAME_FLOW_M3_PER_S) {
      faults.at(
          index,
          ColumnKind.FLOW.heading(),
          "%s is the same as %s in %s; leave one of the two out"
              .formatted(
                  PlainText.quoted(written.flow()),
                  PlainText.quoted(before.flow()),
                  before.name()));
    }
  }
}
