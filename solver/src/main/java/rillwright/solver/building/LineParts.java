package rillwright.solver.building;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.Bore;
import rillwright.solver.law.minor.ValveTravel;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpSet;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Fitting;
import rillwright.solver.network.Friction;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.Part;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Valve;

/**
 * The parts of a line in the order the water meets them; each question answers with one part more.
 *
 * @param pipe the pipe that they stand in
 * @param parts so far; copied
 */
public record LineParts(Optional<Pipe> pipe, List<Part> parts) {

  /**
   * A pipe.
   *
   * @param bore its inside
   * @param friction its wall
   * @param label what it is, for a person: "2 in flexible PVC"
   */
  public record Pipe(Bore bore, Friction friction, String label) {
    public Pipe {
      Require.given("bore of a pipe", bore);
      Require.given("friction of a pipe", friction);
      Require.given("label of a pipe", label);
    }

    /** By inside diameter and absolute roughness, m. */
    public static Pipe of(double insideM, double roughnessM) {
      return new Pipe(new Bore(insideM), new Friction.Roughness(roughnessM), "pipe");
    }
  }

  public LineParts {
    Require.given("pipe of a line", pipe);
    parts = Require.all("parts of a line", parts);
  }

  /** No part yet, in a pipe. */
  public static LineParts in(Pipe pipe) {
    return new LineParts(Optional.of(pipe), List.of());
  }

  /** These parts, in no pipe of the line's own. */
  public static LineParts of(Part... parts) {
    return new LineParts(Optional.empty(), List.of(parts));
  }

  /** Any part. */
  public LineParts part(Part part) {
    List<Part> more = new ArrayList<>(parts);
    more.add(part);
    return new LineParts(pipe, more);
  }

  /** A length of the pipe, m. */
  public LineParts run(double lengthM) {
    return part(new Run(lengthM, here().bore(), here().friction(), here().label()));
  }

  /** Fittings alike, K of one. */
  public LineParts fittings(String label, int count, double lossCoefficient) {
    return part(new Fitting(label, count, lossCoefficient, here().bore()));
  }

  /** A valve for balancing, a share of its handle's travel open: 0 is shut, 1 wide open. */
  public LineParts valve(ValveTravel travel, double open) {
    Valve.Setpoint setting = new Valve.Opening(travel, open);
    return part(new Valve(travel.word() + " valve", setting, here().bore(), true));
  }

  /** A check valve without a spring, K when open. */
  public LineParts checkValve(double lossCoefficient) {
    return part(new CheckValve("check valve", 0, lossCoefficient, here().bore()));
  }

  /** One pump at full speed that lets no water back. */
  public LineParts pump(String model, PumpCurve curve) {
    PumpSet one = new PumpSet(curve, 1, 1, PumpSet.Arrangement.PARALLEL, Optional.empty());
    return part(new Pump(model, one));
  }

  /** A clean skimmer with a floating door; the line begins at a basin. */
  public LineParts skimmer(double widthM, double sillM) {
    return part(new Skimmer(widthM, OptionalDouble.empty(), sillM, Skimmer.WITH_DOOR, 0));
  }

  /** A tap for a pressure gauge, at an elevation, m. */
  public LineParts gauge(String name, double elevationM) {
    return part(new Gauge(name, elevationM, bore()));
  }

  /** Whether the first part stands in the water itself, so that no pipe begins there. */
  boolean takeWaterIn() {
    return !parts.isEmpty() && (parts.get(0) instanceof Skimmer || parts.get(0) instanceof Pump);
  }

  /** Bore of the pipe, else of the first part that has one. */
  Optional<Bore> bore() {
    return pipe.map(Pipe::bore)
        .or(() -> parts.stream().map(Part::bore).flatMap(Optional::stream).findFirst());
  }

  private Pipe here() {
    return pipe.orElseThrow(
        () -> new IllegalStateException("this part stands in a pipe; begin with LineParts.in"));
  }
}
