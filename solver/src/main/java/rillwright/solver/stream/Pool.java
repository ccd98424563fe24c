package rillwright.solver.stream;

import java.util.OptionalDouble;
import rillwright.solver.law.weir.Weir;

/**
 * A pool upstream of a crest: it stays full to the crest when the pump stops.
 *
 * @param areaM2 water surface, m², greater than 0; its walls are upright
 * @param depthM below its crest, m, greater than 0
 * @param weir the law of its crest
 * @param depthBand by what share the head over the crest may be off
 */
public record Pool(double areaM2, double depthM, Weir weir, double depthBand)
    implements StreamItem {

  @Override
  public String kind() {
    return "pool";
  }

  @Override
  public double dropM() {
    return 0;
  }

  @Override
  public ItemState at(double flowM3PerS) {
    double head = weir.headAt(flowM3PerS);
    double volume = areaM2 * head;
    return new ItemState(
        this,
        flowM3PerS,
        depthM + head,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        OptionalDouble.of(head),
        volume,
        (1 - depthBand) * volume,
        (1 + depthBand) * volume,
        0,
        areaM2 * depthM,
        areaM2);
  }
}
