package rillwright.cli.study.section;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Network;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.steady.PointState;
import rillwright.solver.stream.Homes;
import rillwright.solver.stream.ItemState;
import rillwright.solver.stream.Reach;
import rillwright.solver.stream.Stream;
import rillwright.solver.stream.StreamItem;
import rillwright.solver.stream.StreamPlan;

/** Lays stations one after the other along the ways of a project's water. */
final class WayBuilder {
  private final Network network;
  private final Homes homes;
  private final Hydraulics hydraulics;
  private final Elevations elevations;
  private final Set<PointName> ledHome = new HashSet<>();

  WayBuilder(StreamPlan plan, Hydraulics hydraulics) {
    this.network = hydraulics.network();
    this.homes = new Homes(plan);
    this.hydraulics = hydraulics;
    this.elevations = new Elevations(network);
  }

  /** All ways. */
  List<Way> ways() {
    return new Trails(network, hydraulics.state()).list().stream().map(this::way).toList();
  }

  private Way way(List<Passage> trail) {
    List<Station> stations = new ArrayList<>();
    double distanceM = 0;
    Optional<Measures> arriving = Optional.empty();
    for (Passage passage : trail) {
      LineStations line = new LineStations(passage, hydraulics, elevations, distanceM);
      stations.add(point(passage.start(), arriving, Optional.of(line.start())));
      stations.addAll(line.stations());
      arriving = Optional.of(line.end());
      distanceM = line.end().distanceM();
    }
    PointName end = trail.get(trail.size() - 1).end();
    stations.add(point(end, arriving, Optional.empty()));
    Optional<PointName> home =
        network.point(end).isWayOut() && ledHome.add(end)
            ? addHome(network.point(end), distanceM, stations)
            : Optional.empty();
    return new Way(trail.get(0).start(), end, home, stations);
  }

  /** A point; at its free side it has what it has at the other. */
  private Station point(PointName name, Optional<Measures> before, Optional<Measures> after) {
    Measures one = before.or(() -> after).orElseThrow();
    return new Station(new Station.AtPoint(network.point(name)), one, after.orElse(one));
  }

  /** Adds the way back of water that has left the lines, as far as the file tells it. */
  private Optional<PointName> addHome(Point out, double fromM, List<Station> stations) {
    Optional<PointName> home = homes.of(out);
    double distanceM = fromM;
    double elevationM = elevationM(out);
    Optional<Stream> stream = homes.streamFrom(out.name());
    boolean underWater = out instanceof Outlet outlet && outlet.levelM().isPresent();
    boolean leads =
        home.isPresent()
            && (stream.isPresent()
                || underWater
                || elevationM >= ((Basin) network.point(home.get())).levelM());
    if (!leads) {
      return Optional.empty();
    }
    for (StreamItem item : stream.map(Stream::items).orElse(List.of())) {
      Measures top = bed(distanceM, elevationM);
      distanceM += item instanceof Reach reach ? reach.lengthM() : 0;
      elevationM -= item.dropM();
      Station.InStream subject =
          new Station.InStream(stream.orElseThrow().name(), item, running(item, out.name()));
      stations.add(new Station(subject, top, bed(distanceM, elevationM)));
    }
    Basin basin = (Basin) network.point(home.get());
    if (stream.isEmpty() && !underWater && !hydraulics.isDry(out.name())) {
      Measures top = bed(distanceM, elevationM);
      stations.add(new Station(new Station.Falling(), top, bed(distanceM, basin.levelM())));
    }
    OptionalDouble level = OptionalDouble.of(basin.levelM());
    OptionalDouble head = hydraulics.headM(basin.name(), false);
    Measures water =
        new Measures(
            distanceM,
            basin.levelM(),
            Measures.Source.FILE,
            head,
            head,
            hydraulics.rest().isPresent() ? level : OptionalDouble.empty(),
            OptionalDouble.empty());
    stations.add(new Station(new Station.AtPoint(basin), water, water));
    return home;
  }

  private static double elevationM(Point out) {
    return out instanceof Fall fall ? fall.crestM() : ((Outlet) out).elevationM();
  }

  private Optional<ItemState> running(StreamItem item, PointName from) {
    return hydraulics
        .state()
        .map(state -> state.point(from))
        .map(PointState::outflowM3PerS)
        .map(flow -> item.at(Math.max(0, flow)));
  }

  private static Measures bed(double distanceM, double elevationM) {
    OptionalDouble none = OptionalDouble.empty();
    return new Measures(distanceM, elevationM, Measures.Source.FILE, none, none, none, none);
  }
}
