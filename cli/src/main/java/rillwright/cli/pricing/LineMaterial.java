package rillwright.cli.pricing;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.PipeSize;
import rillwright.cli.file.site.Prices;
import rillwright.curves.sheet.fact.Price;
import rillwright.solver.network.Fitting;
import rillwright.solver.network.Line;
import rillwright.solver.network.Part;
import rillwright.solver.network.Run;

/**
 * What the pipe and fittings of lines cost. The trench is left out: it is dug for any size.
 *
 * @param cost of all pipe, and of the fittings that have a price; empty if some pipe has none
 * @param unpriced what has no price, as a price would be written: {@code flexible PVC 2 in}
 * @param uncounted fittings of a type without a price, likewise; none where no fitting has one
 */
public record LineMaterial(OptionalDouble cost, List<String> unpriced, List<String> uncounted) {
  public LineMaterial {
    unpriced = List.copyOf(unpriced);
    uncounted = List.copyOf(uncounted);
  }

  /** The material of lines at the prices of a project. */
  public static LineMaterial of(List<Line> lines, Prices prices) {
    Sum sum = new Sum(prices);
    for (Line line : lines) {
      Optional<PipeSize> pipe = Optional.empty();
      for (Part part : line.parts()) {
        if (part instanceof Run run) {
          pipe = Catalogue.standard().findPipeOfLabel(run.label());
          sum.add(run, pipe);
        }
      }
      for (Part part : line.parts()) {
        if (part instanceof Fitting fitting && pipe.isPresent()) {
          sum.add(fitting, pipe.get());
        }
      }
    }
    return new LineMaterial(
        sum.allPipe ? OptionalDouble.of(sum.amount) : OptionalDouble.empty(),
        new ArrayList<>(sum.unpriced),
        new ArrayList<>(sum.uncounted));
  }

  private static final class Sum {
    private final Prices prices;
    private final Set<String> unpriced = new LinkedHashSet<>();
    private final Set<String> uncounted = new LinkedHashSet<>();
    private double amount;
    private boolean allPipe = true;

    Sum(Prices prices) {
      this.prices = prices;
    }

    void add(Run run, Optional<PipeSize> pipe) {
      Optional<Price> price = pipe.flatMap(known -> PriceList.ofMetre(known, prices));
      amount += price.map(metre -> metre.amount() * run.lengthM()).orElse(0.0);
      if (price.isEmpty()) {
        allPipe = false;
        unpriced.add(pipe.map(it -> it.material() + " " + it.size()).orElse(run.label()));
      }
    }

    void add(Fitting fitting, PipeSize pipe) {
      Optional<Price> price = PriceList.ofOne(fitting.label(), pipe, prices);
      amount += price.map(each -> each.amount() * fitting.count()).orElse(0.0);
      boolean hasAType = !fitting.label().equals(fitting.kind());
      if (price.isEmpty() && hasAType && !prices.fittings().isEmpty()) {
        uncounted.add(fitting.label() + " " + pipe.size());
      }
    }
  }
}
