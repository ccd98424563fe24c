package rillwright.cli.study.asbuilt;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.file.edit.EditedText;
import rillwright.cli.file.field.Uncertain;
import rillwright.cli.file.quantity.Quantity.Even;
import rillwright.cli.study.asbuilt.AsbuiltAnswer.Quantity;
import rillwright.cli.study.asbuilt.AsbuiltAnswer.SizeChance;
import rillwright.solver.study.uncertainty.posterior.Posterior.Band;

/** The text of a project with what was learnt in place of what was not known. */
public final class LearntText {
  /** A size that is less likely than this is dropped. */
  private static final double UNLIKELY = 0.025;

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
    if (!quantity.chances().isEmpty()) {
      return sizes(quantity);
    }
    if (before.quantity().spread() instanceof Even even
        && (2 * band.p5() - band.p50() < even.least()
            || 2 * band.p95() - band.p50() > even.greatest())) {
      return before.unit().even(band.p5(), band.p95(), even.least(), even.greatest());
    }
    return before.unit().normal(band.p5(), band.p50(), band.p95());
  }

  /** The sizes that are left when the least and the greatest are dropped that hardly count. */
  private static String sizes(Quantity quantity) {
    List<SizeChance> left = new ArrayList<>(quantity.chances());
    left.removeIf(size -> size.after() < UNLIKELY);
    String least = left.get(0).size();
    String greatest = left.get(left.size() - 1).size();
    return left.size() == 1 ? least : least + " .. " + greatest;
  }
}
