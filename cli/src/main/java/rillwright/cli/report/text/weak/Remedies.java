package rillwright.cli.report.text.weak;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.weak.CauseWords;
import rillwright.cli.report.weak.Letters;
import rillwright.cli.report.weak.TargetWords;
import rillwright.cli.study.weak.WeakAnswer;
import rillwright.solver.study.diagnosis.cause.kind.CauseTable;
import rillwright.solver.study.diagnosis.inference.Explanation;

/** What is usually done about each likely cause, and what to mind. */
final class Remedies {
  private static final double WORTH_TELLING = 0.03;

  private Remedies() {}

  static void print(WeakAnswer answer, PageBuilder page) {
    page.heading("REMEDIES");
    Map<String, String> letters = new LinkedHashMap<>();
    List<Explanation> causes = answer.diagnosis().causes();
    int group = answer.diagnosis().firstGroup().size();
    for (int i = 0; i < causes.size(); i++) {
      if (i < group || causes.get(i).probability() >= WORTH_TELLING) {
        String mark = Letters.of(i);
        letters.merge(causes.get(i).cause().id().cause(), mark, (one, other) -> one + " " + other);
      }
    }
    letters.forEach(
        (cause, mark) -> {
          String caution = CauseWords.of(cause).caution().sentence(answer.isPumped());
          page.marked(
              "- ",
              mark
                  + ", "
                  + cause
                  + ": "
                  + remedy(cause, answer)
                  + (caution.isEmpty() ? "" : " " + caution));
        });
  }

  private static String remedy(String cause, WeakAnswer answer) {
    return switch (cause) {
      case CauseTable.NOTHING_WRONG -> TargetWords.of(answer.scope().job());
      case CauseTable.NONE_OF_THESE ->
          LeastFitting.readAgain(answer) + ", and think of two faults at once.";
      default -> CauseWords.of(cause).remedy();
    };
  }
}
