package rillwright.cli.report.text.weak;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
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
import rillwright.solver.study.diagnosis.pair.PairExplanation;

/** What is usually done about each likely cause, and what to mind. */
final class Remedies {
  private static final double WORTH_TELLING = 0.03;

  private Remedies() {}

  static void print(WeakAnswer answer, PageBuilder page) {
    page.heading("REMEDIES");
    if (answer.diagnosis().readings().isEmpty() && answer.visit().signs().isEmpty()) {
      page.paragraph(
          "None yet: without a reading nothing tells the causes apart but how often they occur."
              + " Take the first readings of the list above, write them into the file and run this"
              + " again.");
      return;
    }
    Map<String, String> letters = new LinkedHashMap<>();
    Map<String, Set<CauseId>> places = new LinkedHashMap<>();
    BiConsumer<String, CauseId> add =
        (mark, id) -> {
          letters.merge(id.cause(), mark, (one, other) -> one + " " + other);
          places.computeIfAbsent(id.cause(), cause -> new LinkedHashSet<>()).add(id);
        };
    if (answer.diagnosis().pairsLead()) {
      List<PairExplanation> pairs = answer.diagnosis().pairs();
      for (int i = 0; i < pairs.size(); i++) {
        add.accept(Letters.ofPair(i), pairs.get(i).one().cause().id());
        add.accept(Letters.ofPair(i), pairs.get(i).other().cause().id());
      }
    } else {
      List<Explanation> causes = answer.diagnosis().causes();
      int group = answer.diagnosis().firstGroup().size();
      for (int i = 0; i < causes.size(); i++) {
        if (i < group || causes.get(i).probability() >= WORTH_TELLING) {
          add.accept(Letters.of(i), causes.get(i).cause().id());
        }
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
                  + (caution.isEmpty() ? "" : caution + " ")
                  + remedy(cause, places.get(cause), answer));
        });
  }

  private static String remedy(String cause, Set<CauseId> where, WeakAnswer answer) {
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
  private static String valves(Set<CauseId> where, WeakAnswer answer) {
    List<String> each = new ArrayList<>();
    for (CauseId id : where) {
      each.add(
          CausePlace.shortly(id)
              + ": "
              + ValveWords.setBack(ValveWords.of(id, answer.scope().job()), Shown.of(answer)));
    }
    return String.join("; ", each) + ". Mark the handle; it may have slipped on its stem.";
  }
}
