package rillwright.curves.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class UnitTest {

  /**
   * Factors to seven digits as printed by NIST Special Publication 811 (2008), appendix B.8 and B.9
   * (from memory); those of SI and of what is legal beside it are exact.
   */
  @ParameterizedTest(name = "1 {0} is {1}")
  @CsvSource({
    "ft, 3.048E-01",
    "in, 2.54E-02",
    "cm, 1.0E-02",
    "mm, 1.0E-03",
    "gpm, 6.309020E-05",
    "cfs, 2.831685E-02",
    "imp gpm, 7.576817E-05",
    "L/min, 1.666667E-05",
    "L/s, 1.0E-03",
    "m3/h, 2.777778E-04",
    "psi, 6.894757E+03",
    "kPa, 1.0E+03",
    "bar, 1.0E+05",
    "ft2, 9.290304E-02",
    "gal, 3.785412E-03",
    "imp gal, 4.546090E-03",
    "ft3, 2.831685E-02",
    "L, 1.0E-03",
    "hp, 7.456999E+02",
    "kW, 1.0E+03",
    "min, 6.0E+01",
    "h, 3.6E+03",
    "day, 8.64E+04",
    "ft/s, 3.048E-01",
    "mph, 4.4704E-01",
    "km/h, 2.777778E-01",
    "mm2/s, 1.0E-06",
  })
  void hasItsPublishedFactor(String symbol, double siValue) {
    double found = Unit.find(symbol).orElseThrow().toSi(1);
    assertEquals(siValue, found, 5e-7 * siValue, symbol);
  }

  /** Worked by hand from the factors above. */
  @ParameterizedTest(name = "{0} {1} is {2} {3}")
  @CsvSource({
    "3600, gph, 60, gpm",
    "60, gpm, 13627.4824, L/h",
    "1, cfs, 448.8312, gpm",
    "100, gph/in, 14.90320, m3/h/m",
    "12, gph/ft, 1, gph/in",
    "1, bar, 14.50377, psi",
    "1, in/day, 25.4, mm/day",
    "88, ft/s, 60, mph",
    "1, imp gal, 1.200950, gal",
    "1.5, hp, 1.118550, kW",
  })
  void agreesWithItsNeighbours(double number, String symbol, double other, String otherSymbol) {
    Unit from = Unit.find(symbol).orElseThrow();
    Unit to = Unit.find(otherSymbol).orElseThrow();
    assertEquals(from.dimension(), to.dimension());
    assertEquals(other, to.fromSi(from.toSi(number)), 5e-7 * other);
  }

  @ParameterizedTest
  @EnumSource
  void findsItselfByEachSpellingAndConvertsBack(Unit unit) {
    assertTrue(unit.symbols().contains(unit.symbol()));
    for (String symbol : unit.symbols()) {
      assertEquals(Optional.of(unit), Unit.find(symbol));
    }
    assertEquals(12.5, unit.fromSi(unit.toSi(12.5)), 1e-14 * 12.5);
    assertEquals(0, unit.toSi(0));
    assertTrue(unit.toSi(-2) < 0);
  }

  @Test
  void noSpellingMeansTwoUnits() {
    List<String> all = new ArrayList<>();
    Arrays.stream(Unit.values()).forEach(unit -> all.addAll(unit.symbols()));
    assertEquals(all.size(), new HashSet<>(all).size(), all::toString);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "GPH", "Ft", "ells", "m^3/h", "lb", " ft", "gph "})
  void knowsNoOtherSpelling(String symbol) {
    assertEquals(Optional.empty(), Unit.find(symbol));
  }

  @ParameterizedTest
  @EnumSource
  void everyDimensionHasUnitsOfItsOwn(Dimension dimension) {
    assertFalse(dimension.units().isEmpty());
    dimension.units().forEach(unit -> assertEquals(dimension, unit.dimension()));
    assertTrue(dimension.words().matches("an? [a-z ]+"), dimension.words());
  }

  @Test
  void offersTheTradesUnitsFirst() {
    assertEquals(
        List.of("ft", "in", "m", "cm", "mm"),
        Dimension.LENGTH.units().stream().map(Unit::symbol).toList());
    assertEquals("gph", Dimension.FLOW.units().get(0).symbol());
    assertEquals("psi", Dimension.PRESSURE.units().get(0).symbol());
  }
}
