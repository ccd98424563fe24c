package rillwright.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.field.Uncertain;
import rillwright.cli.file.tree.Scalar;
import rillwright.solver.network.Line;
import rillwright.solver.network.Network;
import rillwright.solver.steady.SteadyStateFinder;

/** Networks with drawn values are those of a file in which the values are written. */
class DrawnNetworksTest {
  private static final Path EXAMPLE = Path.of("..", "examples", "old-falls", "falls.yaml");

  private static DrawnNetworks networks(Project project) {
    return new DrawnNetworks(project, unknowns(project));
  }

  private static List<Uncertain> unknowns(Project project) {
    return new UncertainQuantities(project)
        .inTheNetwork().stream().map(UncertainQuantities.Named::quantity).toList();
  }

  private static void assertSame(Network expected, Network found) {
    assertEquals(expected.points().toString(), found.points().toString());
    assertEquals(
        SteadyStateFinder.find(expected).lines().stream().map(l -> l.flowM3PerS()).toList(),
        SteadyStateFinder.find(found).lines().stream().map(l -> l.flowM3PerS()).toList());
  }

  @Test
  void withTheMiddleOfEverythingItIsTheProjectsOwn() {
    Project project = ProjectReader.read(EXAMPLE, List.of());
    List<Double> middles =
        unknowns(project).stream().map(unknown -> unknown.quantity().middle()).toList();
    assertSame(project.network(), networks(project).with(middles));
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3})
  void whatIsPutInItsPlaceIsWhatReadingEverythingGives(long seed) {
    Project project = ProjectReader.read(EXAMPLE, List.of());
    Project withWarmth =
        ProjectReader.read(EXAMPLE, List.of("water.temperature=20 C .. 20.000000001 C"));
    Random lot = new Random(seed);
    List<Double> values =
        unknowns(project).stream()
            .map(unknown -> unknown.distribution().quantile(0.01 + 0.98 * lot.nextDouble()))
            .toList();
    List<Double> valuesAndWarmth =
        unknowns(withWarmth).stream()
            .map(
                unknown -> {
                  int index = indexOf(unknowns(project), unknown.written());
                  return index < 0 ? 20.0 : values.get(index);
                })
            .toList();
    assertSame(networks(withWarmth).with(valuesAndWarmth), networks(project).with(values));
  }

  private static int indexOf(List<Uncertain> unknowns, Scalar written) {
    return unknowns.stream().map(Uncertain::written).toList().indexOf(written);
  }

  /**
   * Parts that stand in the bore of a run, second ones of a kind, a run whose own bore is drawn.
   */
  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "[run: {length: 3 ft, inside: 1 in, roughness: 1 mm}, fitting: {k: 1 .. 2}, run: {length: 4"
            + " ft, inside: 2 in, roughness: 1 mm}, fitting: {k: 1}, fitting: {k: 0.5 .. 3}]",
        "[fitting: {k: 0.5 .. 3}, run: {length: 3 ft .. 4 ft, inside: 1 in, roughness: 1 mm}]",
        "[fitting: {k: 3}, run: {length: 3 ft, inside: 1 in .. 2 in, roughness: 1 mm}, fitting: {k:"
            + " 2}]",
        "[run: {length: 3 ft, material: flexible PVC, size: 2 in}, valve: {type: ball, open: 20 %"
            + " .. 60 %}, loss: {flow: 1 gpm .. 2 gpm, head: 1 ft}]",
        "[run: {length: 3 ft .. 4 ft, inside: 1 in, roughness: 1 mm}, fitting: {type: enlargement},"
            + " run: {length: 4 ft, inside: 2 in, roughness: 1 mm}, loss: {k: 1}, run: {length: 4"
            + " ft, inside: 1 in, roughness: 1 mm}]",
        "[run: {length: 3 ft .. 9 ft, inside: 2 in, roughness: 1 mm, deposit: 0 mm .. 9 mm}, fitting:"
            + " {k: 1}]",
        "[run: {length: 3 ft, material: flexible PVC, size: 1 in .. 3 in}, fitting: {k: 1 .. 2}]"
      })
  void aLineWithValuesIsTheLineReadWithThem(String parts) {
    Project project = ProjectText.withLine("{from: pond, to: low, parts: " + parts + "}");
    List<Uncertain> unknowns = unknowns(project);
    List<Double> values =
        unknowns.stream().map(unknown -> unknown.distribution().quantile(0.3)).toList();
    IdentityHashMap<Scalar, Double> drawn = new IdentityHashMap<>();
    for (int i = 0; i < values.size(); i++) {
      drawn.put(unknowns.get(i).written(), values.get(i));
    }
    Network whole =
        project
            .mapping()
            .map(
                project.tree(),
                List.of(),
                written ->
                    drawn.containsKey(written)
                        ? OptionalDouble.of(drawn.get(written))
                        : OptionalDouble.empty())
            .network();
    Network found = networks(project).with(values);
    Line line = ProjectText.lineOf(project);
    assertNotEquals(project.network().lines(), found.lines(), "something is drawn");
    for (double flow : new double[] {1e-4, 1e-3, 5e-3}) {
      assertEquals(
          whole.lawOf(whole.line(line.name())).headLossAt(flow),
          found.lawOf(found.line(line.name())).headLossAt(flow));
    }
  }

  @Test
  void valuesThatContradictEachOtherAreReported() {
    Project project =
        ProjectText.withLine(
            "{from: pond, to: low, pipe: {inside: 1 in}, parts: [run: {length: 3 ft, roughness: 0"
                + " mm .. 2 mm}]}");
    DrawnNetworks networks = networks(project);
    networks.with(List.of(0.0001));
    assertThrows(InvalidInput.class, () -> networks.with(List.of(0.0015)));
  }

  @Test
  void gaugesStayTheirOwnHoweverOftenTheyAreRead() {
    Project project =
        ProjectText.withLine(
            "{from: pond, to: low, pipe: {inside: 1 in, roughness: 0.01 mm}, parts: [run: 3 ft ± 1"
                + " ft, gauge: {name: G1, elevation: 0 ft}]}");
    DrawnNetworks networks = networks(project);
    assertEquals(networks.with(List.of(1.0)).lines(), networks.with(List.of(1.0)).lines());
  }
}
