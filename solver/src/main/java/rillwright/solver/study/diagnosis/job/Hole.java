package rillwright.solver.study.diagnosis.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.PointName;

/**
 * A hole through which water leaves a pipe: q = q0 √(Δh/Δh0), Δh the head in the pipe above where
 * it runs out; nothing where the head is below that.
 *
 * <p>Source: flow through an orifice, e.g. Daugherty and Franzini, Fluid Mechanics with Engineering
 * Applications, chapter 12 (from memory).
 *
 * @param elevationM where it runs out, m
 * @param headM Δh0, m, above 0
 * @param flowM3PerS q0, m³/s, above 0
 * @param lost whether what runs out is lost to the ponds
 */
public record Hole(double elevationM, double headM, double flowM3PerS, boolean lost) {
  private static final LineEnd NO_END = new LineEnd(EndLoss.NONE, Optional.empty());

  /** The way out through it: a line and where it ends. */
  record Way(Line line, Outlet end) {}

  /**
   * The way out from a point.
   *
   * @param number that of no other hole
   */
  Way from(PointName point, int number) {
    // a blank before a name sets it apart from every name in a file
    PointName end = new PointName(" hole " + number);
    return new Way(
        new Line(
            name(number),
            point,
            end,
            Optional.empty(),
            List.of(new Loss(new PowerLoss(headM, flowM3PerS, 2), Optional.empty())),
            NO_END,
            NO_END),
        new Outlet(
            end, elevationM, OptionalDouble.empty(), Optional.empty(), OptionalDouble.empty()));
  }

  static LineName name(int number) {
    return new LineName(" hole " + number);
  }
}
