package rillwright.cli.report.text.check;

import java.util.Map;
import java.util.function.BiFunction;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.network.Friction;
import rillwright.solver.network.Part;
import rillwright.solver.network.Run;

/** A pipe's bore and wall in a few words: " (bore 2.049 in, roughness 0.05 mm)". */
final class FrictionWords {
  private static final double MILLIMETRES_PER_METRE = 1000;

  private static final Map<Class<? extends Friction>, BiFunction<Friction, ShownUnits, String>>
      BY_KIND =
          Map.of(
              Friction.Roughness.class,
              (wall, units) -> roughness((Friction.Roughness) wall, units),
              Friction.HazenC.class,
              (wall, units) -> "Hazen C " + units.number(((Friction.HazenC) wall).c()),
              Friction.DarcyFactor.class,
              (wall, units) ->
                  "friction factor "
                      + units.number(((Friction.DarcyFactor) wall).darcyFrictionFactor()));

  private FrictionWords() {}

  /** The words for a run; nothing for other parts. */
  static String of(Part part, ShownUnits units) {
    if (!(part instanceof Run run)) {
      return "";
    }
    String wall = BY_KIND.get(run.friction().getClass()).apply(run.friction(), units);
    String bore = units.bore(run.inside().diameterM());
    return run.label().equals(bore + " bore")
        ? " (" + wall + ")"
        : " (bore " + bore + ", " + wall + ")";
  }

  private static String roughness(Friction.Roughness wall, ShownUnits units) {
    return wall.roughnessM() == 0
        ? "smooth"
        : "roughness " + units.fine(wall.roughnessM() * MILLIMETRES_PER_METRE) + " mm";
  }
}
