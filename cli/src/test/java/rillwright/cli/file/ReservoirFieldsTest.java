package rillwright.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.solver.network.Basin;
import rillwright.solver.network.LineName;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Screen;
import rillwright.solver.stream.FallBox;

/** Fields of reservoirs full of stone, of boxes at crests and of screens. */
class ReservoirFieldsTest {
  private static String job(String reservoir, String fall, String entrance, String pump) {
    return """
    rillwright: 1
    points:
      reservoir: {kind: basin, level: 0 m%s}
      fall: {kind: fall, crest: 1 m, width: 500 mm, target: 5 m3/h%s}
    lines:
      supply:
        from: reservoir
        to: fall
        pipe: {inside: 50 mm, roughness: 0.01 mm}
        entrance: {k: 0.5%s}
        parts:
          - pump: {model: p%s}
          - run: 9 m
    pumps:
      p: {points: [{flow: 0 m3/h, head: 5 m}, {flow: 10 m3/h, head: 1 m}]}
    """
        .formatted(reservoir, fall, entrance, pump);
  }

  private static Basin reservoir(Project project) {
    return (Basin) project.network().point(new PointName("reservoir"));
  }

  /** 2 m by 3 m, 0.5 m deep, 40 % of it water: 1.2 m3. */
  @Test
  void areRead() {
    Project project =
        ProjectText.read(
            job(
                ", area: 6 m2, voids: 40 %, least level: -300 mm, evaporates: 0.5 m2",
                ", box area: 0.4 m2, box depth: 200 mm",
                ", screen: {area: 0.2 m2, open: 60 %}",
                ", screen: {area: 0.1 m2, open: 30 %}"));
    Basin basin = reservoir(project);
    assertTrue(basin.fullOfStone());
    assertEquals(0.4 * 6, basin.shape().orElseThrow().areaM2(0), 1e-12);
    assertEquals(OptionalDouble.of(-0.3), basin.leastLevelM());
    assertEquals(OptionalDouble.of(0.5), basin.evaporatesM2());
    assertEquals(new FallBox(0.4, 0.2), project.streams().boxes().get(new PointName("fall")));
    var supply = project.network().line(new LineName("supply"));
    assertEquals(new Screen(0.2, 0.6), supply.entrance().screen().orElseThrow());
    Pump pump = (Pump) supply.parts().get(0);
    assertEquals(new Screen(0.1, 0.3), pump.inlet().screen().orElseThrow());
    String notes = String.join("\n", project.notes());
    assertTrue(notes.contains("evaporates: 0.5 m2 of its water is open"), notes);
    assertTrue(notes.contains("has 0.4 m2 of water, 200 mm deep below the crest"), notes);
    assertTrue(notes.contains("60 % of 0.2 m2 is open"), notes);
  }

  @Test
  void areUsualWithoutTheFields() {
    Project project = ProjectText.read(job(", area: 6 m2", "", "", ""));
    Basin basin = reservoir(project);
    assertEquals(6, basin.shape().orElseThrow().areaM2(0), 1e-12);
    assertEquals(OptionalDouble.empty(), basin.leastLevelM());
    assertEquals(OptionalDouble.empty(), basin.evaporatesM2());
    assertTrue(project.streams().boxes().isEmpty());
  }

  @ParameterizedTest(name = "{0}{1}{2}")
  @CsvSource(
      delimiter = '|',
      nullValues = "-",
      value = {
        "', area: 6 m2, voids: 0 %' | '' | '' | voids: \"0 %\" is not possible; it must be 1 % to",
        "', voids: 40 %' | '' | '' | voids: voids are a share of what \"area\" or \"shape\" holds",
        "', least level: 5 mm' | '' | '' | least level: the water at rest stands below this level",
        "', evaporates: -1 m2' | '' | '' | evaporates: \"-1 m2\" is not possible; it must be 0 or",
        "'' | ', box depth: 200 mm' | '' | box depth: what a box holds needs its \"box area\" too",
        "'' | ', box area: 1 m2, box depth: -1 mm' | '' | box depth: \"-1 mm\" is not possible",
        "'' | '' | ', screen: {open: 50 %}' | screen: \"area\" is missing; write for example",
        "'' | '' | ', screen: {area: 1 m2, open: 0 %}' | open: \"0 %\" is not possible; it must be"
            + " 1"
      })
  void areRefusedWhereTheyCannotBe(String reservoir, String fall, String entrance, String shown) {
    String faults = ProjectText.faultsOf(job(reservoir, fall, entrance, ""));
    assertTrue(faults.contains(shown), faults);
    assertTrue(faults.startsWith("pond.yaml:"), faults);
  }
}
