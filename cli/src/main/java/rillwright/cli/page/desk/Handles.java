package rillwright.cli.page.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.PipeSize;
import rillwright.cli.file.Project;
import rillwright.cli.file.Show;
import rillwright.cli.file.change.Address;
import rillwright.cli.file.part.PartStep;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.NotAQuantity;
import rillwright.cli.file.quantity.QuantityReader;
import rillwright.cli.file.quantity.Range;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.study.mend.kind.Pumps;
import rillwright.curves.sheet.fact.SpeedRange;

/**
 * What of a job can be dragged: sizes of pipes, handles of valves, pumps and their speed, what is
 * clogged, levels of open water. Nothing else of the job depends on this list.
 */
public final class Handles {
  private static final int WHOLE = 100;
  private static final int VALVE_STEP = 5;
  private static final int MOST_CLOGGED = 90;

  /** How far a level is dragged to either side: half inches, centimetres. */
  private static final int LEVEL_STEPS = 24;

  private static final double HALF_INCH_M = 0.0127;
  private static final double CENTIMETRE_M = 0.01;

  private final Project project;
  private final List<Handle> handles = new ArrayList<>();

  private Handles(Project project) {
    this.project = project;
  }

  /** All of them, in the order of the file: lines first, then levels. */
  public static List<Handle> of(Project project) {
    Handles found = new Handles(project);
    MapNode tree = project.tree();
    tree.findMap("lines").ifPresent(lines -> lines.entries().forEach(found::line));
    tree.findMap("points").ifPresent(points -> points.entries().forEach(found::level));
    return found.handles;
  }

  private void line(Entry line) {
    if (!(line.value() instanceof MapNode fields)) {
      return;
    }
    Address address = new Address(List.of("lines", line.key()));
    fields.findMap("pipe").ifPresent(pipe -> pipe(line.key(), address, pipe));
    PartStep.listIn(fields.listItems("parts"))
        .forEach(part -> part(address.below(part.step()), part.entry()));
  }

  private void pipe(String line, Address address, MapNode pipe) {
    Catalogue catalogue = Catalogue.standard();
    Optional<PipeSize> now =
        pipe.findText("material")
            .flatMap(
                material ->
                    pipe.findText("size").flatMap(size -> catalogue.findPipe(material, size)));
    if (now.isEmpty()) {
      return;
    }
    List<String> sizes =
        catalogue.sizesOf(now.get().material()).stream()
            .map(size -> catalogue.findPipe(now.get().material(), size).orElseThrow())
            .filter(it -> it.isMetric() == now.get().isMetric())
            .sorted(Comparator.comparingDouble(PipeSize::insideM))
            .map(PipeSize::size)
            .toList();
    add(
        address.below("pipe").below("size"),
        line + ": pipe size",
        sizes,
        sizes.indexOf(now.get().size()),
        now.get().size());
  }

  private void part(Address address, Entry part) {
    String of = address.steps().get(1) + ": ";
    String kind = address.steps().get(2);
    switch (part.key()) {
      case "valve" -> {
        if (part.value() instanceof MapNode valve && valve.find("k").isEmpty()) {
          share(address, "open", of + kind + " open", valve, WHOLE, 0, WHOLE, VALVE_STEP);
        }
      }
      case "skimmer", "filter" -> {
        if (part.value() instanceof MapNode fields) {
          share(address, "clogged", of + kind + " clogged", fields, 0, 0, MOST_CLOGGED, VALVE_STEP);
        }
      }
      case "pump" -> pump(address, of + kind, part.value());
      default -> {}
    }
  }

  private void pump(Address address, String of, Node pump) {
    MapNode fields = pump instanceof MapNode map ? map : new MapNode(List.of(), pump.place());
    Optional<String> model =
        pump instanceof Scalar scalar ? Optional.of(scalar.text()) : fields.findText("model");
    List<String> models = List.copyOf(project.sheets().keySet());
    if (model.isEmpty() || !models.contains(model.get())) {
      return;
    }
    if (models.size() > 1) {
      add(address.below("model"), of, models, models.indexOf(model.get()), model.get());
    }
    Optional<SpeedRange> range = project.sheets().get(model.get()).facts().variableSpeed();
    if (range.isPresent() || fields.find("speed").isPresent()) {
      int least = range.map(it -> percent(it.least())).orElse(Pumps.SLOWEST_PERCENT);
      int most = range.map(it -> percent(it.greatest())).orElse(WHOLE);
      share(address, "speed", of + " speed", fields, WHOLE, least, most, 1);
    }
  }

  private static int percent(double share) {
    return (int) Math.rint(WHOLE * share);
  }

  private void share(
      Address address,
      String field,
      String what,
      MapNode fields,
      int usual,
      int from,
      int to,
      int step) {
    String written = fields.findText(field).orElse(usual + " %");
    OptionalDouble share = read(written, Measure.SHARE);
    if (share.isPresent()) {
      List<String> choices =
          IntStream.rangeClosed(0, (to - from) / step)
              .mapToObj(i -> (from + i * step) + " %")
              .toList();
      int chosen = (int) Math.round((WHOLE * share.getAsDouble() - from) / step);
      add(
          address.below(field),
          what,
          choices,
          Math.max(0, Math.min(choices.size() - 1, chosen)),
          written);
    }
  }

  private void level(Entry point) {
    if (!(point.value() instanceof MapNode fields)
        || !fields.findText("kind").equals(Optional.of("basin"))) {
      return;
    }
    Optional<String> written = fields.findText("level");
    OptionalDouble level =
        written.isPresent() ? read(written.get(), Measure.LENGTH) : OptionalDouble.empty();
    if (level.isEmpty()) {
      return;
    }
    boolean us = project.show() == Show.US;
    double step = us ? HALF_INCH_M : CENTIMETRE_M;
    long middle = Math.round(level.getAsDouble() / step);
    List<String> choices =
        IntStream.rangeClosed(-LEVEL_STEPS, LEVEL_STEPS)
            .mapToObj(i -> us ? number(0.5 * (middle + i)) + " in" : (middle + i) + " cm")
            .toList();
    add(
        new Address(List.of("points", point.key(), "level")),
        point.key() + ": level",
        choices,
        LEVEL_STEPS,
        written.get());
  }

  private static String number(double number) {
    return number == Math.rint(number)
        ? Long.toString((long) number)
        : String.format(Locale.ROOT, "%.1f", number);
  }

  private static OptionalDouble read(String written, Measure measure) {
    try {
      return OptionalDouble.of(QuantityReader.read(written, measure, Range.ANY).middle());
    } catch (NotAQuantity wrong) {
      return OptionalDouble.empty();
    }
  }

  private void add(Address address, String what, List<String> choices, int chosen, String written) {
    if (choices.size() > 1 && chosen >= 0) {
      handles.add(new Handle(address.text(), what, choices, chosen, written));
    }
  }
}
