package rillwright.cli.study.jobsheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.cli.examples.ExampleFolders;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.study.jobsheet.materials.Item;
import rillwright.cli.study.jobsheet.materials.Item.Kind;
import rillwright.cli.study.jobsheet.materials.Materials;

/** What is counted where several things are one piece, or a file leaves a piece unsaid. */
class MaterialsTest {
  private static final String PROJECT =
      """
      points:
        pond: {kind: basin, level: 0 ft, area: 100 ft2}
        chamber: {kind: chamber, floor: -3 ft}
        split: {kind: tee}
        one: {kind: fall, crest: 3 ft, width: 12 in, target: 900 gph, box area: 2 ft2}
        two: {kind: fall, crest: 4 ft, width: 9 in, target: 600 gph}
      prices:
        pipe: {flexible PVC 2 in: 4 USD/ft}
        fittings: {elbow 90 2 in: 3 USD, union 2 in: 10 USD}
      lines:
        intake: {from: pond, to: chamber, parts: [skimmer: {width: 12 in, sill: -5 in}]}
        supply:
          from: chamber
          to: split
          pipe: {material: flexible PVC, size: 2 in}
          parts: [SUPPLY]
        one:
          from: split
          to: one
          pipe: {material: flexible PVC, size: 1-1/2 in}
          parts: [fitting: {type: tee branch}, run: 10 ft, valve: {type: ball, open: 100 %}]
        two:
          from: split
          to: two
          pipe: {material: flexible PVC, size: 2 in}
          parts: [fitting: {type: tee run}, run: 31 ft, fitting: {type: tee run}, run: 6 ft]
      pumps: {P-1: {points: [{flow: 0 gph, head: 20 ft}, {flow: 3000 gph, head: 0 ft}]}}
      """;

  @TempDir private Path folder;

  private List<Item> items(String supply) throws IOException {
    return materials(supply).items();
  }

  private Materials materials(String supply) throws IOException {
    Path file = Files.writeString(folder.resolve("pond.yaml"), PROJECT.replace("SUPPLY", supply));
    return Materials.of(ProjectReader.read(file, List.of()));
  }

  private static int count(List<Item> items, Kind kind, String name) {
    return items.stream()
        .filter(item -> item.what().kind() == kind && item.what().name().equals(name))
        .mapToInt(Item::count)
        .sum();
  }

  @Test
  void theWaysOfATeeAreOnePieceAndATeeInALineIsAnother() throws IOException {
    List<Item> items = items("pump: P-1, run: 20 ft");

    assertEquals(1, count(items, Kind.JUNCTION, "tee"));
    assertEquals(0, count(items, Kind.FITTING, "tee branch"));
    assertEquals(1, count(items, Kind.FITTING, "tee run"));
    assertEquals(
        List.of("2 in x 2 in x 1-1/2 in"),
        items.stream()
            .filter(item -> item.what().kind() == Kind.JUNCTION)
            .map(item -> item.what().size())
            .toList());
  }

  /** The rules are common practice, no source: {@code Joints} says them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "pump: P-1, run: 20 ft | 1 | 2",
        "pump: P-1, check valve: {type: swing}, run: 20 ft | 2 | 2",
        "pump: P-1, check valve: {type: swing}, fitting: {type: union, count: 2}, run: 20 ft | 2 |"
            + " 2",
        "pump: P-1, check valve: {type: swing}, fitting: {type: union}, run: 20 ft | 2 | 2",
        "run: 3 ft, pump: P-1, run: 20 ft | 2 | 2",
        "pump: P-1, run: 20 ft, fitting: {type: bulkhead} | 1 | 2"
      })
  void jointsThatTheFileLeavesUnsaidAreCounted(String supply, int unions, int bulkheads)
      throws IOException {
    List<Item> items = items(supply);

    assertEquals(unions, count(items, Kind.UNION, "union"));
    assertEquals(bulkheads, count(items, Kind.BULKHEAD_FITTING, "bulkhead"));
  }

  /** By hand: 20 and 37 ft net, 59.85 ft with 5 %: two coils of 50 ft, 100 ft at 4 USD. */
  @Test
  void pipeIsBoughtInWholeCoilsAndPricedSo() throws IOException {
    Materials materials = materials("pump: P-1, run: 20 ft, fitting: {type: elbow 90, count: 3}");
    Item pipe =
        materials.items().stream()
            .filter(item -> item.what().kind() == Kind.PIPE && item.what().size().equals("2 in"))
            .findFirst()
            .orElseThrow();

    assertEquals(57 * 0.3048, pipe.lengthM().orElseThrow(), 1e-9);
    assertEquals(2, pipe.count());
    assertEquals(50 * 0.3048, pipe.stock().orElseThrow().lengthM(), 1e-9);
    assertEquals(400, pipe.price().orElseThrow(), 1e-6);
    assertEquals(400 + 9 + 10, materials.total().orElseThrow(), 1e-6);
    assertTrue(!materials.isPriced());
  }

  @Test
  void everyExampleAddsUpToItsRuns() throws IOException {
    List<Path> projects = ExampleFolders.projects();
    assertTrue(projects.size() > 10);
    for (Path file : projects) {
      AddingUp.check(ProjectReader.read(file, List.of()), file.toString());
    }
  }
}
