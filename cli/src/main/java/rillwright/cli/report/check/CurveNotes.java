package rillwright.cli.report.check;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.law.pump.MoreOutThanIn;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;

/** What is doubtful about the curve of a data sheet, and what is taken beyond it. */
public final class CurveNotes {
  /** A sheet that goes down to this share of its first head goes far enough. */
  private static final double LOW_HEAD_SHARE = 0.2;

  private final ShownUnits units;
  private final List<String> notes = new ArrayList<>();

  private CurveNotes(ShownUnits units) {
    this.units = units;
  }

  /** Sentences without their full stop, to stand behind the pump's name. */
  public static List<String> of(PumpCurve curve, double densityKgPerM3, ShownUnits units) {
    CurveNotes found = new CurveNotes(units);
    MoreOutThanIn.find(curve, densityKgPerM3).ifPresent(found::power);
    found.points(curve);
    return found.notes;
  }

  private void points(PumpCurve curve) {
    List<PumpPoint> points = curve.points();
    PumpPoint first = points.get(0);
    PumpPoint last = points.get(points.size() - 1);
    if (first.flowM3PerS() > 0) {
      notes.add(
          "its data sheet begins at "
              + units.writtenFlow(first.flowM3PerS())
              + "; the shut-off head of "
              + units.head(curve.publishedShutOffHeadM())
              + " is extended from there");
    }
    for (int i = 1; i < points.size(); i++) {
      if (points.get(i).headM() >= points.get(i - 1).headM()) {
        hump(points.get(i - 1), points.get(i));
      }
    }
    if (last.headM() > LOW_HEAD_SHARE * first.headM()) {
      notes.add(
          "its data sheet ends at "
              + units.writtenFlow(last.flowM3PerS())
              + ", where it still makes "
              + units.writtenHead(last.headM())
              + "; beyond, its curve is extended");
    }
  }

  private void power(MoreOutThanIn worst) {
    notes.add(
        "the power on its data sheet cannot be right: hydraulic output exceeds electrical input at "
            + units.writtenFlow(worst.flowM3PerS())
            + ", "
            + units.power(worst.waterPowerW())
            + " of water from "
            + units.power(worst.powerW())
            + "; check the unit");
  }

  private void hump(PumpPoint before, PumpPoint row) {
    notes.add(
        "its head at "
            + units.writtenFlow(row.flowM3PerS())
            + ", "
            + units.writtenHead(row.headM())
            + ", is not below the "
            + units.writtenHead(before.headM())
            + " at "
            + units.writtenFlow(before.flowM3PerS())
            + "; check that row. The hump is levelled");
  }
}
