package rillwright.cli.report.json;

import java.util.List;
import java.util.Optional;
import rillwright.cli.json.Json;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.report.Estimate;
import rillwright.cli.report.NoBalanceWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.condition.Case;
import rillwright.cli.study.condition.Cases;
import rillwright.cli.study.condition.JudgingConditions;
import rillwright.cli.study.condition.NamedCondition;
import rillwright.cli.study.condition.NamedCondition.Changed;
import rillwright.cli.study.odds.OddsAnswer;
import rillwright.cli.study.stream.StreamAnswer;

/** Conditions, and what a study says of a project in each, for programs. */
public final class CasesJson {
  private static final Shape<Changed> CHANGE =
      Shape.<Changed>of()
          .words("quantity", "As --set addresses it.", Changed::quantity)
          .words("value", "What it becomes.", Changed::value);

  private static final Shape<NamedCondition> CONDITION =
      Shape.<NamedCondition>named("condition", "A condition of the project.")
          .words("name", "Its name.", NamedCondition::name)
          .list(
              "changes",
              CHANGE,
              "What is changed in the file; nothing as written.",
              NamedCondition::changes);

  /** The conditions that judge the choices of a study; its members are left out without any. */
  static final Shape<Optional<JudgingConditions>> JUDGING =
      Shape.<Optional<JudgingConditions>>of()
          .ifAny(
              "offered",
              Value.truth(),
              Meaning.OFFERED + " Only with conditions.",
              judging -> judging.map(JudgingConditions::offered))
          .ifAny(
              "conditions",
              Value.someOf(CONDITION),
              "The conditions that judge the choices; only with conditions.",
              judging -> judging.map(JudgingConditions::conditions));

  static final Shape<Cases<OddsAnswer>> ODDS = shape("odds", OddsJson.SHAPE);

  static final Shape<Cases<StreamAnswer>> STREAM =
      shape("stream", StreamJson.SHAPE.of(answer -> new StreamJson(answer, false)));

  /** One of some cases. */
  record In<A>(Cases<A> all, Case<A> one) {
    static <A> List<In<A>> list(Cases<A> all) {
      return all.cases().stream().map(one -> new In<>(all, one)).toList();
    }
  }

  private CasesJson() {}

  /** The JSON text of odds in conditions. */
  public static String ofOdds(Cases<OddsAnswer> answer) {
    return Json.text(ODDS, answer);
  }

  /** The JSON text of streams in conditions. */
  public static String ofStreams(Cases<StreamAnswer> answer) {
    return Json.text(STREAM, answer);
  }

  private static <A> Shape<Cases<A>> shape(String study, Value<A> shown) {
    return Estimate.<Cases<A>>answer(
            study + "Conditions", "What \"" + study + "\" says of a project in conditions.")
        .words("title", Meaning.TITLE, Cases::title)
        .list("changed", Value.words(), Meaning.CHANGED, Cases::changes)
        .member(
            "study",
            Value.oneOf(study),
            "The member of a condition that holds its answer.",
            any -> study)
        .truth("offered", Meaning.OFFERED, Cases::offered)
        .member("conditions", Value.someOf(one(study, shown)), "In their order.", In::list);
  }

  /** What a study says in one condition, in a member called as the study is. */
  static <A> Shape<In<A>> one(String study, Value<A> shown) {
    return Shape.<In<A>>of()
        .including(CONDITION, it -> it.one.named())
        .orNull(
            "noBalance",
            Value.words(),
            "Why there is no balance; null if there is one.",
            it -> it.one.noBalance().map(why -> NoBalanceWords.of(why, Shown.of(it.all))))
        .orNull(study, shown, "What is so then; null without a balance.", it -> it.one.answer());
  }
}
