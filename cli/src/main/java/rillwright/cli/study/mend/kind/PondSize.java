package rillwright.cli.study.mend.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import rillwright.cli.file.Show;
import rillwright.cli.file.change.AddressBook;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.NotAQuantity;
import rillwright.cli.file.quantity.QuantityReader;
import rillwright.cli.file.quantity.Range;
import rillwright.cli.study.mend.change.Action;
import rillwright.cli.study.mend.change.Addresses;
import rillwright.cli.study.mend.change.Step;
import rillwright.cli.study.mend.site.Site;
import rillwright.curves.unit.Unit;
import rillwright.solver.network.Basin;
import rillwright.solver.network.BasinShape;

/** A larger pond, in the figures by which the file describes it. */
final class PondSize {
  private PondSize() {}

  /**
   * Every area that the file writes for it grows alike, or its length and its width; shelves stay
   * as wide.
   *
   * @param factor of its area, above 1
   */
  static Step larger(Site site, Basin basin, BasinShape shape, double factor) {
    boolean metric = site.project().show() == Show.METRIC;
    Map<String, String> written = new AddressBook(site.project().tree()).textByAddress();
    List<String> areas = new ArrayList<>();
    areas.add(Addresses.below(basin.name(), "area"));
    for (int row = 1; row <= shape.rows().size(); row++) {
      areas.add(Addresses.below(basin.name(), "shape", Integer.toString(row), "area"));
    }
    Unit area = metric ? Unit.SQUARE_METRE : Unit.SQUARE_FOOT;
    List<String> set = grown(areas, factor, Measure.AREA, area, written);
    if (set.isEmpty()) {
      List<String> sides =
          List.of(
              Addresses.below(basin.name(), "shape", "length"),
              Addresses.below(basin.name(), "shape", "width"));
      Unit length = metric ? Unit.METRE : Unit.FOOT;
      set = grown(sides, Math.sqrt(factor), Measure.LENGTH, length, written);
    }
    String size =
        set.stream()
            .map(change -> change.substring(change.lastIndexOf('=') + 1))
            .distinct()
            .collect(Collectors.joining(" by "));
    return new Step(
        Action.LARGER_POND, basin.name().value(), "", factor, size, set, OptionalDouble.empty());
  }

  private static List<String> grown(
      List<String> addresses,
      double factor,
      Measure measure,
      Unit unit,
      Map<String, String> written) {
    List<String> set = new ArrayList<>();
    for (String address : addresses) {
      Optional.ofNullable(written.get(address)).stream()
          .flatMapToDouble(text -> si(text, measure).stream())
          .forEach(
              now ->
                  set.add(
                      address
                          + "="
                          + String.format(
                              Locale.ROOT, "%.2f %s", factor * unit.fromSi(now), unit.symbol())));
    }
    return set;
  }

  private static OptionalDouble si(String written, Measure measure) {
    try {
      return OptionalDouble.of(QuantityReader.read(written, measure, Range.ANY).middle());
    } catch (NotAQuantity writtenOtherwise) {
      return OptionalDouble.empty();
    }
  }
}
