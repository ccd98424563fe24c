package rillwright.cli.report.text.asbuilt;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.file.field.Uncertain;
import rillwright.cli.file.quantity.Quantity.Even;
import rillwright.cli.study.asbuilt.AsbuiltAnswer;
import rillwright.cli.study.asbuilt.AsbuiltAnswer.Quantity;
import rillwright.cli.study.asbuilt.AsbuiltAnswer.SizeChance;
import rillwright.solver.study.uncertainty.posterior.Posterior.Band;

/** What was learnt as changes of the file, in place of what was not known. */
public final class LearntChanges {
  /** A size that is less likely than this is dropped. */
  private static final double UNLIKELY = 0.025;

  private LearntChanges() {}

  /**
   * Each learnt quantity in the unit in which it is written: normal about its median, or where that
   * would leave the range that the file gives, a narrower range.
   */
  public static List<String> of(AsbuiltAnswer answer) {
    return answer.quantities().stream()
        .filter(Quantity::isLearnt)
        .map(quantity -> quantity.named().address() + "=" + written(quantity))
        .toList();
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
