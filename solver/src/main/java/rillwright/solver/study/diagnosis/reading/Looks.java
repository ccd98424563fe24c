package rillwright.solver.study.diagnosis.reading;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Filter;
import rillwright.solver.network.Line;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Network;
import rillwright.solver.network.Part;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Tee;
import rillwright.solver.study.diagnosis.job.Alteration;
import rillwright.solver.study.diagnosis.job.Look;

/** What can be looked at in a job, and read by other means than gauge, bucket and ruler. */
public final class Looks {
  private static final When RUNNING = new When.Running();

  private final Network network;
  private final Set<Measurand> list = new LinkedHashSet<>();

  private Looks(Network network) {
    this.network = network;
  }

  /** All in a network; what is not known there is among them. */
  public static List<Measurand> in(Network network) {
    Looks looks = new Looks(network);
    network.lines().forEach(looks::line);
    for (Fall fall : network.points(Fall.class)) {
      String name = fall.name().value();
      looks.see(Look.GROUND, name);
      looks.see(Look.ROCKS, name);
      if (fall.widthM().isPresent()) {
        looks.see(Look.CREST, name);
      }
      looks.read(Meter.Kind.BOX, name);
    }
    network.points(Tee.class).forEach(tee -> looks.see(Look.GROUND, tee.name().value()));
    for (Basin pond : network.points(Basin.class)) {
      looks.read(Meter.Kind.FALLS, pond.name().value());
      if (network.isPumped()) {
        looks.list.add(new Meter(Meter.Kind.FALLS, pond.name().value(), new When.PumpOff()));
      }
    }
    return List.copyOf(looks.list);
  }

  /** Makes seen what a job has clogged as it is. */
  public static void showClogged(Alteration job) {
    for (Placed<Filter> filter : job.asBuilt().placed(Filter.class)) {
      Line line = filter.line();
      Look look = endsBehindAMouth(job.asBuilt(), line) ? Look.NET : Look.FILTER;
      job.show(look, line.name().value(), filter.part().clogged());
    }
  }

  private static boolean endsBehindAMouth(Network network, Line line) {
    return line.has(Skimmer.class) && network.point(line.to()) instanceof Chamber;
  }

  private void line(Line line) {
    String name = line.name().value();
    boolean mouth = endsBehindAMouth(network, line);
    if (mouth && line.parts().stream().anyMatch(Looks::isNet)) {
      see(Look.NET, name);
      read(Meter.Kind.MOUTH, name);
    }
    if (!mouth && line.has(Filter.class)) {
      see(Look.FILTER, name);
    }
    if (!mouth && line.has(Loss.class)) {
      see(Look.PART, name);
    }
    if (network.point(line.to()) instanceof Fall && !line.parts().isEmpty()) {
      see(Look.MATS, name);
    }
    if (line.has(Run.class)) {
      see(Look.GROUND, name);
    }
    if (turns(line)) {
      read(Meter.Kind.HANDLE, name);
    }
    if (line.has(Pump.class)) {
      see(Look.CHAMBER, line.from().value());
      read(Meter.Kind.VOLTS, name);
    }
  }

  private static boolean isNet(Part part) {
    return part instanceof Filter || part instanceof Loss;
  }

  private static boolean turns(Line line) {
    int last = When.ValveShut.lastValve(line);
    OptionalDouble degrees =
        last < 0
            ? OptionalDouble.empty()
            : ((rillwright.solver.network.Valve) line.parts().get(last)).loss().degreesFromOpen();
    return degrees.isPresent();
  }

  private void see(Look look, String at) {
    list.add(new Sight(look, at, RUNNING));
  }

  private void read(Meter.Kind kind, String at) {
    list.add(new Meter(kind, at, RUNNING));
  }
}
