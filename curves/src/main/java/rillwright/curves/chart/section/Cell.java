package rillwright.curves.chart.section;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.curves.chart.content.SectionChart.Piece;
import rillwright.curves.chart.content.SectionChart.Symbol;

/** A piece at its place on the paper. */
final class Cell {
  /** Less than this, m, is below any measurement. */
  private static final double NOTICEABLE_M = 1e-6;

  /** How far a pipe reaches into open water. */
  private static final double INTO_WATER = 26;

  private final Piece piece;
  private final double left;
  private final double right;
  private final boolean inChamber;
  private final LevelScale scale;
  private double waterRight;
  private boolean comesFromWater;
  private double pipeEnd;
  private double leavesY;

  /**
   * A piece.
   *
   * @param inChamber whether it stands in the water of the chamber before it
   */
  Cell(Piece piece, double left, double right, boolean inChamber, LevelScale scale) {
    this.piece = piece;
    this.left = left;
    this.right = right;
    this.inChamber = inChamber;
    this.scale = scale;
    this.waterRight = right;
    this.pipeEnd = right;
    this.leavesY = endY();
  }

  Piece piece() {
    return piece;
  }

  double left() {
    return left;
  }

  double right() {
    return right;
  }

  /** Where its open water ends: it may reach over the next piece. */
  double waterRight() {
    return waterRight;
  }

  /** Joins its pipe to open water or an open end beside it. */
  void join(Cell before) {
    if (piece.symbol().isInPipe()) {
      comesFromWater = !before.piece.symbol().isInPipe();
      before.leavesY = startY();
    } else if (piece.symbol() == Symbol.OUTLET) {
      before.pipeEnd = centerX();
    } else {
      before.pipeEnd = left + INTO_WATER;
    }
  }

  void widenTo(double x) {
    waterRight = x;
  }

  double centerX() {
    return (left + right) / 2;
  }

  /** Height of a level, m. */
  double y(double levelM) {
    return scale.y(levelM);
  }

  double startY() {
    return y(piece.start().levelM());
  }

  double endY() {
    return y(piece.end().levelM());
  }

  /** Where its symbol stands: a pump at its inlet, all others in the middle of their pipe. */
  double symbolY() {
    return piece.symbol() == Symbol.PUMP ? startY() : (startY() + endY()) / 2;
  }

  /** The lowest that is drawn of it. */
  double lowestY() {
    double bed = Math.max(startY(), endY());
    return piece.water().map(water -> Math.max(bed, y(water.bottomM()))).orElse(bed);
  }

  /**
   * Leads pipes on through it, if they are of one kind with its own.
   *
   * @param sure whether pipes at levels that are known are led, or others
   * @param on whether a pipe comes to it
   * @return whether one goes on behind it
   */
  boolean addPipe(Path2D pipes, boolean sure, boolean on) {
    boolean isSure = piece.start().sure() && piece.end().sure();
    if (!piece.symbol().isInPipe() || sure != isSure) {
      return false;
    }
    if (on && !inChamber) {
      pipes.lineTo(left, startY());
    } else {
      pipes.moveTo(inChamber ? centerX() : left - (comesFromWater ? INTO_WATER : 0), startY());
      pipes.lineTo(inChamber ? centerX() : left, startY());
    }
    if (piece.symbol() == Symbol.PUMP) {
      pipes.lineTo(centerX(), startY());
      pipes.lineTo(centerX(), inChamber ? leavesY : endY());
      pipes.lineTo(right, inChamber ? leavesY : endY());
      return true;
    }
    pipes.lineTo(right, endY());
    pipes.lineTo(pipeEnd, endY());
    return true;
  }

  /** What of its pipe lies above the head that a gauge would show. */
  Optional<Line2D> suction() {
    OptionalDouble startM = piece.start().suctionM();
    OptionalDouble endM = piece.end().suctionM();
    boolean unknown = startM.isEmpty() || endM.isEmpty() || !piece.symbol().isInPipe();
    if (unknown || Math.max(startM.getAsDouble(), endM.getAsDouble()) <= NOTICEABLE_M) {
      return Optional.empty();
    }
    double start = startM.getAsDouble();
    double end = endM.getAsDouble();
    double from = start > 0 ? 0 : start / (start - end);
    double to = end > 0 ? 1 : start / (start - end);
    boolean isPump = piece.symbol() == Symbol.PUMP;
    double last = isPump ? Math.min(to, 0.5) : to;
    double foot = isPump ? startY() : endY();
    return Optional.of(
        new Line2D.Double(
            left + from * (right - left),
            startY() + from * (foot - startY()),
            left + last * (right - left),
            startY() + last * (foot - startY())));
  }
}
