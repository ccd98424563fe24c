package rillwright.cli.study.asbuilt;

import rillwright.cli.file.edit.EditedText;
import rillwright.cli.file.field.Uncertain;
import rillwright.cli.file.quantity.Quantity.Even;
import rillwright.cli.study.asbuilt.AsbuiltAnswer.Quantity;
import rillwright.solver.study.uncertainty.posterior.Posterior.Band;

/** The text of a project with what was learnt in place of what was not known. */
public final class LearntText {
  private LearntText() {}

  /**
   * The text with each learnt quantity in the unit in which it is written: normal about its median,
   * or where that would leave the range that the file gives, a narrower range.
   */
  public static EditedText of(EditedText text, AsbuiltAnswer answer) {
    EditedText learnt = text;
    for (Quantity quantity : answer.quantities()) {
      if (quantity.isLearnt()) {
        learnt = learnt.set(quantity.named().address() + "=" + written(quantity));
      }
    }
    return learnt;
  }

  private static String written(Quantity quantity) {
    Band band = quantity.posterior();
    Uncertain before = quantity.named().quantity();
    if (before.quantity().spread() instanceof Even even
        && (2 * band.p5() - band.p50() < even.least()
            || 2 * band.p95() - band.p50() > even.greatest())) {
      return before.unit().even(band.p5(), band.p95(), even.least(), even.greatest());
    }
    return before.unit().normal(band.p5(), band.p50(), band.p95());
  }
}
