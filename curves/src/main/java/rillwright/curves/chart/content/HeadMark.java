package rillwright.curves.chart.content;

/**
 * A head worth a thin line across, such as the static head.
 *
 * @param headM m
 * @param label what it is, in words
 */
public record HeadMark(double headM, String label) {
  public HeadMark {
    Finite.check("head", headM);
  }
}
