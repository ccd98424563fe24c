package rillwright.cli.report.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.curves.unit.Unit;

@Isolated
class ShownUnitsTest {
  private static final double GALLON_M3 = Unit.GALLON.toSi(1);

  @ParameterizedTest
  @CsvSource({
    "1577, '1,580 gph'",
    "3648, '3,650 gph'",
    "1436, '1,440 gph'",
    "12345, '12,300 gph'",
    "1234567, '1,230,000 gph'",
    "999.9, '1,000 gph'",
    "42.4, 42 gph",
    "0.4, 0 gph",
    "0, 0 gph",
    "-0.0, 0 gph",
    "-1577, '-1,580 gph'",
  })
  void flowsHaveThreeFigures(double gph, String shown) {
    assertEquals(shown, ShownUnits.US.flow(Unit.GALLON_PER_HOUR.toSi(gph)));
  }

  @ParameterizedTest
  @CsvSource({"10, 10 m3/h", "10.0498, 10.05 m3/h", "1.25623, 1.26 m3/h", "12.5, 12.5 m3/h"})
  void pointsOfSheetsInOtherUnitsHaveOneFigureMore(double m3PerHour, String shown) {
    double m3PerS = Unit.CUBIC_METRE_PER_HOUR.toSi(m3PerHour);
    assertEquals(shown, ShownUnits.METRIC.writtenFlow(m3PerS));
  }

  @ParameterizedTest
  @CsvSource({"0, 0 in, 0 mm", "0.0005, under 1/16 in, under 1 mm", "0.17, 6.7 in, 170 mm"})
  void depthsByARulerAreNoFinerThanItsMarks(double depthM, String us, String metric) {
    assertEquals(us, ShownUnits.US.tools().ruler().measured(depthM, ShownUnits.US));
    assertEquals(metric, ShownUnits.METRIC.tools().ruler().measured(depthM, ShownUnits.METRIC));
  }

  @ParameterizedTest
  @CsvSource({
    "7.2, 7.2 ft",
    "64, 64 ft",
    "3, 3 ft",
    "0, 0 ft",
    "-3.33, -3.33 ft",
    "0.4, 0.4 ft",
    "100.25, 100.25 ft"
  })
  void levelsAreReportedAsTheyAreWritten(double feet, String shown) {
    assertEquals(shown, ShownUnits.US.length(Unit.FOOT.toSi(feet)));
  }

  // A crew writes and reads these in inches.
  @ParameterizedTest
  @CsvSource({
    "-40, -40 in",
    "-5, -5 in",
    "-20, -20 in",
    "0.75, 0.75 in",
    "-5.5, -5.5 in",
    "36, 3 ft",
    "-54, -4.5 ft"
  })
  void shortLengthsAreReportedInInches(double inches, String shown) {
    assertEquals(shown, ShownUnits.US.length(Unit.INCH.toSi(inches)));
  }

  @Test
  void aShortLengthThatIsWrittenInMetricUnitsIsReportedInInches() {
    assertEquals("3.94 in", ShownUnits.US.length(0.1));
    assertEquals("-0.1 m", ShownUnits.METRIC.length(-0.1));
  }

  @Test
  void whatIsWrittenIsReportedAsItIsWritten() {
    ShownUnits metric = ShownUnits.METRIC;
    assertEquals("16.28 m3/h", metric.writtenFlow(16_280 / 3.6e6));
    assertEquals("9.15 m3/h", metric.writtenFlow(9.15 / 3600));
    assertEquals("356 mm", metric.width(0.356));
    assertEquals("22.75 ft", ShownUnits.US.writtenHead(Unit.FOOT.toSi(22.75)));
    assertEquals("1,440 gph", ShownUnits.US.writtenFlow(Unit.GALLON_PER_HOUR.toSi(1440)));
  }

  @Test
  void whatIsWrittenInOtherUnitsIsRoundedLikeWhatIsComputed() {
    assertEquals("23.6 ft", ShownUnits.US.writtenHead(7.2));
    assertEquals("14 in", ShownUnits.US.width(0.356));
    assertEquals("5.97 m3/h", ShownUnits.METRIC.writtenFlow(Unit.GALLON_PER_HOUR.toSi(1577)));
  }

  @Test
  void metricQuantitiesHaveMetricUnits() {
    ShownUnits metric = ShownUnits.METRIC;
    assertEquals("9.23 m3/h", metric.flow(9.23 / 3600));
    assertEquals("15.3 m3/h/m", metric.flowPerWidth(15.3 / 3600));
    assertEquals("2.4 m", metric.length(2.4));
    assertEquals("19 mm", metric.depth(0.0191));
    assertEquals("20 to 27 mm", metric.depths(0.0196, 0.0265));
    assertEquals("5.63 m", metric.head(5.63));
    assertEquals("1.35 m/s", metric.velocity(1.352));
    assertEquals("40.2 kPa", metric.pressure(40200));
    assertEquals("395 W", metric.power(395.4));
    assertEquals("11,900 L", metric.volume(11.9));
    assertEquals("45.2 mm", metric.bore(0.0452));
    assertEquals("40 %", metric.share(0.4));
  }

  @Test
  void usQuantitiesHaveUsUnits() {
    ShownUnits us = ShownUnits.US;
    assertEquals("123 gph/in", us.flowPerWidth(Unit.GALLON_PER_HOUR_PER_INCH.toSi(123)));
    assertEquals("1,530 gph", us.writtenFlow(Unit.GALLON_PER_HOUR.toSi(1530)));
    assertEquals("0.8 in", us.depth(Unit.INCH.toSi(0.83)));
    assertEquals("14.2 ft", us.head(Unit.FOOT.toSi(14.23)));
    assertEquals("5.12 ft/s", us.velocity(Unit.FOOT_PER_SECOND.toSi(5.12)));
    assertEquals("4.2 psi", us.pressure(Unit.PSI.toSi(4.21)));
    assertEquals("5.5 to 6.1 psi", us.pressures(Unit.PSI.toSi(5.53), Unit.PSI.toSi(6.05)));
    assertEquals("2,190 gal", us.volume(Unit.GALLON.toSi(2190)));
    assertEquals("2.049 in", us.bore(Unit.INCH.toSi(2.049)));
    assertEquals("4.9 s", us.seconds(4.93));
    assertEquals("31 minutes", us.duration(1850));
    assertEquals("2.4 hours", us.duration(8650));
    assertEquals("3 in", us.distance(Unit.INCH.toSi(3.3)));
  }

  @ParameterizedTest
  @CsvSource({"0.92, 15/16 in", "1.19, 1-3/16 in", "2, 2 in", "0.02, 0 in", "-0.5, -1/2 in"})
  void aRulerInInchesIsReadInSixteenths(double inches, String shown) {
    assertEquals(shown, ShownUnits.US.tools().ruler().with(Unit.INCH.toSi(inches)));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void roundingMovesNoFlowByMoreThanHalfItsThirdFigure(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 2000; i++) {
      double gph = Math.pow(10, random.nextDouble(2, 6));
      String shown = Figures.of(gph, Scale.COMPUTED, "1");
      double number = Double.parseDouble(shown.replace(",", ""));
      assertTrue(
          Math.abs(number - gph) <= 0.0050001 * gph, "seed " + seed + ": " + gph + " is " + shown);
      assertTrue(
          shown.replace(",", "").replaceAll("0+$", "").length() <= 3,
          "seed " + seed + ": " + gph + " is " + shown);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void partsAddUpToTheirSumAsItIsShown(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 1000; i++) {
      List<Double> parts = new ArrayList<>();
      int count = 1 + random.nextInt(6);
      for (int part = 0; part < count; part++) {
        double size = Math.pow(10, random.nextDouble(-5, 2));
        parts.add(random.nextInt(8) == 0 ? -0.1 * size : random.nextInt(5) == 0 ? 0 : size);
      }
      double sum = parts.stream().mapToDouble(Double::doubleValue).sum();
      double shown = ShownUnits.US.volumes(parts).stream().mapToDouble(part -> number(part)).sum();
      assertEquals(number(ShownUnits.US.volume(sum)), shown, 1e-6, "seed " + seed + ": " + parts);
    }
    assertEquals(
        List.of("0 gal", "1 gal", "0 gal"),
        ShownUnits.US.volumes(List.of(0.4 * GALLON_M3, 0.5 * GALLON_M3, 0.0)));
  }

  private static double number(String shown) {
    return Double.parseDouble(shown.replace(",", "").replaceFirst(" .*", ""));
  }

  @Test
  void numbersDoNotFollowTheCountryOfTheMachine() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertEquals("1,580 gph", ShownUnits.US.flow(Unit.GALLON_PER_HOUR.toSi(1577)));
      assertEquals("0.8 in", ShownUnits.US.depth(Unit.INCH.toSi(0.83)));
    } finally {
      Locale.setDefault(before);
    }
  }
}
