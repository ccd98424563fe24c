package rillwright.cli.report.text.jobsheet;

import java.util.Locale;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.jobsheet.materials.Item;
import rillwright.cli.study.jobsheet.materials.Materials;
import rillwright.cli.study.jobsheet.materials.Stock;

/** An item of a list of materials in words; what it has not is empty. */
record MaterialWords(
    String what,
    String material,
    String size,
    String length,
    String stock,
    String count,
    String price) {

  static MaterialWords of(Item item, ShownUnits units) {
    Item.Thing thing = item.what();
    String size =
        thing.boreM().isPresent()
            ? units.bore(thing.boreM().getAsDouble()) + " inside"
            : thing.size();
    return new MaterialWords(
        named(thing, units),
        thing.material(),
        size,
        item.lengthM().isPresent() ? units.length(item.lengthM().getAsDouble()) : "",
        item.stock().map(stock -> of(stock, units)).orElse(""),
        Integer.toString(item.count()),
        item.price().isPresent() ? money(item.price().getAsDouble()) : "");
  }

  private static String named(Item.Thing thing, ShownUnits units) {
    if (thing.lossCoefficient().isPresent()) {
      return thing.name() + ", K " + units.number(thing.lossCoefficient().getAsDouble());
    }
    return thing.kind() == Item.Kind.BULKHEAD_FITTING ? thing.name() + " fitting" : thing.name();
  }

  private static String of(Stock stock, ShownUnits units) {
    return stock.count() + " x " + units.length(stock.lengthM()) + (stock.coiled() ? " coil" : "");
  }

  /** An amount of money to the hundredth. */
  static String money(double amount) {
    return String.format(Locale.ROOT, "%.2f", amount);
  }

  static String totalOf(Materials materials) {
    return materials.isPriced() ? "total" : "total of what has a price";
  }
}
