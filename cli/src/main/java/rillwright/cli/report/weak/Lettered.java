package rillwright.cli.report.weak;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.study.weak.WeakAnswer;
import rillwright.solver.study.diagnosis.inference.Explanation;

/**
 * A cause under its letter.
 *
 * @param rank how many are likelier
 * @param explanation the cause with what it explains
 */
public record Lettered(int rank, Explanation explanation) {

  /** Its letter. */
  public String letter() {
    return Letters.of(rank);
  }

  /**
   * The likeliest causes that say what is read, "none of these" passed over: it says that anything
   * may be.
   */
  public static List<Lettered> listNamed(WeakAnswer answer) {
    List<Lettered> named = new ArrayList<>();
    List<Explanation> causes = answer.diagnosis().causes();
    for (int rank = 0; rank < causes.size(); rank++) {
      if (!causes.get(rank).cause().isUnnamed()) {
        named.add(new Lettered(rank, causes.get(rank)));
      }
    }
    return named;
  }
}
