package rillwright.solver.stream;

import java.util.OptionalDouble;
import rillwright.solver.law.channel.BedLaw;
import rillwright.solver.law.channel.ChannelSection;
import rillwright.solver.law.channel.UniformFlow;

/**
 * A sloping piece of a stream, in which water runs at its normal depth.
 *
 * @param lengthM m, greater than 0
 * @param dropM by how much the bed falls, m; level where 0
 * @param section its cross-section
 * @param bed what it is lined with
 * @param band how much slower or faster the water may well be
 * @param gravel under it
 * @param linerEdgeM height of the liner's edge above the bed, m, where known
 */
public record Reach(
    double lengthM,
    double dropM,
    ChannelSection section,
    BedLaw bed,
    Band band,
    Gravel gravel,
    OptionalDouble linerEdgeM)
    implements StreamItem {

  /**
   * How many times as slow as computed the water may well be.
   *
   * @param least below 1
   * @param most above 1
   */
  public record Band(double least, double most) {
    /** For beds by stone size; common practice, no source. */
    public static final Band STONES = new Band(0.6, 1.6);

    /** For a roughness that is given; common practice, no source. */
    public static final Band GIVEN = new Band(0.8, 1.25);
  }

  @Override
  public String kind() {
    return "reach";
  }

  /** Fall over length. */
  public double slope() {
    return dropM / lengthM;
  }

  /** Depth at a flow, m, the water running so many times as slow as computed. */
  double depthM(double flowM3PerS, double slowness) {
    double flow = slowness * flowM3PerS;
    return dropM > 0
        ? UniformFlow.normalDepthM(section, bed, slope(), flow)
        : UniformFlow.levelReachDepthM(section, bed, lengthM, flow);
  }

  /** Water at a depth, m³. */
  double volumeM3(double depthM) {
    return section.areaM2(depthM) * lengthM;
  }

  /** Bed with gravel under it, m²: as wide as the bed, or as the water where it is a vee. */
  public double gravelAreaM2(double depthM) {
    double width = section.bedWidthM() > 0 ? section.bedWidthM() : section.surfaceWidthM(depthM);
    return width * lengthM;
  }

  @Override
  public ItemState at(double flowM3PerS) {
    double depth = depthM(flowM3PerS, 1);
    boolean flows = flowM3PerS > 0;
    double velocity = flows ? flowM3PerS / section.areaM2(depth) : 0;
    double gravelArea = gravelAreaM2(depth);
    return new ItemState(
        this,
        flowM3PerS,
        depth,
        OptionalDouble.of(velocity),
        OptionalDouble.of(section.surfaceWidthM(depth)),
        flows
            ? OptionalDouble.of(UniformFlow.froude(section, flowM3PerS, depth))
            : OptionalDouble.empty(),
        OptionalDouble.of(UniformFlow.criticalDepthM(section, flowM3PerS)),
        OptionalDouble.empty(),
        volumeM3(depth),
        volumeM3(depthM(flowM3PerS, band.least())),
        volumeM3(depthM(flowM3PerS, band.most())),
        flows ? gravelArea * gravel.drainableM() : 0,
        0,
        section.surfaceWidthM(depth) * lengthM);
  }
}
