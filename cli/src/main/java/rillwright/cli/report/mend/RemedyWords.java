package rillwright.cli.report.mend;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import rillwright.cli.report.HandleWords;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.mend.change.Action;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.change.Step;
import rillwright.solver.network.Basin;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Fitting;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Valve;
import rillwright.solver.stream.Freeboard;

/** What is to be done, in a sentence. */
public final class RemedyWords {
  private RemedyWords() {}

  /** The sentence, without its full stop. */
  public static String of(Candidate candidate, Network network, ShownUnits units) {
    String words = within(candidate, network, units);
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  /**
   * The same inside a sentence.
   *
   * @param network as it stands: what is there before
   */
  static String within(Candidate candidate, Network network, ShownUnits units) {
    Map<Step, String> parts = new LinkedHashMap<>();
    for (Step step : candidate.steps()) {
      Optional<Step> begun =
          parts.keySet().stream().filter(before -> isContinued(before, step)).findFirst();
      if (begun.isPresent()) {
        parts.merge(begun.get(), continued(step, units), String::concat);
      } else {
        parts.put(step, of(step, network, units) + byHowMuch(step, network, units));
      }
    }
    List<String> words = List.copyOf(parts.values());
    return words.size() < 3
        ? String.join(" and ", words)
        : words.stream().limit(words.size() - 1).collect(Collectors.joining(", "))
            + " and "
            + words.get(words.size() - 1);
  }

  private static boolean isContinued(Step before, Step step) {
    return before.at().equals(step.at())
        && ((before.action() == Action.ADD_VALVE && step.action() == Action.TURN_VALVE)
            || (before.action() == Action.OTHER_PUMP && step.action() == Action.SPEED));
  }

  private static String continued(Step step, ShownUnits units) {
    return step.action() == Action.SPEED
        ? " at " + units.share(step.figure()) + " speed"
        : " set to " + setting(step, units);
  }

  private static String of(Step step, Network network, ShownUnits units) {
    String at = "\"" + step.at() + "\"";
    return switch (step.action()) {
      case TURN_VALVE, OPEN_VALVE ->
          "set the " + step.part() + " of " + at + " to " + setting(step, units);
      case THROTTLE -> "set the " + step.part() + " of " + at + " like " + setting(step, units);
      case ADD_VALVE -> "put a " + step.name() + " valve in " + at;
      case CLEAN -> "clean the " + step.part() + " of " + at;
      case LARGER_VALVE ->
          "replace the " + step.part() + " of " + at + " by one as wide as its pipe";
      case FREER_FITTING ->
          "replace the "
              + (step.figure() > 1 ? units.number(step.figure()) + " × " : "")
              + step.part()
              + " of "
              + at
              + " by "
              + step.name();
      case SPEED -> "run the pump of " + at + " at " + units.share(step.figure()) + " speed";
      case MORE_PARALLEL -> together(step, units) + " in parallel";
      case MORE_IN_SERIES -> together(step, units) + " in series";
      case OTHER_PUMP -> "take pump " + step.name() + " for " + at;
      case WIDER_MOUTH -> "take a skimmer mouth of " + units.width(step.figure()) + " in " + at;
      case LOWER_SILL -> "set the skimmer's sill of " + at + " to " + units.level(step.figure());
      case ONE_MORE_SKIMMER -> "put one more skimmer like that of " + at + " beside it";
      case DEEPER_INTAKE ->
          "set the pump's intake in "
              + at
              + " deeper, to draw no air down to "
              + units.level(step.figure());
      case OTHER_CREST -> "set the crest of " + at + " to " + units.level(step.figure());
      case OTHER_WIDTH -> "make the crest of " + at + " " + units.width(step.figure()) + " wide";
      case FULLER -> "keep " + at + " filled to " + units.level(step.figure());
      case HIGHER_OVERFLOW -> "raise the overflow of " + at + " to " + units.level(step.figure());
      case LARGER_POND ->
          "make "
              + at
              + " "
              + units.share(step.figure() - 1)
              + " larger"
              + (step.name().isEmpty() ? "" : ", " + step.name());
      case PIPE -> "lay " + step.name() + " pipe" + inItsSize(step, network) + " in " + at;
      case SECOND_LINE -> "lay a second pipe beside that of " + at;
    };
  }

  /** What stands in a pipe is of its size. */
  private static String inItsSize(Step step, Network network) {
    Line line = network.line(new LineName(step.at()));
    boolean valves = stands(line, Valve.class) || stands(line, CheckValve.class);
    boolean fittings = stands(line, Fitting.class);
    return valves
        ? fittings ? ", valves and fittings" : " and valves"
        : fittings ? " and fittings" : "";
  }

  private static boolean stands(Line line, Class<? extends Part> kind) {
    return line.placed(kind).stream().anyMatch(it -> it.part().bore().equals(line.pipeBore()));
  }

  /** How much more or less a size becomes; nothing of what has no size. */
  private static String byHowMuch(Step step, Network network, ShownUnits units) {
    OptionalDouble before = before(step, network);
    if (before.isEmpty()) {
      return "";
    }
    double more = step.figure() - before.getAsDouble();
    boolean isWidth = step.action() == Action.WIDER_MOUTH || step.action() == Action.OTHER_WIDTH;
    String word = isWidth ? (more > 0 ? " wider" : " narrower") : (more > 0 ? " higher" : " lower");
    return " (" + units.width(Math.abs(more)) + word + along(step, network, units) + ")";
  }

  /** What goes with it, or must be there for it. */
  private static String along(Step step, Network network, ShownUnits units) {
    boolean isMore = step.set().size() > 1;
    return switch (step.action()) {
      case OTHER_WIDTH -> ", its target less in proportion";
      case LOWER_SILL -> isMore ? ", the top of its mouth as it is" : "";
      case HIGHER_OVERFLOW ->
          (isMore ? ", the top of the skimmer's mouth with it" : "") + bank(step, network, units);
      default -> "";
    };
  }

  /** How high the bank must stand where the file does not say how high it is. */
  private static String bank(Step step, Network network, ShownUnits units) {
    Basin basin = (Basin) network.point(new PointName(step.at()));
    return Double.isInfinite(Freeboard.highestOverflowM(basin))
        ? "; the bank must stand " + units.depth(Freeboard.OVERFLOW_BELOW_EDGE_M) + " above it"
        : "";
  }

  private static OptionalDouble before(Step step, Network network) {
    Optional<Skimmer> skimmer =
        network.findLine(new LineName(step.at())).stream()
            .flatMap(line -> line.placed(Skimmer.class).stream())
            .map(Placed::part)
            .findFirst();
    Optional<Point> point = network.findPoint(new PointName(step.at()));
    Optional<Basin> basin = point.filter(Basin.class::isInstance).map(Basin.class::cast);
    Optional<Fall> fall = point.filter(Fall.class::isInstance).map(Fall.class::cast);
    return switch (step.action()) {
      case WIDER_MOUTH -> of(skimmer.map(Skimmer::widthM));
      case LOWER_SILL -> of(skimmer.map(Skimmer::sillM));
      case OTHER_CREST -> of(fall.map(Fall::crestM));
      case OTHER_WIDTH -> fall.map(Fall::widthM).orElse(OptionalDouble.empty());
      case FULLER -> of(basin.map(Basin::levelM));
      case DEEPER_INTAKE -> basin.map(Basin::leastLevelM).orElse(OptionalDouble.empty());
      case HIGHER_OVERFLOW -> basin.map(Basin::overflowM).orElse(OptionalDouble.empty());
      default -> OptionalDouble.empty();
    };
  }

  private static OptionalDouble of(Optional<Double> value) {
    return value.stream().mapToDouble(Double::doubleValue).findFirst();
  }

  private static String together(Step step, ShownUnits units) {
    return "run "
        + units.number(step.figure())
        + " of "
        + step.part()
        + " in \""
        + step.at()
        + "\"";
  }

  private static String setting(Step step, ShownUnits units) {
    return switch (step.action()) {
      case TURN_VALVE -> HandleWords.at(step.figure());
      case OPEN_VALVE -> units.share(step.figure()) + " open";
      default -> {
        String like = HandleWords.ofBallValve(step.figure());
        yield like
            + " (K "
            + units.number(step.figure())
            + (like.endsWith("or more") ? "; turn it until the flow is right)" : ")");
      }
    };
  }
}
