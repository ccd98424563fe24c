package rillwright.cli.file.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.file.tree.SourceText;
import rillwright.cli.file.tree.TreeReader;

class ChangesTest {
  private static final String PROJECT =
      """
      water: {temperature: 62 F}
      points:
        pond: {kind: basin, level: 0 ft}
      lines:
        supply:
          from: pond
          pipe: {size: 2 in}
          parts:
            - pump: demo 40
            - valve: {type: ball, open: 100 %}
            - run: 38 ft
            - check valve: {k: 2}
            - valve: {type: gate, open: 50 %}
            - high point: 8 ft
        "1.5 in line":
          parts:
            - run: 5 ft
      """;

  private static MapNode tree(String text) {
    return TreeReader.read(SourceText.of("p.yaml", text.getBytes(StandardCharsets.UTF_8)));
  }

  /** The tree as text without places. */
  private static String shown(Node node) {
    if (node instanceof MapNode map) {
      return map.entries().stream()
          .map(entry -> entry.key() + ": " + shown(entry.value()))
          .collect(Collectors.joining(", ", "{", "}"));
    }
    if (node instanceof ListNode list) {
      return list.items().stream()
          .map(ChangesTest::shown)
          .collect(Collectors.joining(", ", "[", "]"));
    }
    return ((Scalar) node).text();
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "points.pond.level=-2 in | level: 0 ft | level: -2 in",
        "points . pond . level = -2 in | level: 0 ft | level: -2 in",
        "water.temperature=50 F | 62 F | 50 F",
        "lines.supply.pipe.size=3 in | size: 2 in | size: 3 in",
        "lines.supply.valve.open=60 % | open: 100 % | open: 60 %",
        "lines.supply.valve 1.open=60 % | open: 100 % | open: 60 %",
        "lines.supply.valve 2.open=60 % | open: 50 % | open: 60 %",
        "lines.supply.check valve.k=3 | check valve: {k: 2} | check valve: {k: 3}",
        "lines.supply.run=1.5 ft | run: 38 ft | run: 1.5 ft",
        "lines.supply.run.length=40 ft | run: 38 ft | run: 40 ft",
        "lines.supply.run.inside=2 in | run: 38 ft | run: {length: 38 ft, inside: 2 in}",
        "lines.supply.pump.speed=80 % | pump: demo 40 | pump: {model: demo 40, speed: 80 %}",
        "lines.supply.high point.elevation=9 ft | high point: 8 ft | high point: 9 ft",
        "lines.\"1.5 in line\".run=6 ft | run: 5 ft | run: 6 ft",
        "lines.'1.5 in line'.run=6 ft | run: 5 ft | run: 6 ft",
        "points.pond.area=9 ft2 | level: 0 ft | level: 0 ft, area: 9 ft2",
        "lines.supply.to=a=b | {high point: 8 ft}] | {high point: 8 ft}], to: a=b"
      })
  void oneValueIsChangedAndNothingElse(String change, String before, String after) {
    MapNode tree = tree(PROJECT);
    String expected = shown(tree).replace(before, after);
    assertEquals(expected, shown(Changes.apply(tree, change)));
  }

  @Test
  void aSectionThatIsNotThereYetIsBegun() {
    MapNode changed = Changes.apply(tree("title: x\n"), "site.elevation=420 ft");
    assertEquals("{title: x, site: {elevation: 420 ft}}", shown(changed));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "points.pound.level=0 ft | there is no \"pound\" in the section \"points\"; did you mean"
            + " \"pond\"?",
        "lines.suply.run=3 ft | there is no \"suply\" in the section \"lines\"; did you mean"
            + " \"supply\"?",
        "lines.supply.skimmer.clogged=3 % | line \"supply\" has no \"skimmer\"; choose pump, valve,"
            + " run, check valve, high point, from, to, pipe, parts, entrance, exit, note …",
        "lines.supply.valve 3.open=3 % | line \"supply\" has no \"valve 3\"; did you mean"
            + " \"valve\"?",
        "points.pond.level.x=3 | \"level\" is \"0 ft\" and has no field \"x\"",
        "lines.supply.parts.run=3 ft | \"parts\" is a list and has no field \"run\"",
        "points.pond.level | a change is written as an address, \"=\" and a value:"
            + " \"lines.intake.skimmer.clogged=40 %\"",
        "points.pond.level= | the new value is missing after \"=\"",
        "points..level=3 ft | a name is missing in the address; write for example"
            + " lines.intake.skimmer.clogged",
        "=3 ft | a name is missing in the address; write for example lines.intake.skimmer.clogged",
        "signs=[sudden] | a list is set in the file; a change sets one value: 40 %, ball, 3 in",
        "evaporation={rate: 5 mm/day} | a change sets one value, not several fields; for example"
            + " \"evaporation.rate=5 mm/day\"",
        "evaporation={} | a change sets one value, not several fields; for example"
            + " \"evaporation.FIELD=VALUE\"",
        "water={temperature: 5 C, density: 1 kg/m3} | a change sets one value, not several fields;"
            + " for example \"water.temperature=5 C\"",
        "lines.\"a=3 | a quote in this change is not closed"
      })
  void whatCannotBeChangedIsReported(String change, String message) {
    MapNode tree = tree(PROJECT);
    InvalidInput shown = assertThrows(InvalidInput.class, () -> Changes.apply(tree, change));
    assertEquals("--set \"" + change + "\": " + message, shown.getMessage());
  }

  @Test
  void nestedMapsChangeManyValues() {
    MapNode changes =
        tree(
            "lines: {supply: {valve 2: {open: 10 %}, pump: {speed: 70 %}}}\n"
                + "water: {temperature: 4 C}");
    MapNode one = Changes.apply(tree(PROJECT), "lines.supply.valve 2.open=10 %");
    MapNode two = Changes.apply(one, "lines.supply.pump.speed=70 %");
    MapNode three = Changes.apply(two, "water.temperature=4 C");
    assertEquals(shown(three), shown(Changes.applyAll(tree(PROJECT), changes)));
  }

  @Test
  void aWrongNestedChangeIsReportedAtItsPlace() {
    MapNode changes = tree("lines:\n  supply:\n    skimmer: {clogged: 3 %}\n");
    InvalidInput shown =
        assertThrows(InvalidInput.class, () -> Changes.applyAll(tree(PROJECT), changes));
    assertEquals(3, shown.faults().get(0).line());
    assertEquals(5, shown.faults().get(0).column());
  }
}
