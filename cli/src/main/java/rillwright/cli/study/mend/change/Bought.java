package rillwright.cli.study.mend.change;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.PipeSize;
import rillwright.cli.file.Project;
import rillwright.cli.pricing.LineMaterial;
import rillwright.curves.sheet.DataSheet;
import rillwright.curves.sheet.fact.Price;
import rillwright.solver.network.Line;
import rillwright.solver.network.Run;

/** What is bought for a change, at the prices of the project; empty where a price is missing. */
public final class Bought {
  private Bought() {}

  /** New pipe and fittings of lines, and the trench that is dug for them. */
  public static OptionalDouble pipe(List<Line> lines, Project project) {
    LineMaterial material = LineMaterial.of(lines, project.prices());
    Optional<Price> trench = project.prices().trench();
    if (material.cost().isEmpty() || !material.uncounted().isEmpty() || trench.isEmpty()) {
      return OptionalDouble.empty();
    }
    double lengthM =
        lines.stream()
            .flatMap(line -> line.placed(Run.class).stream())
            .mapToDouble(run -> run.part().lengthM())
            .sum();
    return OptionalDouble.of(material.cost().getAsDouble() + lengthM * trench.get().amount());
  }

  /** Fittings or valves of a type in the size of a line. */
  public static OptionalDouble fittings(String type, int count, Line line, Project project) {
    Optional<PipeSize> size =
        line.placed(Run.class).stream()
            .map(run -> Catalogue.standard().findPipeOfLabel(run.part().label()))
            .flatMap(Optional::stream)
            .findFirst();
    return project.prices().fittings().entrySet().stream()
        .filter(entry -> size.isPresent() && size.get().isSizeOf(entry.getKey(), type))
        .mapToDouble(entry -> count * entry.getValue().amount())
        .findFirst();
  }

  /** A pump, if its price is in the currency of the project. */
  public static OptionalDouble pump(DataSheet sheet, Project project) {
    Optional<String> currency = currency(project);
    return sheet.facts().price().stream()
        .filter(price -> currency.isEmpty() || currency.get().equals(price.currency()))
        .mapToDouble(Price::amount)
        .findFirst();
  }

  /** The currency of a project, which has one; empty if it names no price. */
  public static Optional<String> currency(Project project) {
    return project
        .running()
        .price()
        .or(() -> project.prices().pipe().values().stream().findFirst())
        .or(() -> project.prices().fittings().values().stream().findFirst())
        .or(() -> project.prices().trench())
        .map(Price::currency);
  }
}
