package rillwright.cli.report.text.weak;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.weak.CausePlace;
import rillwright.cli.report.weak.CauseWords;
import rillwright.cli.report.weak.Letters;
import rillwright.cli.report.weak.TargetWords;
import rillwright.cli.report.weak.ValveWords;
import rillwright.cli.study.weak.WeakAnswer;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.cause.kind.CauseTable;
import rillwright.solver.study.diagnosis.inference.Explanation;

/** What is usually done about each likely cause, and what to mind. */
final class Remedies {
  private static final double WORTH_TELLING = 0.03;

  private Remedies() {}

  static void print(WeakAnswer answer, PageBuilder page) {
    page.heading("REMEDIES");
    Map<String, String> letters = new LinkedHashMap<>();
    Map<String, List<Explanation>> explained = new LinkedHashMap<>();
    List<Explanation> causes = answer.diagnosis().causes();
    int group = answer.diagnosis().firstGroup().size();
    for (int i = 0; i < causes.size(); i++) {
      if (i < group || causes.get(i).probability() >= WORTH_TELLING) {
        String mark = Letters.of(i);
        explained
            .computeIfAbsent(causes.get(i).cause().id().cause(), cause -> new ArrayList<>())
            .add(causes.get(i));
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
                  + remedy(cause, explained.get(cause), answer)
                  + (caution.isEmpty() ? "" : " " + caution));
        });
  }

  private static String remedy(String cause, List<Explanation> where, WeakAnswer answer) {
    if (CauseWords.of(cause) == CauseWords.VALVE_MOVED) {
      return valves(where, answer);
    }
    return switch (cause) {
      case CauseTable.NOTHING_WRONG -> TargetWords.of(answer.scope().job());
      case CauseTable.NONE_OF_THESE ->
          LeastFitting.readAgain(answer) + ", and think of two faults at once.";
      default -> CauseWords.of(cause).remedy();
    };
  }

  /** "\"upper\", part 2: set it back to 50° from open. Then mark ..." */
  private static String valves(List<Explanation> where, WeakAnswer answer) {
    List<String> each = new ArrayList<>();
    for (Explanation one : where) {
      CauseId id = one.cause().id();
      each.add(
          CausePlace.shortly(id)
              + ": "
              + ValveWords.setBack(ValveWords.of(id, answer.scope().job()), Shown.of(answer)));
    }
    return String.join("; ", each) + ". Mark the handle; it may have slipped on its stem.";
  }
}
