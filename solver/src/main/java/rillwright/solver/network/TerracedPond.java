package rillwright.solver.network;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import rillwright.solver.invariant.Require;

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
  public record Shelf(double depthM, double widthM) {
    public Shelf {
      Require.positive("depth of a shelf", depthM, "m");
      Require.positive("width of a shelf", widthM, "m");
    }
  }

  public TerracedPond {
    Require.positive("length of a pond", lengthM, "m");
    Require.positive("width of a pond", widthM, "m");
    Require.positive("depth of a pond", depthM, "m");
    shelves = Require.all("shelves of a pond", shelves);
    double above = 0;
    double ledges = 0;
    for (Shelf shelf : shelves) {
      Require.above("depth of a shelf", shelf.depthM(), above, "m");
      Require.below("depth of a shelf", shelf.depthM(), depthM, "m");
      above = shelf.depthM();
      ledges += 2 * shelf.widthM();
    }
    Require.below("width of all shelves, both sides", ledges, Math.min(lengthM, widthM), "m");
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
