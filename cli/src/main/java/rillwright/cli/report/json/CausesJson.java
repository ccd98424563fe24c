package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.NUMBER;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import rillwright.cli.json.Json;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.study.weak.CausesAnswer;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.cause.Sign;
import rillwright.solver.study.diagnosis.cause.SizeRange;

/** The causes of a job for programs, and to be edited and read back. */
public final class CausesJson {
  private static final Shape<Cause> CAUSE =
      Shape.<Cause>of()
          .including(WeakJson.CAUSE, Cause::id)
          .member("quantity", Value.someWords(), "What it changes.", it -> it.quantity().words())
          .numberOrNull("from", NUMBER, "Least size.", it -> size(it, SizeRange::from))
          .numberOrNull("to", NUMBER, "Greatest size.", it -> size(it, SizeRange::to))
          .truth(
              "log",
              "Whether the logarithms of sizes are alike.",
              it -> it.sizes().map(SizeRange::log).orElse(false))
          .number("prior", NUMBER.from(0), "How likely it is before any reading.", Cause::prior);

  private static final Value<String> SIGN_NAME =
      Value.oneOf(Arrays.stream(Sign.values()).map(Sign::words).toList());

  static final Shape<CausesAnswer> SHAPE =
      Shape.<CausesAnswer>answer(
              "weakCauses",
              "The causes of a job before any reading; --priors reads it back, edited.")
          .ifAny(
              "changed",
              Value.list(Value.words()),
              Meaning.CHANGED,
              it -> Optional.of(it.changes()).filter(changes -> !changes.isEmpty()))
          .member("causes", Value.someOf(CAUSE), "At each place.", it -> it.causes().causes())
          .member(
              "signs",
              Value.byName(SIGN_NAME, Value.byName(WeakJson.CAUSE_NAME, NUMBER.above(0))),
              "By what factor a sign changes how likely a cause is.",
              CausesJson::signs);

  private CausesJson() {}

  /** The JSON text. */
  public static String of(CausesAnswer answer) {
    return Json.text(SHAPE, answer);
  }

  private static OptionalDouble size(Cause cause, ToDoubleFunction<SizeRange> of) {
    return cause.sizes().stream().mapToDouble(of).findFirst();
  }

  /** By sign and name of the cause, in their orders. */
  private static Map<String, Map<String, Double>> signs(CausesAnswer answer) {
    List<String> names = answer.names();
    Map<String, Map<String, Double>> signs = new LinkedHashMap<>();
    for (Sign sign : Sign.values()) {
      Map<String, Double> factors = answer.signs().factors().getOrDefault(sign, Map.of());
      signs.put(
          sign.words(),
          Value.map(
              names.stream().filter(factors::containsKey).toList(), name -> name, factors::get));
    }
    return signs;
  }
}
