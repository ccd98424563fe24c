package rillwright.cli.study.mend.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import rillwright.cli.file.Show;
import rillwright.cli.study.mend.change.Action;
import rillwright.cli.study.mend.change.Addresses;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.change.Source;
import rillwright.cli.study.mend.change.Step;
import rillwright.cli.study.mend.site.Need;
import rillwright.cli.study.mend.site.Site;
import rillwright.curves.unit.Unit;
import rillwright.solver.network.Network;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Skimmer;

/** A wider mouth or a lower sill where a chamber runs short of water. */
public final class Skimmers implements Source {
  private static final int MOST_STEPS = 36;

  @Override
  public List<List<Candidate>> candidates(Site site) {
    List<List<Candidate>> all = new ArrayList<>();
    if (!site.has(Need.STARVED)) {
      return all;
    }
    Unit unit = site.project().show() == Show.METRIC ? Unit.MILLIMETRE : Unit.INCH;
    double width = unit == Unit.INCH ? 1 : 20;
    double depth = unit == Unit.INCH ? 0.5 : 10;
    for (Placed<Skimmer> placed : site.network().placed(Skimmer.class)) {
      Skimmer now = placed.part();
      add(
          all,
          site,
          placed,
          Action.WIDER_MOUTH,
          "width",
          unit,
          steps -> rounded(unit.fromSi(now.widthM()) + steps * width));
      add(
          all,
          site,
          placed,
          Action.LOWER_SILL,
          "sill",
          unit,
          steps -> rounded(unit.fromSi(now.sillM()) - steps * depth));
    }
    return all;
  }

  private static double rounded(double value) {
    return Math.rint(10 * value) / 10;
  }

  private static void add(
      List<List<Candidate>> all,
      Site site,
      Placed<Skimmer> placed,
      Action action,
      String field,
      Unit unit,
      IntFunction<Double> sizeAt) {
    OptionalInt least =
        LeastSteps.find(
            1,
            MOST_STEPS,
            steps ->
                Site.balanced(changed(site, placed, action, unit.toSi(sizeAt.apply(steps))))
                    .filter(state -> !state.starves())
                    .isPresent());
    double size = sizeAt.apply(least.orElse(MOST_STEPS));
    String written = String.format(Locale.ROOT, "%.1f %s", size, unit.symbol());
    all.add(
        List.of(
            Candidate.of(
                new Step(
                    action,
                    placed.line().name().value(),
                    "",
                    unit.toSi(size),
                    "",
                    List.of(Addresses.ofPart(placed, field, written)),
                    OptionalDouble.empty()))));
  }

  private static Network changed(Site site, Placed<Skimmer> placed, Action action, double sizeM) {
    Skimmer now = placed.part();
    boolean wider = action == Action.WIDER_MOUTH;
    return site.network()
        .withPart(
            placed.line().name(),
            placed.index(),
            new Skimmer(
                wider ? sizeM : now.widthM(),
                now.heightM(),
                wider ? now.sillM() : sizeM,
                now.dischargeCoefficient(),
                now.clogged()));
  }
}
