package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Run;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;
import rillwright.solver.steady.PointState;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** Every number in the JSON is the one in the steady state, to the last digit. */
class SolveJsonTest {
  private static final String PROJECT =
      rillwright.cli.command.Run.resource("solve/demo-10.yaml").toString();

  private static JsonNode json(String... changes) {
    List<String> arguments =
        new java.util.ArrayList<>(List.of("solve", PROJECT, "--format", "json"));
    for (String change : changes) {
      arguments.add("--set");
      arguments.add(change);
    }
    var run = rillwright.cli.command.Run.of(arguments.toArray(String[]::new));
    assertEquals("", run.err());
    return new ObjectMapper().readTree(run.out());
  }

  private static SteadyState state(String... changes) {
    Project project = ProjectReader.read(java.nio.file.Path.of(PROJECT), List.of(changes));
    return SteadyStateFinder.find(project.network());
  }

  private static void assertSame(double expected, JsonNode node, String what) {
    assertTrue(node.isNumber(), what + " is " + node);
    assertEquals(expected == 0 ? 0.0 : expected, node.asDouble(), 0.0, what);
  }

  private static void assertSame(OptionalDouble expected, JsonNode node, String what) {
    if (expected.isPresent()) {
      assertSame(expected.getAsDouble(), node, what);
    } else {
      assertTrue(node.isNull(), what + " is " + node);
    }
  }

  @Test
  void pointsAreThoseOfTheState() {
    SteadyState state = state();
    JsonNode points = json().get("points");
    assertEquals(
        state.points().stream().map(p -> p.point().name().value()).toList(),
        List.copyOf(points.propertyNames()));
    for (PointState point : state.points()) {
      String name = point.point().name().value();
      JsonNode node = points.get(name);
      assertSame(point.headM(), node.get("headM"), name);
      boolean leaves = point.point().kind().matches("basin|fall|outlet");
      assertEquals(leaves, node.has("flowM3PerS"), name);
      if (leaves) {
        assertSame(point.outflowM3PerS(), node.get("flowM3PerS"), name);
      }
      if (point.point() instanceof Fall fall) {
        double crestHead = point.headM().orElseThrow() - fall.crestM();
        assertEquals(crestHead, node.get("crestHeadM").asDouble(), 1e-9, name);
        assertSame(fall.weir().brinkDepthAt(point.outflowM3PerS()), node.get("brinkDepthM"), name);
      }
    }
    assertTrue(points.get("pond").get("flowM3PerS").asDouble() < 0, "the pond feeds the pump");
    assertTrue(points.get("notch").get("brinkDepthM").isNull());
    assertSame(
        state.network().water().densityKgPerM3()
            * 9.80665
            * (points.get("manifold").get("headM").asDouble() + 0.3048),
        points.get("manifold").get("pressurePa"),
        "manifold");
  }

  @Test
  void linesAndPartsAreThoseOfTheState() {
    SteadyState state = state();
    JsonNode lines = json().get("lines");
    for (LineState line : state.lines()) {
      String name = line.line().name().value();
      JsonNode node = lines.get(name);
      assertSame(line.flowM3PerS(), node.get("flowM3PerS"), name);
      assertSame(line.velocityMPerS(), node.get("velocityMPerS"), name);
      assertSame(line.headLossM(), node.get("headLossM"), name);
      JsonNode parts = node.get("parts");
      assertEquals(line.parts().size() + 2, parts.size());
      assertSame(line.entranceLossM(), parts.get(0).get("headLossM"), name);
      assertSame(line.exitLossM(), parts.get(parts.size() - 1).get("headLossM"), name);
      double sum = 0;
      for (int i = 0; i < parts.size(); i++) {
        JsonNode part = parts.get(i);
        sum +=
            part.has("headM")
                ? -part.get("headM").asDouble()
                : part.has("headLossM") ? part.get("headLossM").asDouble() : 0;
      }
      assertEquals(line.headLossM().orElseThrow(), sum, 1e-9, name + ": its parts add up");
      for (int i = 0; i < line.parts().size(); i++) {
        PartState part = line.parts().get(i);
        assertEquals(part.part().kind(), parts.get(i + 1).get("part").asString());
        if (part.part() instanceof Run run) {
          assertSame(part.headLossM(), parts.get(i + 1).get("headLossM"), name);
          assertSame(
              run.reynoldsAt(part.flowM3PerS(), state.network().water()),
              parts.get(i + 1).get("reynolds"),
              name);
        }
      }
    }
  }

  @Test
  void effortAndErrorsAreThoseOfTheState() {
    SteadyState state = state();
    JsonNode json = json();
    assertTrue(json.get("converged").asBoolean());
    assertEquals(state.iterations(), json.get("iterations").asInt());
    assertSame(state.flowErrorM3PerS(), json.get("residuals").get("flowM3PerS"), "flow");
    assertSame(state.headErrorM(), json.get("residuals").get("headM"), "head");
  }

  @Test
  void aShutLineSaysWhatNothingDetermines() {
    JsonNode json = json("lines.supply.valve.open=0 %");
    JsonNode supply = json.get("lines").get("supply");
    assertFalse(supply.get("open").asBoolean());
    assertEquals(0.0, supply.get("flowM3PerS").asDouble());
    assertTrue(supply.get("headLossM").isNull());
    assertFalse(supply.get("determined").asBoolean());
    JsonNode manifold = json.get("points").get("manifold");
    assertTrue(manifold.get("headM").isNull());
    assertTrue(manifold.get("pressurePa").isNull());
    assertFalse(manifold.get("determined").asBoolean());
    JsonNode run = supply.get("parts").get(6);
    assertEquals("run", run.get("part").asString());
    assertTrue(run.get("frictionFactor").isNull());
  }

  @Test
  void aStarvedChamberSaysWhatItLacks() {
    SteadyState state = state("lines.mouth.skimmer.clogged=90 %");
    JsonNode chamber = json("lines.mouth.skimmer.clogged=90 %").get("points").get("chamber");
    PointState expected =
        state.points().stream().filter(PointState::isStarved).findFirst().orElseThrow();
    assertSame(-22 * 0.0254, chamber.get("headM"), "at its intake");
    assertSame(expected.missingHeadM(), chamber.get("missingHeadM"), "missing");
  }
}
