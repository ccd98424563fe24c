package rillwright.solver.stream;

import java.util.OptionalDouble;
import rillwright.solver.law.channel.ChannelSection;
import rillwright.solver.law.channel.UniformFlow;

/**
 * A drop: the water passes its edge at critical depth and holds nothing in falling.
 *
 * @param heightM m, greater than 0
 * @param widthM that runs wet, m, greater than 0
 */
public record Step(double heightM, double widthM) implements StreamItem {

  @Override
  public String kind() {
    return "step";
  }

  @Override
  public double dropM() {
    return heightM;
  }

  @Override
  public ItemState at(double flowM3PerS) {
    ChannelSection edge = new ChannelSection(widthM, 0);
    double depth = UniformFlow.criticalDepthM(edge, flowM3PerS);
    boolean flows = flowM3PerS > 0;
    return new ItemState(
        this,
        flowM3PerS,
        depth,
        OptionalDouble.of(flows ? flowM3PerS / edge.areaM2(depth) : 0),
        OptionalDouble.of(widthM),
        flows ? OptionalDouble.of(1) : OptionalDouble.empty(),
        OptionalDouble.of(depth),
        OptionalDouble.empty(),
        0,
        0,
        0,
        0,
        0,
        0);
  }
}
