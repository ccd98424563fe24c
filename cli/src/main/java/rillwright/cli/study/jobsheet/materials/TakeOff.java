package rillwright.cli.study.jobsheet.materials;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.file.Project;
import rillwright.cli.pricing.PriceList;
import rillwright.cli.study.jobsheet.materials.Item.Kind;
import rillwright.cli.study.jobsheet.materials.Item.Thing;
import rillwright.cli.study.mend.change.Bought;
import rillwright.curves.sheet.fact.Price;
import rillwright.solver.network.ChangeOfBore;
import rillwright.solver.network.CheckValve;
import rillwright.solver.network.Filter;
import rillwright.solver.network.Fitting;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.HighPoint;
import rillwright.solver.network.Line;
import rillwright.solver.network.Part;
import rillwright.solver.network.PlannedPump;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.network.Skimmer;
import rillwright.solver.network.Valve;

/** Counts what the lines of a project are built of. */
final class TakeOff {
  private final Project project;
  private final Map<Thing, Double> lengthsM = new LinkedHashMap<>();
  private final Map<Thing, Integer> counts = new LinkedHashMap<>();
  private final Map<Thing, LaidPipe> pipes = new LinkedHashMap<>();

  private TakeOff(Project project) {
    this.project = project;
  }

  static List<Item> of(Project project) {
    TakeOff takeOff = new TakeOff(project);
    Junctions junctions = Junctions.of(project.network());
    for (Line line : project.network().lines()) {
      takeOff.line(line, junctions);
    }
    junctions
        .built()
        .forEach(it -> takeOff.add(thing(Kind.JUNCTION, it.name(), it.pipe()), it.pipe(), 1));
    return takeOff.items();
  }

  private void line(Line line, Junctions junctions) {
    for (int i = 0; i < line.parts().size(); i++) {
      Part part = line.parts().get(i);
      LaidPipe pipe = LaidPipe.around(line, i);
      if (part instanceof Run run) {
        Thing thing = thing(Kind.PIPE, "pipe", pipe);
        lengthsM.merge(thing, run.lengthM(), Double::sum);
        pipes.put(thing, pipe);
        line.changeOfBoreAt(i).ifPresent(change -> change(line, change));
      } else if (part instanceof Fitting fitting) {
        add(fitting(fitting, pipe), pipe, fitting.count() - junctions.legsAt(line, i));
      } else {
        part(part, pipe);
      }
    }
    add(
        Kind.BULKHEAD_FITTING,
        Joints.BULKHEAD,
        LaidPipe.first(line),
        Joints.bulkheads(line, project));
    add(Kind.UNION, Joints.UNION, LaidPipe.first(line), Joints.unions(line));
  }

  private static Thing fitting(Fitting fitting, LaidPipe pipe) {
    boolean isNamed = !fitting.label().equals(fitting.kind());
    Kind kind =
        switch (fitting.label()) {
          case Joints.BULKHEAD -> Kind.BULKHEAD_FITTING;
          case Joints.UNION -> Kind.UNION;
          default -> Kind.FITTING;
        };
    return new Thing(
        kind,
        fitting.label(),
        pipe.material(),
        pipe.size(),
        pipe.boreM(),
        isNamed ? OptionalDouble.empty() : OptionalDouble.of(fitting.loss().kForward()));
  }

  private void part(Part part, LaidPipe pipe) {
    if (part instanceof Valve || part instanceof CheckValve) {
      add(part instanceof Valve ? Kind.VALVE : Kind.CHECK_VALVE, part.label(), pipe, 1);
    } else if (part instanceof Gauge) {
      add(Kind.GAUGE_TAP, "gauge tap", pipe, 1);
    } else if (part instanceof Pump pump) {
      add(Kind.PUMP, pump.label(), LaidPipe.NONE, pump.set().count());
    } else if (part instanceof PlannedPump) {
      add(Kind.PUMP, part.label(), LaidPipe.NONE, 1);
    } else if (!(part instanceof HighPoint)) {
      Kind kind =
          part instanceof Skimmer
              ? Kind.SKIMMER
              : part instanceof Filter ? Kind.FILTER : Kind.OTHER_LOSS;
      add(kind, part.label(), LaidPipe.NONE, 1);
    }
  }

  private void change(Line line, ChangeOfBore change) {
    LaidPipe before = LaidPipe.around(line, change.before().index());
    LaidPipe after = LaidPipe.around(line, change.after().index());
    add(Kind.FITTING, "reducer", before.with(after), 1);
  }

  private void add(Kind kind, String name, LaidPipe pipe, int count) {
    add(thing(kind, name, pipe), pipe, count);
  }

  private void add(Thing thing, LaidPipe pipe, int count) {
    if (count > 0) {
      counts.merge(thing, count, Integer::sum);
      pipes.put(thing, pipe);
    }
  }

  private static Thing thing(Kind kind, String name, LaidPipe pipe) {
    return new Thing(
        kind, name, pipe.material(), pipe.size(), pipe.boreM(), OptionalDouble.empty());
  }

  private List<Item> items() {
    List<Item> items = new ArrayList<>();
    lengthsM.forEach((thing, lengthM) -> items.add(pipe(thing, lengthM)));
    counts.forEach((thing, count) -> items.add(counted(thing, count)));
    items.sort(Comparator.comparing(item -> item.what().kind()));
    return items;
  }

  private Item pipe(Thing thing, double lengthM) {
    LaidPipe pipe = pipes.get(thing);
    Optional<Stock> stock = pipe.known().map(known -> Stock.of(known, lengthM));
    Optional<Price> metre =
        pipe.known().flatMap(known -> PriceList.ofMetre(known, project.prices()));
    OptionalDouble price =
        metre.isPresent()
            ? OptionalDouble.of(metre.get().amount() * stock.orElseThrow().totalM())
            : OptionalDouble.empty();
    int count = stock.map(Stock::count).orElse(1);
    return new Item(thing, OptionalDouble.of(lengthM), stock, count, price);
  }

  private Item counted(Thing thing, int count) {
    OptionalDouble one = thing.kind() == Kind.PUMP ? pump(thing) : piece(thing);
    OptionalDouble price =
        one.isPresent() ? OptionalDouble.of(count * one.getAsDouble()) : OptionalDouble.empty();
    return new Item(thing, OptionalDouble.empty(), Optional.empty(), count, price);
  }

  private OptionalDouble piece(Thing thing) {
    return pipes.get(thing).known().stream()
        .flatMap(pipe -> PriceList.ofOne(thing.name(), pipe, project.prices()).stream())
        .mapToDouble(Price::amount)
        .findFirst();
  }

  private OptionalDouble pump(Thing thing) {
    return project.network().placed(Pump.class).stream()
        .filter(pump -> pump.part().label().equals(thing.name()))
        .map(pump -> project.findSheet(pump.part().model()))
        .flatMap(Optional::stream)
        .map(sheet -> Bought.pump(sheet, project))
        .findFirst()
        .orElse(OptionalDouble.empty());
  }
}
