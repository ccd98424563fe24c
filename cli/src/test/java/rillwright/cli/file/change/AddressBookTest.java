package rillwright.cli.file.change;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.size.LineSizes;
import rillwright.cli.file.size.SizeOption;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.file.tree.SourceText;
import rillwright.cli.file.tree.TreeReader;
import rillwright.cli.study.compare.Entered;

/** Addresses are those by which a change finds the value. */
class AddressBookTest {
  private static final String PROJECT =
      """
      water: {temperature: "62 F"}
      points:
        pond: {kind: basin, shape: [{level: "-1 m", area: 3 m2}, {level: 0 m, area: 4 m2}]}
        "fall no. 2": {crest: 4 ft}
        "a=b": {crest: 5 ft}
        "'quoted'": {crest: 6 ft}
      lines:
        supply:
          pipe: {size: 2 in}
          parts:
            - valve: {open: 100 %}
            - run: 38 ft
            - valve: {open: 50 %}
            - run: {length: 8 ft}
            - filter: {points: [{flow: 1 gpm, head: 2 ft}, {flow: 2 gpm, head: 5 ft}]}
      """;

  private static MapNode tree() {
    return TreeReader.read(SourceText.of("p.yaml", PROJECT.getBytes(StandardCharsets.UTF_8)));
  }

  private static List<Scalar> scalars(Node node) {
    List<Scalar> found = new ArrayList<>();
    if (node instanceof Scalar scalar) {
      found.add(scalar);
    } else if (node instanceof MapNode map) {
      map.entries().stream().map(Entry::value).map(AddressBookTest::scalars).forEach(found::addAll);
    } else if (node instanceof ListNode list) {
      list.items().stream().map(AddressBookTest::scalars).forEach(found::addAll);
    }
    return found;
  }

  private static List<String> texts(MapNode tree) {
    return scalars(tree).stream().map(Scalar::text).toList();
  }

  @Test
  void aChangeAtTheAddressOfAValueChangesThatValueAlone() {
    MapNode tree = tree();
    AddressBook book = new AddressBook(tree);
    List<Scalar> values = scalars(tree);
    assertEquals(18, values.size());
    for (int i = 0; i < values.size(); i++) {
      String address = book.find(values.get(i)).orElseThrow();
      List<String> expected = new ArrayList<>(texts(tree));
      expected.set(i, "changed");
      assertEquals(expected, texts(Changes.apply(tree, address + "=changed")), address);
    }
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "water.temperature",
        "points.pond.shape.2.area",
        "points.\"fall no. 2\".crest",
        "points.\"a=b\".crest",
        "points.\"'quoted'\".crest",
        "lines.supply.pipe.size",
        "lines.supply.valve.open",
        "lines.supply.run.length",
        "lines.supply.valve 2.open",
        "lines.supply.run 2.length",
        "lines.supply.filter.points.1.head"
      })
  void addressesReadLikeChanges(String address) {
    MapNode tree = tree();
    AddressBook book = new AddressBook(tree);
    assertTrue(
        scalars(tree).stream().anyMatch(value -> book.find(value).orElseThrow().equals(address)));
  }

  @Test
  void whatIsNotInTheTreeHasNone() {
    AddressBook book = new AddressBook(tree());
    Scalar like = new Scalar("2 in", Scalar.Form.TEXT, Place.whole("elsewhere"));
    assertFalse(book.find(like).isPresent());
    assertFalse(book.findSection(like).isPresent());
  }

  /** Whoever names a value names it as a change would: a name with a dot in quotes. */
  @Test
  void sizesAndComparisonsNameALineAsAChangeDoes() throws IOException {
    Path pond = Path.of("../examples/small-pond/pond.yaml");
    String text = Files.readString(pond).replace("  supply:", "  no. 1:");
    Project project = ProjectReader.of(text, pond);
    Place place = Place.whole("a size");
    SizeOption size = new LineSizes(project, "no. 1").read("3 in", place);
    assertEquals(List.of("lines.\"no. 1\".pipe.size=3 in"), size.changes());
    assertTrue(SizeOption.tried(List.of(size)).contains("lines.\"no. 1\".pipe.size"));
    SizeOption other =
        new LineSizes(ProjectReader.read(pond, List.of()), "supply").read("3 in", place);
    assertEquals(List.of("lines.supply.pipe.size=3 in"), other.changes());
    Project longer =
        ProjectReader.of(text.replace("- run: 16 ft", "- run: 16 ft\n      - loss: {k: 1}"), pond);
    assertTrue(
        Entered.listBetween(project, longer).stream()
            .anyMatch(it -> it.address().equals("lines.\"no. 1\".parts")));
  }
}
