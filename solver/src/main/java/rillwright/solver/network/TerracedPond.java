package rillwright.solver.network;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A pond dug as crews dig it: a rectangle of water with upright walls, shelves left standing all
 * round, a level floor.
 *
 * @param lengthM of the water at the brim, m, above 0
 * @param widthM of the water at the brim, m, above 0
 * @param depthM of the floor below the brim, m, above 0
 * @param shelves from the brim down, each deeper than the one before and above the floor; together
 *     they leave room for a floor
 */
public record TerracedPond(double lengthM, double widthM, double depthM, List<Shelf> shelves) {

  /** How deep under the brim, or under the shelf above, a shelf is; common practice, no source. */
  public static final double USUAL_STEP_M = 18 * 0.0254;

  /**
   * A ledge all round.
   *
   * @param depthM below the brim, m
   * @param widthM from the wall above it to its edge, m
   */
  public record Shelf(double depthM, double widthM) {}

  public TerracedPond {
    shelves = List.copyOf(shelves);
    if (!(lengthM > 0 && widthM > 0 && depthM > 0)) {
      throw new IllegalArgumentException("length, width and depth of a pond must be above 0");
    }
    double above = 0;
    for (Shelf shelf : shelves) {
      if (!(shelf.depthM() > above && shelf.depthM() < depthM && shelf.widthM() > 0)) {
        throw new IllegalArgumentException(
            "a shelf lies " + shelf.depthM() + " m deep; they go down from the brim to the floor");
      }
      above = shelf.depthM();
    }
    if (!(2 * shelves.stream().mapToDouble(Shelf::widthM).sum() < Math.min(lengthM, widthM))) {
      throw new IllegalArgumentException("the shelves leave no room for a floor");
    }
  }

  /** Its area by level, the brim lying at a level. */
  public BasinShape shape(double brimM) {
    List<BasinShape.Row> rows = new ArrayList<>();
    double inset = 0;
    double top = brimM;
    for (Shelf shelf : shelves) {
      rows.add(new BasinShape.Row(top, areaM2(inset)));
      top = brimM - shelf.depthM();
      rows.add(new BasinShape.Row(top, areaM2(inset)));
      inset += shelf.widthM();
    }
    rows.add(new BasinShape.Row(top, areaM2(inset)));
    rows.add(new BasinShape.Row(brimM - depthM, areaM2(inset)));
    Collections.reverse(rows);
    return new BasinShape(rows);
  }

  private double areaM2(double insetM) {
    return (lengthM - 2 * insetM) * (widthM - 2 * insetM);
  }
}
