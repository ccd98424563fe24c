package rillwright.cli.report.json;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rillwright.cli.study.weak.CausesAnswer;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.cause.Sign;

/** The causes of a job for programs, and to be edited and read back. */
public final class CausesJson {
  private CausesJson() {}

  /** The JSON text. */
  public static String of(CausesAnswer answer) {
    List<String> names = answer.names();
    return Json.object(
        json -> {
          ChangedField.writeIfAny(json, answer.changes());
          json.array("causes", () -> answer.causes().causes().forEach(cause -> cause(json, cause)));
          json.object(
              "signs",
              () -> {
                for (Sign sign : Sign.values()) {
                  Map<String, Double> factors =
                      answer.signs().factors().getOrDefault(sign, Map.of());
                  json.object(
                      sign.words(),
                      () ->
                          names.stream()
                              .filter(factors::containsKey)
                              .forEach(name -> json.number(name, factors.get(name))));
                }
              });
        });
  }

  private static void cause(Json json, Cause cause) {
    json.object(
        () -> {
          CauseIdJson.write(json, cause.id());
          json.words("quantity", cause.quantity().words());
          json.number(
              "from",
              cause.sizes().map(s -> OptionalDouble.of(s.from())).orElse(OptionalDouble.empty()));
          json.number(
              "to",
              cause.sizes().map(s -> OptionalDouble.of(s.to())).orElse(OptionalDouble.empty()));
          json.truth("log", cause.sizes().map(sizes -> sizes.log()).orElse(false));
          json.number("prior", cause.prior());
        });
  }
}
