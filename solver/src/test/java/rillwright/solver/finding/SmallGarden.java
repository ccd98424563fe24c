package rillwright.solver.finding;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import rillwright.solver.building.LineParts;
import rillwright.solver.building.LineParts.Pipe;
import rillwright.solver.building.NetworkBuilder;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;
import rillwright.solver.law.weir.BrinkRule;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;

/**
 * An invented pond, skimmer, chamber, pump and fall of which nothing is found; each test spoils one
 * thing.
 */
record SmallGarden(
    double levelM,
    double skimmerM,
    double crestM,
    double crestWidthM,
    double targetM3PerS,
    double pipeM,
    PumpCurve curve,
    List<Part> more,
    boolean checked) {
  static final double SILL_M = -0.15;

  static final SmallGarden QUIET =
      new SmallGarden(
          0, 0.4, 2, 0.75, 0.005, 0.08, curve(0, 6.7, 0.003, 5, 0.006, 2), List.of(), true);

  static PumpCurve curve(double... flowsAndHeads) {
    List<PumpPoint> sheet = new ArrayList<>();
    for (int i = 0; i < flowsAndHeads.length; i += 2) {
      sheet.add(new PumpPoint(flowsAndHeads[i], flowsAndHeads[i + 1]));
    }
    return new PumpCurve(sheet);
  }

  static PumpCurve curveOf(double powerW) {
    return new PumpCurve(
        List.of(
            new PumpPoint(0, 6.7, OptionalDouble.of(powerW)),
            new PumpPoint(0.003, 5, OptionalDouble.of(powerW)),
            new PumpPoint(0.006, 2, OptionalDouble.of(powerW))));
  }

  Network network() {
    LineParts supply = LineParts.in(Pipe.of(pipeM, 1.5e-6)).pump("P-180", curve);
    LineParts kept = checked ? supply.checkValve(2) : supply;
    LineParts whole = kept.run(12);
    for (Part part : more) {
      whole = whole.part(part);
    }
    return new NetworkBuilder()
        .basin("pond", levelM)
        .chamber("chamber", -1, -0.9)
        .fall(
            "fall", crestM, new PowerWeir(1.6, crestWidthM, BrinkRule.FREE_OVERFALL), targetM3PerS)
        .line("intake", "pond", "chamber", LineParts.of().skimmer(skimmerM, SILL_M))
        .line("supply", "chamber", "fall", whole)
        .build();
  }

  SmallGarden level(double newLevelM) {
    return new SmallGarden(
        newLevelM, skimmerM, crestM, crestWidthM, targetM3PerS, pipeM, curve, more, checked);
  }

  SmallGarden skimmer(double newWidthM) {
    return new SmallGarden(
        levelM, newWidthM, crestM, crestWidthM, targetM3PerS, pipeM, curve, more, checked);
  }

  SmallGarden crest(double newCrestM, double newWidthM) {
    return new SmallGarden(
        levelM, skimmerM, newCrestM, newWidthM, targetM3PerS, pipeM, curve, more, checked);
  }

  SmallGarden target(double newTargetM3PerS) {
    return new SmallGarden(
        levelM, skimmerM, crestM, crestWidthM, newTargetM3PerS, pipeM, curve, more, checked);
  }

  SmallGarden pipe(double newPipeM) {
    return new SmallGarden(
        levelM, skimmerM, crestM, crestWidthM, targetM3PerS, newPipeM, curve, more, checked);
  }

  SmallGarden pump(PumpCurve newCurve) {
    return new SmallGarden(
        levelM, skimmerM, crestM, crestWidthM, targetM3PerS, pipeM, newCurve, more, checked);
  }

  SmallGarden with(Part... parts) {
    return new SmallGarden(
        levelM, skimmerM, crestM, crestWidthM, targetM3PerS, pipeM, curve, List.of(parts), checked);
  }

  SmallGarden unchecked() {
    return new SmallGarden(
        levelM, skimmerM, crestM, crestWidthM, targetM3PerS, pipeM, curve, more, false);
  }
}
