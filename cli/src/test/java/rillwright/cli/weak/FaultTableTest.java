package rillwright.cli.weak;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.cli.file.ProjectReader;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.study.diagnosis.job.Alteration;
import rillwright.solver.study.diagnosis.reading.Drawdown;
import rillwright.solver.study.diagnosis.reading.LevelBelow;
import rillwright.solver.study.diagnosis.reading.LineFlow;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Observed;
import rillwright.solver.study.diagnosis.reading.When;

/**
 * Nineteen faults in one invented system, injected one at a time by edited sheets and coefficients.
 *
 * <p>Source of the numbers: a table of the trade notes that this project was begun with, computed
 * apart from this program with Colebrook's friction, monotone cubics through the pump's points and
 * Q = 1.60 b h^1.5 over the crest, to 3 %. Its chamber levels came from another skimmer law and are
 * not checked, nor what a gauge shows with the pump off while a box is full or a leak drains.
 */
class FaultTableTest {
  private static final double PA_PER_PSI = 6894.757293168361;
  private static final double SHARE = 0.03;

  private static final When RUNNING = new When.Running();
  private static final LineName SUPPLY = new LineName("supply");
  private static final PointName CHAMBER = new PointName("chamber");
  private static final PointName POND = new PointName("pond");

  @TempDir private Path folder;

  @ParameterizedTest(name = "{0}")
  @MethodSource("rillwright.cli.weak.FaultTable#list")
  void meetsTheTable(FaultTable.Fault fault) throws IOException {
    Path file = folder.resolve("job.yaml");
    Files.writeString(file, fault.edit().apply(project()));
    Network network = ProjectReader.read(file, List.of()).network();
    PointName fall = new PointName("fall");
    Observed running = observe(network, fault, new When.Running());
    Observed shut =
        observe(network, fault, new When.ValveShut(new LineName(fault.lines().valve())));
    Observed off = observe(network, fault, new When.PumpOff());
    List<Double> row = fault.row();
    double pumpFlow = running.lineFlowM3PerS(new LineName(fault.lines().pump()));

    assertNear("pump flow L/s", row.get(0), 1000 * pumpFlow, 0.005);
    if (fault.lines().pump().equals("supply")) {
      assertNear("meter L/s", row.get(0), 1000 * read(new LineFlow(SUPPLY, RUNNING), running), 0);
    }
    assertNear("drawdown L/s", row.get(0), 1000 * read(new Drawdown(CHAMBER, RUNNING), running), 0);
    assertEquals(
        running.levelM(POND).orElseThrow() - running.levelM(CHAMBER).orElseThrow(),
        read(new LevelBelow(CHAMBER, POND, RUNNING), running),
        1e-12);
    assertNear("flow at the crest L/s", row.get(1), 1000 * running.flowM3PerS(fall), 0.005);
    assertNear("G1 psi", row.get(2), psi(running.gaugePa("G1")), 0.05);
    assertNear("G2 psi", row.get(3), psi(running.gaugePa("G2")), 0.05);
    assertNear("shut-off psi", row.get(4), psi(shut.gaugePa("G1")), 0.05);
    assertNear("pump off psi", row.get(5), psi(off.gaugePa("G2")), 0.05);
    assertNear("W", row.get(6), running.powerW(new LineName("supply")).orElseThrow(), 0.5);
    assertNear("head on the crest mm", row.get(7), 1000 * running.crestHeadM(fall), 0.5);
  }

  private static double read(Measurand what, Observed job) {
    return what.valueIn(job).orElseThrow();
  }

  private static Observed observe(Network network, FaultTable.Fault fault, When when) {
    Alteration job = new Alteration(network);
    job.loseAfter(new PointName("fall"), 1 - fault.seen(), true);
    return Observed.of(job, when).orElseThrow();
  }

  private static double psi(OptionalDouble pressurePa) {
    return pressurePa.orElseThrow() / PA_PER_PSI;
  }

  private static void assertNear(String what, double published, double value, double digit) {
    if (!Double.isNaN(published)) {
      assertEquals(published, value, Math.max(digit, SHARE * published), what);
    }
  }

  private static String project() throws IOException {
    try (InputStream file = FaultTableTest.class.getResourceAsStream("service-call.yaml")) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
