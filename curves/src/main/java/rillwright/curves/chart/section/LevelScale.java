package rillwright.curves.chart.section;

import java.util.stream.DoubleStream;
import rillwright.curves.chart.layout.AxisRange;
import rillwright.curves.unit.Unit;

/**
 * Heights on the paper of levels; the same in all strips of a picture.
 *
 * @param unit in which levels are written
 * @param steps the round levels that are written
 * @param perM length on the paper of a metre
 * @param baseM level at a height on the paper, m
 * @param baseY that height
 */
public record LevelScale(Unit unit, AxisRange steps, double perM, double baseM, double baseY) {

  /** The scale in which the tallest row of a picture has a height. */
  public static LevelScale of(Unit unit, double lowestM, double highestM, double perM) {
    AxisRange steps = AxisRange.spanning(unit.fromSi(lowestM), unit.fromSi(highestM), STEPS);
    return new LevelScale(unit, steps, perM, 0, 0);
  }

  private static final int STEPS = 6;

  LevelScale with(double levelM, double y) {
    return new LevelScale(unit, steps, perM, levelM, y);
  }

  /** Length on the paper of a difference of levels, m. */
  double length(double differenceM) {
    return perM * differenceM;
  }

  double y(double levelM) {
    return baseY - length(levelM - baseM);
  }

  /** The levels to be written, m. */
  DoubleStream ticksM() {
    return steps.ticks().map(unit::toSi);
  }

  String label(double levelM) {
    return steps.label(unit.fromSi(levelM));
  }
}
