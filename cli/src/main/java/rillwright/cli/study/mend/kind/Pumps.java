package rillwright.cli.study.mend.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import rillwright.cli.file.Project;
import rillwright.cli.study.mend.change.Action;
import rillwright.cli.study.mend.change.Addresses;
import rillwright.cli.study.mend.change.Bought;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.change.Offered;
import rillwright.cli.study.mend.change.Source;
import rillwright.cli.study.mend.change.Step;
import rillwright.cli.study.mend.site.Site;
import rillwright.curves.sheet.DataSheet;
import rillwright.curves.sheet.fact.SpeedRange;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Pump;
import rillwright.solver.pumping.PumpPlace;

/**
 * The pumps on the way to what is in need: another speed, one more, another pump.
 *
 * @param offered pumps of a supplier beside those that the file names
 */
public record Pumps(Offered offered) implements Source {
  /** Slower than this few pumps can be run, percent; common practice, no source. */
  public static final int SLOWEST_PERCENT = 40;

  private static final int FULL_PERCENT = 100;

  @Override
  public List<List<Candidate>> candidates(Site site) {
    List<List<Candidate>> all = new ArrayList<>();
    for (Line line : site.lines()) {
      for (Placed<Pump> placed : line.placed(Pump.class)) {
        if (placed.part().set().speed() > 0) {
          speed(site, placed).ifPresent(step -> all.add(List.of(Candidate.of(step))));
          oneMore(site, placed).forEach(step -> all.add(List.of(Candidate.of(step))));
          others(site, placed, all);
        }
      }
    }
    return all;
  }

  /** How fast it may run, where its sheet says that. */
  public static Optional<SpeedRange> range(Project project, Pump pump) {
    return project.findSheet(pump.model()).flatMap(sheet -> sheet.facts().variableSpeed());
  }

  /**
   * The least speed, whole percent, at which all falls get their target; the greatest if none does.
   * Empty where neither its sheet nor the file says that it can be set.
   */
  public static Optional<Step> speed(Site site, Placed<Pump> placed) {
    Optional<SpeedRange> range = range(site.project(), placed.part());
    double now = placed.part().set().speed();
    if ((range.isEmpty() && now == 1) || site.targets().isEmpty()) {
      return Optional.empty();
    }
    int slowest = range.map(it -> percent(it.least())).orElse(SLOWEST_PERCENT);
    int fastest =
        Math.max(range.map(it -> percent(it.greatest())).orElse(FULL_PERCENT), percent(now));
    OptionalInt least =
        LeastSteps.find(
            slowest, fastest, speed -> site.isEnough(at(site, placed, (double) speed / 100)));
    int speed = least.orElse(fastest);
    if (Math.abs(speed - FULL_PERCENT * now) < 1) {
      return Optional.empty();
    }
    return Optional.of(
        new Step(
            Action.SPEED,
            placed.line().name().value(),
            placed.part().label(),
            (double) speed / FULL_PERCENT,
            "",
            List.of(ofSpeed(placed, speed)),
            Step.NOTHING));
  }

  /** Some changes with each pump whose sheet gives a range at the least speed that is enough. */
  public static List<Candidate> slower(Site site, Candidate candidate, Project changed) {
    List<Candidate> slower = new ArrayList<>();
    for (Site with : site.balancedWith(changed).stream().toList()) {
      for (Placed<Pump> placed : with.network().placed(Pump.class)) {
        if (range(changed, placed.part()).isPresent()) {
          speed(with, placed).ifPresent(step -> slower.add(candidate.and(Candidate.of(step))));
        }
      }
    }
    return slower;
  }

  private static String ofSpeed(Placed<Pump> placed, int percent) {
    return Addresses.ofPart(placed, "speed", percent + " %");
  }

  private static int percent(double speed) {
    return (int) Math.rint(FULL_PERCENT * speed);
  }

  private static Network at(Site site, Placed<Pump> placed, double speed) {
    return site.network()
        .withPart(placed.line().name(), placed.index(), placed.part().atSpeed(speed));
  }

  /** One more of a pump beside those that run: in parallel and, if it may stand so, in series. */
  public static List<Step> oneMore(Site site, Placed<Pump> placed) {
    boolean isSubmersible =
        site.project()
            .findSheet(placed.part().model())
            .filter(sheet -> sheet.facts().isSubmersible())
            .isPresent();
    return Stream.of(PumpSet.Arrangement.values())
        .filter(it -> it == PumpSet.Arrangement.PARALLEL || !isSubmersible)
        .map(arrangement -> oneMore(site, placed, arrangement))
        .toList();
  }

  private static Step oneMore(Site site, Placed<Pump> placed, PumpSet.Arrangement arrangement) {
    boolean parallel = arrangement == PumpSet.Arrangement.PARALLEL;
    int count = placed.part().set().count() + 1;
    Optional<DataSheet> sheet = site.project().findSheet(placed.part().model());
    return new Step(
        parallel ? Action.MORE_PARALLEL : Action.MORE_IN_SERIES,
        placed.line().name().value(),
        placed.part().label(),
        count,
        "",
        List.of(
            Addresses.ofPart(placed, "count", Integer.toString(count)),
            Addresses.ofPart(placed, "arranged", parallel ? "parallel" : "series")),
        sheet.map(it -> Bought.pump(it, site.project())).orElse(OptionalDouble.empty()));
  }

  private void others(Site site, Placed<Pump> placed, List<List<Candidate>> all) {
    for (Step other : others(site, placed)) {
      all.add(List.of(Candidate.of(other)));
      set(site, placed, other, all);
    }
  }

  /** The other pumps that may take the place of one. */
  public List<Step> others(Site site, Placed<Pump> placed) {
    String now = placed.part().model();
    List<Step> others = new ArrayList<>();
    for (Map.Entry<String, DataSheet> known : site.project().sheets().entrySet()) {
      if (!known.getKey().equals(now)) {
        others.add(other(site, placed, known.getKey(), known.getValue(), List.of()));
      }
    }
    for (Map.Entry<String, DataSheet> sheet : offered.sheets().entrySet()) {
      if (!site.project().sheets().containsKey(sheet.getKey())) {
        String path = offered.pathOf(sheet.getKey());
        List<String> named = List.of(Addresses.ofSheet(sheet.getKey(), path));
        others.add(other(site, placed, sheet.getKey(), sheet.getValue(), named));
      }
    }
    return others;
  }

  /**
   * What puts one pump of a model in the place of another, or of one to be chosen: its speed and
   * number too, where those of the other would stay.
   */
  public static List<String> instead(
      Network network, PumpPlace place, String model, long speedPercent) {
    Line line = network.line(place.line());
    Placed<Part> placed =
        new Placed<>(line, place.partIndex(), line.parts().get(place.partIndex()));
    Optional<PumpSet> old =
        Optional.of(placed.part()).filter(Pump.class::isInstance).map(part -> ((Pump) part).set());
    List<String> set = new ArrayList<>(List.of(Addresses.ofPart(placed, "model", model)));
    if (speedPercent != FULL_PERCENT || old.stream().anyMatch(it -> it.speed() != 1)) {
      set.add(Addresses.ofPart(placed, "speed", speedPercent + " %"));
    }
    if (old.stream().anyMatch(it -> it.count() != 1)) {
      set.add(Addresses.ofPart(placed, "count", "1"));
    }
    return set;
  }

  private static Step other(
      Site site, Placed<Pump> placed, String model, DataSheet sheet, List<String> named) {
    List<String> set = new ArrayList<>(named);
    PumpPlace place = new PumpPlace(placed.line().name(), placed.index());
    set.addAll(instead(site.network(), place, model, FULL_PERCENT));
    return new Step(
        Action.OTHER_PUMP,
        placed.line().name().value(),
        placed.part().label(),
        0,
        model,
        set,
        Bought.pump(sheet, site.project()));
  }

  /** At its least sufficient speed, and with all valves set for it. */
  private static void set(Site site, Placed<Pump> placed, Step other, List<List<Candidate>> all) {
    Optional<Site> changed = site.changed(other.set()).flatMap(site::balancedWith);
    if (changed.isEmpty()) {
      return;
    }
    Site with = changed.get();
    Placed<Pump> there = at(placed, with);
    if (range(with.project(), there.part()).isPresent()) {
      speed(with, there)
          .ifPresent(slower -> all.add(List.of(new Candidate(List.of(other, slower)))));
    }
    if (with.isEnough(with.state()) || site.targets().falls().size() > 1) {
      Valves.all(site, with.network(), List.of(other)).ifPresent(all::add);
    }
  }

  /** The pump that stands in a place in a changed project. */
  public static Placed<Pump> at(Placed<Pump> place, Site with) {
    return with.network().line(place.line().name()).placed(Pump.class).stream()
        .filter(pump -> pump.index() == place.index())
        .findFirst()
        .orElseThrow();
  }
}
