package rillwright.solver.steady;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.function.Executable;
import rillwright.solver.network.LineName;

/**
 * A published network with the numbers that its source prints, in the source's units. Where a
 * number is not printed but follows from the stated problem, it is added as computed.
 */
final class PublishedCase {
  /** US units, exact: foot, inch, cubic foot a second, US gallon a minute. */
  static final double FT = 0.3048;

  static final double IN = 0.0254;
  static final double CFS = FT * FT * FT;
  static final double GPM = 3.785411784e-3 / 60;

  private record Result(
      String what, ToDoubleFunction<SteadyState> value, double expected, double tolerance) {}

  private final String source;
  private final Sketch sketch;
  private final List<Result> numbers = new ArrayList<>();

  PublishedCase(String source, Sketch sketch) {
    this.source = source;
    this.sketch = sketch;
  }

  /** A number that the source prints. */
  PublishedCase prints(
      String what, ToDoubleFunction<SteadyState> value, double expected, double tolerance) {
    numbers.add(new Result(what + ", printed", value, expected, tolerance));
    return this;
  }

  /** A number that is not printed but computed from the source's problem by other means. */
  PublishedCase computed(
      String what, ToDoubleFunction<SteadyState> value, double expected, double tolerance) {
    numbers.add(new Result(what + ", computed", value, expected, tolerance));
    return this;
  }

  PublishedCase printsFlow(String line, double unit, double expected, double tolerance) {
    return prints("flow in " + line, s -> Sketch.flow(s, line) / unit, expected, tolerance);
  }

  PublishedCase computedFlow(String line, double unit, double expected, double tolerance) {
    return computed("flow in " + line, s -> Sketch.flow(s, line) / unit, expected, tolerance);
  }

  /** Head loss along a line, in a unit. */
  static ToDoubleFunction<SteadyState> loss(String line, double unit) {
    return state -> state.line(new LineName(line)).headLossM().getAsDouble() / unit;
  }

  /** Head at a point, in a unit. */
  static ToDoubleFunction<SteadyState> head(String point, double unit) {
    return state -> Sketch.head(state, point) / unit;
  }

  /** Speed in a line, in a unit. */
  static ToDoubleFunction<SteadyState> speed(String line, double unit) {
    return state -> state.line(new LineName(line)).velocityMPerS().getAsDouble() / unit;
  }

  void check() {
    SteadyState state = sketch.solve();
    List<Executable> checks = new ArrayList<>();
    checks.add(() -> assertEquals(List.of(), BalanceAudit.faults(state)));
    for (Result result : numbers) {
      checks.add(
          () ->
              assertEquals(
                  result.expected,
                  result.value.applyAsDouble(state),
                  result.tolerance,
                  result.what));
    }
    assertAll(source, checks);
  }

  @Override
  public String toString() {
    return source;
  }
}
