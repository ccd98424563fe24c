package rillwright.cli.report.mend;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.mend.MendAnswer;
import rillwright.cli.study.mend.bound.Bound;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.change.Work;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.trial.Remedy;
import rillwright.solver.network.Point;
import rillwright.solver.study.valvesetting.ValvePlace;

/** What to do first, in a line; and what need not be tried. */
public final class FirstWords {
  /** More falls than this are shown by the least and the greatest share. */
  private static final int FEW_FALLS = 3;

  private FirstWords() {}

  /** What, what it brings and what it costs; empty where nothing is in need. */
  public static Optional<String> of(MendAnswer answer) {
    ShownUnits units = Shown.of(answer);
    if (answer.needs().isEmpty()) {
      return Optional.empty();
    }
    String first =
        answer.mendingAll().stream()
            .findFirst()
            .map(remedy -> shown(remedy, answer, units))
            .or(() -> pump(answer, units))
            .orElse("\"rillwright mend\" lists what would help.");
    return Optional.of("Remedy: " + first);
  }

  private static String shown(Remedy remedy, MendAnswer answer, ShownUnits units) {
    OptionalDouble price = remedy.candidate().price();
    String falls = falls(remedy, units);
    return RemedyWords.of(remedy.candidate(), answer.state().network(), units)
        + (falls.isEmpty() ? ". " : ". Computed: " + falls + " of target. ")
        + (price.isEmpty()
            ? unpriced(remedy.candidate(), answer, units)
            : price.getAsDouble() == 0
                ? "It costs nothing."
                : "It costs " + money(price.getAsDouble(), answer, units) + ".")
        + (RoomWords.areSaid(answer) ? RoomWords.sentences(remedy.rooms(), units) : "")
        + orAnother(remedy.candidate(), answer, units)
        + withTheFillOff(answer, units);
  }

  /** Where it takes a pump: what any other has to make. */
  private static String orAnother(Candidate candidate, MendAnswer answer, ShownUnits units) {
    return candidate.steps().stream().noneMatch(step -> step.action().work() == Work.PUMP)
        ? ""
        : duty(answer, units)
            .map(
                duty ->
                    answer.needs().stream()
                            .allMatch(it -> it.isOfTarget() || it.condition().isPresent())
                        ? " Or take a pump that makes " + duty + "."
                        : " For the targets alone, another pump has to make " + duty + ".")
            .orElse("");
  }

  /** What does where only a pond is left that runs over at a stop: that has a cure for nothing. */
  private static String withTheFillOff(MendAnswer answer, ShownUnits units) {
    String off =
        " A pond that is topped up only with the pump off does not run over at a stop; then ";
    return answer.needs().stream().allMatch(Need::runsOverAtStop)
        ? off + "no other need is left." + RoomWords.sentences(answer.rooms(), units)
        : answer.mendingSome().stream()
            .filter(it -> it.leaves().stream().allMatch(Need::runsOverAtStop))
            .findFirst()
            .map(
                it ->
                    off
                        + "there is less to change: "
                        + RemedyWords.within(it.candidate(), answer.state().network(), units)
                        + "."
                        + RoomWords.sentences(it.rooms(), units))
            .orElse("");
  }

  private static Optional<String> duty(MendAnswer answer, ShownUnits units) {
    return answer
        .duty()
        .flatMap(duty -> duty.duty().throttled())
        .map(
            duty ->
                units.flow(duty.flowM3PerS()) + " at " + units.head(duty.headM()) + with(answer));
  }

  /** Under which settings a duty is. */
  public static String with(MendAnswer answer) {
    return hardest(answer)
        + (isOpened(answer) ? " with the adjustable valves wide open" : "")
        + (answer.falls().size() > 1 ? ", then the other falls throttled to their targets" : "")
        + (answer.falls().size() > 1 && answer.conditions().isPresent()
            ? ", in each condition anew (by one setting for all a fall may get too much)"
            : "")
        + (answer.job().streams()
            ? ", at the levels as written (more once the stream has filled and the pond is lower)"
            : "");
  }

  private static String hardest(MendAnswer answer) {
    return answer.conditions().isPresent() ? ", as the hardest condition asks," : "";
  }

  private static boolean isOpened(MendAnswer answer) {
    return !ValvePlace.listAdjustable(answer.state().network()).isEmpty();
  }

  private static String unpriced(Candidate candidate, MendAnswer answer, ShownUnits units) {
    return candidate.knownPrice() > 0
        ? "It costs "
            + money(candidate.knownPrice(), answer, units)
            + " plus what has no price in the file."
        : "Its price is not in the file.";
  }

  private static String money(double amount, MendAnswer answer, ShownUnits units) {
    return units.amount(amount) + answer.currency().map(word -> " " + word).orElse("");
  }

  private static String falls(Remedy remedy, ShownUnits units) {
    List<Point> falls =
        remedy.state().network().waysOut().stream()
            .filter(point -> point.targetM3PerS().orElse(0) > 0)
            .toList();
    return falls.size() > FEW_FALLS
        ? "every fall at least "
            + units.share(falls.stream().mapToDouble(it -> share(it, remedy)).min().orElse(0))
        : falls.stream()
            .map(it -> "\"" + it.name().value() + "\" " + units.share(share(it, remedy)))
            .collect(Collectors.joining(", "));
  }

  private static double share(Point fall, Remedy remedy) {
    return remedy.state().point(fall.name()).outflowM3PerS()
        / fall.targetM3PerS().orElse(Double.NaN);
  }

  private static Optional<String> pump(MendAnswer answer, ShownUnits units) {
    return duty(answer, units)
        .map(
            duty ->
                "A pump that makes "
                    + duty
                    + " would meet the targets; \"rillwright mend\" tries other changes, and the"
                    + " pumps of a folder.");
  }

  /** What is not enough alone, for each fall that lacks water. */
  public static List<String> alsoOf(MendAnswer answer) {
    List<String> also = new ArrayList<>();
    for (Bound bound : answer.bounds()) {
      for (Need need : answer.needs()) {
        if (need.isUnder()
            && bound.fallsM3PerS().getOrDefault(need.point(), Double.POSITIVE_INFINITY)
                < need.targetM3PerS().orElse(0)) {
          also.add(BoundWords.of(bound, need, Shown.of(answer)));
        }
      }
    }
    answer.unbounded().forEach(fall -> also.add(BoundWords.without("\"" + fall.value() + "\"")));
    return also;
  }
}
