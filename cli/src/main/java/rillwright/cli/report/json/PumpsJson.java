package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.NUMBER;

import rillwright.cli.file.fault.Fault;
import rillwright.cli.json.Json;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.report.Estimate;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.choice.PumpsAnswer;

/** Pumps tried, for programs. */
public final class PumpsJson {
  static final Shape<PumpsAnswer> SHAPE =
      Estimate.<PumpsAnswer>answer("pumps", "Pumps of a list tried in the project, the best first.")
          .words("title", Meaning.TITLE, PumpsAnswer::title)
          .list("changed", Value.words(), Meaning.CHANGED, PumpsAnswer::changes)
          .member("duty", DutyJson.SHAPE, "What is asked.", it -> DutyJson.within(it.duty()))
          .number("years", NUMBER.above(0), Meaning.YEARS, it -> it.terms().years())
          .orNull("currency", Value.words(), Meaning.CURRENCY, PumpsAnswer::currency)
          .list(
              "candidates",
              TriedJson.SHAPE,
              "Those that meet the targets first, by cost over the years; then the others, nearest"
                  + " first.",
              it ->
                  it.choice().ranked().stream()
                      .map(
                          rated ->
                              TriedJson.of(
                                  rated,
                                  it.choice().demand(),
                                  rated.costOverYears(),
                                  Shown.of(it),
                                  it.year()))
                      .toList())
          .list(
              "faults",
              Value.words(),
              Meaning.FAULTS,
              it -> it.faults().stream().map(Fault::toString).toList())
          .list(
              "notBalanced",
              Value.words(),
              "Models with which the network has no balance.",
              it -> it.choice().leftOut())
          .including(CasesJson.JUDGING, PumpsAnswer::conditions);

  private PumpsJson() {}

  /** The JSON text. */
  public static String of(PumpsAnswer answer) {
    return Json.text(SHAPE, answer);
  }
}
