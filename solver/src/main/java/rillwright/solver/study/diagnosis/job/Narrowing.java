package rillwright.solver.study.diagnosis.job;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import rillwright.solver.law.Bore;
import rillwright.solver.network.Line;
import rillwright.solver.network.Part;
import rillwright.solver.network.Run;

/**
 * By what factors the bores of a line change.
 *
 * @param parts of each part, in their order; empty if that of the pipe
 * @param pipe of the pipe
 * @param entrance of the line's entrance
 * @param exit of its exit
 */
public record Narrowing(List<Double> parts, double pipe, double entrance, double exit) {
  public Narrowing {
    parts = List.copyOf(parts);
  }

  /** All alike. */
  static Narrowing evenly(double factor) {
    return new Narrowing(List.of(), factor, factor, factor);
  }

  /**
   * Every run one size smaller, with all that has the bore of one of them: fittings, valves, ends.
   *
   * @param sizeBelow the same run one size smaller; empty where there is none
   * @return empty if no run has a smaller size
   */
  public static Optional<Narrowing> toSizeBelow(Line line, Function<Run, Optional<Run>> sizeBelow) {
    Map<Double, Double> byBore = new HashMap<>();
    for (Part part : line.parts()) {
      if (part instanceof Run run) {
        double drawn = run.inside().diameterM();
        sizeBelow
            .apply(run)
            .ifPresent(smaller -> byBore.put(drawn, smaller.inside().diameterM() / drawn));
      }
    }
    if (byBore.isEmpty()) {
      return Optional.empty();
    }
    double pipe = factor(line.mainBore(), byBore, 1);
    return Optional.of(
        new Narrowing(
            line.parts().stream().map(part -> factor(part.bore(), byBore, pipe)).toList(),
            pipe,
            factor(line.entrance().bore(), byBore, 1),
            factor(line.exit().bore(), byBore, 1)));
  }

  private static double factor(
      Optional<Bore> bore, Map<Double, Double> byBore, double withoutBore) {
    return bore.map(it -> byBore.getOrDefault(it.diameterM(), 1.0)).orElse(withoutBore);
  }

  double ofPart(int index) {
    return parts.isEmpty() ? pipe : parts.get(index);
  }

  /** The line's own bore and its ends; its parts stay. */
  Line frame(Line line) {
    return new Line(
        line.name(),
        line.from(),
        line.to(),
        line.pipeBore().map(bore -> bore.times(pipe)),
        line.parts(),
        line.entrance().narrowed(entrance),
        line.exit().narrowed(exit));
  }
}
