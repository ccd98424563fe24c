package rillwright.curves.chart.content;

import java.util.List;
import java.util.Optional;
import rillwright.curves.unit.Dimension;
import rillwright.curves.unit.Unit;

/**
 * Pump curves over system curves: one of each with the point where they meet, many pumps over one
 * system, or many systems under one pump. All values are SI; the units say how they are shown.
 *
 * @param title one line, shown as plain text
 * @param caption a sentence below it; may be empty
 * @param flowUnit of the flow axis
 * @param headUnit of the head axis, a length
 * @param systemCurves heads taken; may be empty if there is a pump curve
 * @param pumpCurves heads given; may be empty if there is a system curve
 * @param operatingPoints where they meet, the first one the most important
 * @param flowLimit a flow that the network cannot pass
 * @param staticHead the head at no flow
 * @param power drawn by a pump
 */
public record OperatingChart(
    String title,
    String caption,
    Unit flowUnit,
    Unit headUnit,
    List<CurveSeries> systemCurves,
    List<PumpCurveSeries> pumpCurves,
    List<OperatingPoint> operatingPoints,
    Optional<FlowMark> flowLimit,
    Optional<HeadMark> staticHead,
    Optional<PowerSeries> power)
    implements Chart {
  public OperatingChart {
    systemCurves = List.copyOf(systemCurves);
    pumpCurves = List.copyOf(pumpCurves);
    operatingPoints = List.copyOf(operatingPoints);
    if (flowUnit.dimension() != Dimension.FLOW || headUnit.dimension() != Dimension.LENGTH) {
      throw new IllegalArgumentException(
          "a chart's axes are %s and %s; they must be a flow and a length"
              .formatted(flowUnit.symbol(), headUnit.symbol()));
    }
    if (systemCurves.isEmpty() && pumpCurves.isEmpty()) {
      throw new IllegalArgumentException("a chart needs a curve");
    }
  }
}
