package rillwright.solver.network;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import rillwright.solver.invariant.Require;
import rillwright.solver.law.AirRemoval;
import rillwright.solver.law.Bore;

/**
 * What lies between two points: a chain of parts in the order the water meets them.
 *
 * @param name unique among lines
 * @param from where positive flow comes from
 * @param to where it goes
 * @param pipeBore bore of the line's own pipe, where it has one
 * @param parts in order; copied
 * @param entrance what its end at {@code from} costs
 * @param exit what its end at {@code to} costs
 */
public record Line(
    LineName name,
    PointName from,
    PointName to,
    Optional<Bore> pipeBore,
    List<Part> parts,
    LineEnd entrance,
    LineEnd exit) {
  public Line {
    Require.given("name of a line", name);
    Require.given("point a line comes from", from);
    Require.given("point a line goes to", to);
    Require.given("bore of a line", pipeBore);
    parts = Require.all("parts of a line", parts);
    Require.given("entrance of a line", entrance);
    Require.given("exit of a line", exit);
  }

  /**
   * The bore in which the line's velocity is reported: its pipe's, else the first part's that has
   * one.
   */
  public Optional<Bore> mainBore() {
    return pipeBore.or(() -> parts.stream().map(Part::bore).flatMap(Optional::stream).findFirst());
  }

  /** Where its runs change their bore, in order. */
  public List<ChangeOfBore> changesOfBore() {
    return ChangeOfBore.listIn(this);
  }

  /** The change of bore at the beginning of the run at a place. */
  public Optional<ChangeOfBore> changeOfBoreAt(int place) {
    return changesOfBore().stream().filter(it -> it.after().index() == place).findFirst();
  }

  /** Water that its filters let go when nothing runs, m³. */
  public double filtersHoldM3() {
    return placed(Filter.class).stream().mapToDouble(filter -> filter.part().holdsM3()).sum();
  }

  /** Whether a part of a kind stands in it. */
  public boolean has(Class<? extends Part> kind) {
    return parts.stream().anyMatch(kind::isInstance);
  }

  /** Its parts of a kind, in order. */
  public <P extends Part> List<Placed<P>> placed(Class<P> kind) {
    return Placed.in(this, kind);
  }

  /**
   * The high points over which its water must climb to start, by their places among its parts:
   * those upstream of its first pump are a matter of that pump's suction.
   */
  public Map<Integer, HighPoint> climbs() {
    Map<Integer, HighPoint> climbs = new LinkedHashMap<>();
    for (int i = 0; i < parts.size(); i++) {
      if (parts.get(i) instanceof HighPoint point) {
        climbs.put(i, point);
      } else if (isPump(parts.get(i)) && parts.subList(0, i).stream().noneMatch(Line::isPump)) {
        climbs.clear();
      }
    }
    return climbs;
  }

  /**
   * Whether the water takes the air along down the pipe downstream of a high point that has no
   * vent.
   *
   * @param highPoint its place among the parts, counted from 0
   * @param flowM3PerS what comes over it while there is air, m³/s, with the sign of the line's flow
   */
  public boolean sweepsAirFrom(int highPoint, double flowM3PerS) {
    HighPoint point = (HighPoint) parts.get(highPoint);
    List<Part> leg = new ArrayList<>(parts.subList(highPoint, parts.size()));
    if (flowM3PerS < 0) {
      leg = new ArrayList<>(parts.subList(0, highPoint));
      Collections.reverse(leg);
    }
    Optional<Bore> bore =
        leg.stream()
            .filter(Run.class::isInstance)
            .map(Part::bore)
            .flatMap(Optional::stream)
            .findFirst()
            .or(point::pipeBore);
    return point.air() != HighPoint.Air.VENTED
        && bore.isPresent()
        && bore.get().froudeNumberAt(flowM3PerS)
            >= AirRemoval.leastFroudeNumber(point.fallDegrees());
  }

  private static boolean isPump(Part part) {
    return part instanceof Pump || part instanceof PlannedPump;
  }

  /** Whether a point is one of its ends. */
  public boolean joins(PointName point) {
    return from.equals(point) || to.equals(point);
  }

  /** The same line with other parts. */
  public Line withParts(List<Part> otherParts) {
    return new Line(name, from, to, pipeBore, otherParts, entrance, exit);
  }

  /** The same line with each of its parts of a kind changed. */
  public <P extends Part> Line withEach(Class<P> kind, UnaryOperator<P> change) {
    return withParts(
        parts.stream()
            .<Part>map(part -> kind.isInstance(part) ? change.apply(kind.cast(part)) : part)
            .toList());
  }

  /** The same line with a shut valve at its end; as it is where nothing in it has a bore. */
  public Line shut() {
    List<Part> more = new ArrayList<>(parts);
    mainBore().ifPresent(bore -> more.add(new Valve("", Valve.GivenLoss.SHUT, bore, false)));
    return withParts(more);
  }

  /**
   * The same line with one part replaced.
   *
   * @param index the part's place in the line, counted from 0
   */
  public Line withPart(int index, Part changed) {
    List<Part> others = new ArrayList<>(parts);
    others.set(index, changed);
    return withParts(others);
  }

  /** The same line with the bores of its pipe and of all that stands in it multiplied. */
  public Line narrowed(double factor) {
    return new Line(
        name,
        from,
        to,
        pipeBore.map(bore -> bore.times(factor)),
        parts.stream().map(part -> part.narrowed(factor)).toList(),
        entrance.narrowed(factor),
        exit.narrowed(factor));
  }
}
