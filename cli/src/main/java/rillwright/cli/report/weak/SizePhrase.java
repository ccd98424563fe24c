package rillwright.cli.report.weak;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.weak.WeakAnswer;
import rillwright.curves.wording.PlainText;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.inference.Explanation;

/** How large a cause would be, in a few words. */
public final class SizePhrase {
  private SizePhrase() {}

  /** "passes 2,100 gph"; empty without a size. */
  public static Optional<String> of(Explanation explanation, WeakAnswer answer) {
    return of(explanation.cause().id(), explanation.size(), explanation.choice(), answer);
  }

  /** The same of a cause at a size, or of one of several. */
  public static Optional<String> of(
      CauseId id, OptionalDouble size, Optional<String> choice, WeakAnswer answer) {
    if (choice.isPresent()) {
      return Optional.of("is " + PlainText.quoted(choice.get()));
    }
    if (size.isEmpty()) {
      return Optional.empty();
    }
    if (CauseWords.of(id.cause()) == CauseWords.VALVE_MOVED) {
      return Optional.of(
          ValveWords.at(
              ValveWords.of(id, answer.scope().job()), size.getAsDouble(), Shown.of(answer)));
    }
    String words =
        CauseWords.of(id.cause())
            .size()
            .of(
                size.getAsDouble(),
                CausePlace.pumpFlowM3PerS(id, answer.scope().job()),
                Shown.of(answer));
    return words.isEmpty() ? Optional.empty() : Optional.of(words);
  }
}
