package rillwright.cli.report.choice;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rillwright.cli.file.condition.Condition;
import rillwright.cli.report.units.ShownUnits;
import rillwright.curves.wording.PlainText;
import rillwright.solver.trial.ConditionTrial;
import rillwright.solver.trial.Demand;
import rillwright.solver.trial.PumpTrial;
import rillwright.solver.trial.RatedTrial;
import rillwright.solver.trial.Verdict.Kind;

/**
 * The verdict that counts for a pump: that on the project as it stands or, where conditions judge
 * it, that in the worst of them, which is named.
 */
public final class JudgedWords {
  /** Verdicts that read the same in all conditions where their kind is the same. */
  private static final Set<Kind> ALIKE =
      Set.of(Kind.CANNOT_START, Kind.CANNOT_LIFT, Kind.NOT_NEEDED);

  private static final Set<Kind> WHOLE = Set.of(Kind.MEETS_TARGET, Kind.THROTTLED);

  private static final Set<Kind> ACCEPTED = Set.of(Kind.JUST_SHORT, Kind.THROTTLED_JUST_SHORT);

  /** Where it is so in all of them. */
  static final String EVERYWHERE = " in every condition tried";

  private final VerdictWords words;
  private final Optional<PumpTrial> trial;
  private final Optional<ConditionTrial> worst;
  private final boolean everywhere;

  /**
   * Words about a pump.
   *
   * @param demand of the project as it stands
   */
  public JudgedWords(ShownUnits units, Demand demand, RatedTrial rated) {
    this.worst = rated.worst();
    Set<Optional<Kind>> kinds =
        rated.conditions().stream().map(JudgedWords::kind).collect(Collectors.toSet());
    this.everywhere =
        kinds.stream().allMatch(kind -> kind.filter(WHOLE::contains).isPresent())
            || (kinds.size() == 1
                && kinds.stream().allMatch(kind -> kind.filter(ALIKE::contains).isPresent()));
    this.words = new VerdictWords(units, worst.map(ConditionTrial::demand).orElse(demand));
    this.trial = worst.isPresent() ? worst.get().trial() : Optional.of(rated.trial());
  }

  private static Optional<Kind> kind(ConditionTrial tried) {
    return tried.trial().map(trial -> trial.verdict().kind());
  }

  /** Whether it counts as met although some fall gets a little less than its target. */
  public boolean accepts() {
    return trial.map(it -> it.verdict().kind()).filter(ACCEPTED::contains).isPresent();
  }

  /** A few words for a cell of a table. */
  public String brief() {
    return trial.map(words::brief).orElse("no balance") + where();
  }

  /** The whole verdict, without a full stop; over several conditions without figures of one. */
  public String full() {
    boolean ofOne = worst.isEmpty() || !everywhere;
    return trial.map(ofOne ? words::full : words::brief).orElse("no balance") + where();
  }

  /** The verdict as a code. */
  public String code() {
    return VerdictCode.ofPump(trial);
  }

  private String where() {
    return worst
        .map(it -> everywhere ? EVERYWHERE : in(it.condition(), it.meetsTargets() && !accepts()))
        .orElse("");
  }

  /** Which condition gave a verdict: {@code , lowest in "autumn"}. */
  static String in(String condition, boolean meetsTargets) {
    return (meetsTargets ? ", lowest " : " ") + in(condition);
  }

  /** {@code in "autumn"}, {@code as written}. */
  public static String in(String condition) {
    return condition.equals(Condition.AS_WRITTEN.name())
        ? condition
        : "in " + PlainText.quoted(condition);
  }

  /** What would have to change for a pump that does not do it: a sentence. */
  public String change() {
    return trial
        .map(words::change)
        .orElse(
            "Nothing can flow then: run \"rillwright solve\" in that condition for the reason.");
  }
}
