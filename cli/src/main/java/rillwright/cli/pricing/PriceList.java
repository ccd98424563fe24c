package rillwright.cli.pricing;

import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import rillwright.cli.catalogue.PipeSize;
import rillwright.cli.file.site.Prices;
import rillwright.curves.sheet.fact.Price;

/** Finds what a project pays for something. */
public final class PriceList {
  private PriceList() {}

  /** The price of a metre of pipe. */
  public static Optional<Price> ofMetre(PipeSize pipe, Prices prices) {
    return find(prices.pipe(), pipe::isCalled);
  }

  /** The price of one fitting or valve of a type in the size of a pipe. */
  public static Optional<Price> ofOne(String type, PipeSize size, Prices prices) {
    return find(prices.fittings(), name -> size.isSizeOf(name, type));
  }

  private static Optional<Price> find(Map<String, Price> named, Predicate<String> wanted) {
    return named.entrySet().stream()
        .filter(entry -> wanted.test(entry.getKey()))
        .map(Map.Entry::getValue)
        .findFirst();
  }
}
