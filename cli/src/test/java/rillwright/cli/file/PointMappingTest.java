package rillwright.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.law.Bore;
import rillwright.solver.law.weir.PowerWeir;
import rillwright.solver.law.weir.ThinPlateWeir;
import rillwright.solver.law.weir.VNotchWeir;
import rillwright.solver.network.Basin;
import rillwright.solver.network.BasinShape;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Nozzle;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Tee;

/** What each kind of point becomes. */
class PointMappingTest {
  private static final PointName NAME = new PointName("p");

  private static Point point(String text) {
    return ProjectText.pointOf(
        ProjectText.read(
            "points:\n  pond: {kind: basin, level: 0 m}\n  p: "
                + text
                + "\nlines:\n  l: {from: pond, to: p, parts: [loss: {flow: 1 L/s, head: 1 m}]}\n"),
        "p");
  }

  private static Fall fall(String text) {
    return (Fall) point("{kind: fall, crest: 1 m, " + text + "}");
  }

  @Test
  void basins() {
    OptionalDouble none = OptionalDouble.empty();
    assertEquals(
        new Basin(NAME, -0.5, Optional.empty(), none, none, none),
        point("{kind: basin, level: -50 cm}"));
    assertEquals(
        new Basin(
            NAME,
            1,
            Optional.of(new BasinShape(List.of(new BasinShape.Row(1, 7)))),
            OptionalDouble.of(1.1),
            OptionalDouble.of(1.2),
            OptionalDouble.of(1.3)),
        point(
            "{kind: basin, level: 1 m, area: 7 m2, overflow: 110 cm, grade: 120 cm, liner edge: 130"
                + " cm}"));
    Basin shaped =
        (Basin)
            point(
                "{kind: basin, level: 0 m, shape: [{level: -2 m, area: 3 m2}, {level: -1 m, area: 3"
                    + " m2}, {level: -1 m, area: 5 m2}]}");
    assertEquals(3 + 5, shaped.shape().orElseThrow().volumeM3(0), 1e-12);
  }

  @Test
  void chambers() {
    OptionalDouble none = OptionalDouble.empty();
    assertEquals(new Chamber(NAME, -1, -1, none, none), point("{kind: chamber, floor: -1 m}"));
    assertEquals(
        new Chamber(NAME, -1, -0.5, OptionalDouble.of(0.5), OptionalDouble.of(2)),
        point("{kind: chamber, floor: -1 m, intake: -50 cm, top: 50 cm, area: 2 m2}"));
  }

  @Test
  void tees() {
    assertEquals(new Tee(NAME, OptionalDouble.empty(), 0), point("{kind: tee}"));
    assertEquals(
        new Tee(NAME, OptionalDouble.of(-1.5), -0.002),
        point("{kind: tee, elevation: -1.5 m, draw: -2 L/s}"));
  }

  @Test
  void outlets() {
    OptionalDouble none = OptionalDouble.empty();
    assertEquals(
        new Outlet(NAME, 1, none, Optional.empty(), OptionalDouble.of(0.001)),
        point("{kind: outlet, elevation: 1 m, target: 1 L/s}"));
    assertEquals(
        new Outlet(
            NAME, 1, OptionalDouble.of(2), Optional.of(new Nozzle(new Bore(0.01), 0.97)), none),
        point(
            "{kind: outlet, elevation: 1 m, level: 2 m, nozzle: {diameter: 10 mm, discharge"
                + " coefficient: 0.97}}"));
    assertEquals(
        new Outlet(NAME, 2, OptionalDouble.of(2), Optional.empty(), none),
        point("{kind: outlet, level: 2 m}"));
  }

  // Coefficients and bands: common practice, no source.
  @ParameterizedTest
  @CsvSource({"metal, 1.84, 0.15", "stone, 1.60, 0.30", "boulders, 1.35, 0.30"})
  void fallsByLip(String lip, double coefficient, double band) {
    Fall fall = fall("width: 50 cm, lip: " + lip);
    assertEquals(coefficient, ((PowerWeir) fall.weir()).coefficient());
    assertEquals(0.5, fall.widthM().getAsDouble());
    assertEquals(band, fall.depthBand());
  }

  @Test
  void theUsualLipIsStone() {
    assertEquals(fall("width: 50 cm, lip: stone"), fall("width: 50 cm"));
  }

  @Test
  void fallsByWeir() {
    Fall given = fall("width: 50 cm, weir: {discharge coefficient: 0.6}");
    assertEquals(PowerWeir.ofDischargeCoefficient(0.6, 0.5), given.weir());
    assertEquals(0.15, given.depthBand());
    Fall broad = fall("width: 50 cm, weir: {shape: broad}");
    assertEquals(1.55, ((PowerWeir) broad.weir()).coefficient());
    assertEquals(0.30, broad.depthBand());
    assertEquals(new VNotchWeir(90), fall("width: 1 m, weir: {shape: v notch, angle: 90}").weir());
    assertEquals(new VNotchWeir(60), fall("weir: {shape: v notch, angle: 60}").weir());
  }

  @Test
  void aThinPlateIsAsWideAsItsChannelUnlessStatedOtherwise() {
    Fall full = fall("width: 50 cm, weir: {shape: thin plate, height: 20 cm}");
    Fall narrow =
        fall("width: 50 cm, weir: {shape: thin plate, height: 20 cm, channel width: 80 cm}");
    assertInstanceOf(ThinPlateWeir.class, full.weir());
    assertEquals(new ThinPlateWeir(0.5, 0.2, 0.5).flowAt(0.05), full.weir().flowAt(0.05));
    assertEquals(new ThinPlateWeir(0.5, 0.2, 0.8).flowAt(0.05), narrow.weir().flowAt(0.05));
  }

  @Test
  void targetsAreFlowsDepthsOrFlowsPerWidth() {
    assertEquals(0.002, fall("width: 50 cm, target: 2 L/s").targetM3PerS().orElseThrow(), 1e-15);
    assertEquals(
        0.5 * 36 / 3600,
        fall("width: 50 cm, target: 36 m3/h/m").targetM3PerS().orElseThrow(),
        1e-15);
    assertEquals(
        1.6 * 0.5 * Math.pow(0.02, 1.5),
        fall("width: 50 cm, target: {crest head: 20 mm}").targetM3PerS().orElseThrow(),
        1e-15);
    assertEquals(OptionalDouble.empty(), fall("width: 50 cm").targetM3PerS());
  }

  @Test
  void aFallReturnsToTheBasinThatIsNamed() {
    assertEquals(
        Optional.of(new PointName("pond")), fall("width: 50 cm, returns to: pond").returnsTo());
    assertEquals(Optional.empty(), fall("width: 50 cm").returnsTo());
  }
}
