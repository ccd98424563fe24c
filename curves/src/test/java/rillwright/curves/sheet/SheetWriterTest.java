package rillwright.curves.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.curves.sheet.fault.SheetFaults;
import rillwright.curves.unit.Unit;
import rillwright.solver.law.pump.PumpPoint;

class SheetWriterTest {
  /** What six figures may be off. */
  private static final double RELATIVE = 5.1e-6;

  private static final SheetWriter METRIC =
      new SheetWriter(Unit.CUBIC_METRE_PER_HOUR, Unit.METRE, Unit.MILLIMETRE);
  private static final SheetWriter US = new SheetWriter(Unit.GALLON_PER_HOUR, Unit.FOOT, Unit.INCH);

  private static DataSheet read(String text) throws SheetFaults {
    return new DataSheetReader(1000).read("x.csv", text.getBytes(UTF_8));
  }

  @Test
  void writesASheetInOtherUnits() throws SheetFaults {
    String us =
        """
        # bought used
        # maker: nobody
        # price: 389 USD
        # kind: submersible
        # min submergence: 8 in
        # variable speed: 40..100 %
        # solids: 0.5 in
        # rated power: 1 hp
        # voltage: 230 V
        # power factor: 0.85
        # phases: 3
        flow [gph],head [ft],power [W]
        0,10,420
        1000,5,
        2000,0,500
        """;
    assertEquals(
        """
        # bought used
        # maker: nobody
        # price: 389 USD
        # kind: submersible
        # min submergence: 203.2 mm
        # variable speed: 40..100 %
        # solids: 12.7 mm
        # rated power: 745.7 W
        # voltage: 230 V
        # power factor: 0.85
        # phases: 3
        flow [m3/h],head [m],power [W]
        0,3.048,420
        3.78541,1.524,
        7.57082,0,500
        """,
        METRIC.write(read(us)));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void readsBackAsItWas(long seed) throws SheetFaults {
    SplittableRandom random = new SplittableRandom(seed);
    List<String> rows = new ArrayList<>(List.of("flow [L/min],head [kPa],power [kW],npshr [ft]"));
    double head = random.nextDouble(30, 300);
    double flow = 0;
    for (int i = 0; i < 2 + random.nextInt(6); i++) {
      rows.add(flow + "," + head + "," + random.nextDouble(0.1, 2) + "," + random.nextDouble(1, 9));
      flow += random.nextDouble(1, 400);
      head *= random.nextDouble(0.2, 0.95);
    }
    DataSheet sheet = read("# npsh required: 2 m\n" + String.join("\n", rows));
    for (SheetWriter writer : List.of(METRIC, US)) {
      DataSheet again = read(writer.write(sheet));
      assertEquals(sheet.facts().price(), again.facts().price());
      assertNear(
          sheet.facts().needs().npshRequiredM(), again.facts().needs().npshRequiredM(), seed);
      List<PumpPoint> points = sheet.curve().points();
      assertEquals(points.size(), again.curve().points().size());
      for (int i = 0; i < points.size(); i++) {
        PumpPoint one = points.get(i);
        PumpPoint other = again.curve().points().get(i);
        assertNear(one.flowM3PerS(), other.flowM3PerS(), seed);
        assertNear(one.headM(), other.headM(), seed);
        assertNear(one.powerW(), other.powerW(), seed);
        assertNear(one.npshRequiredM(), other.npshRequiredM(), seed);
      }
      assertEquals(writer.write(sheet), writer.write(again), "seed " + seed);
    }
  }

  private static void assertNear(OptionalDouble one, OptionalDouble other, long seed) {
    assertNear(one.getAsDouble(), other.getAsDouble(), seed);
  }

  private static void assertNear(double one, double other, long seed) {
    assertEquals(one, other, RELATIVE * Math.abs(one), "seed " + seed);
  }
}
