package rillwright.cli.file.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.cli.file.fault.InvalidInput;

class TreeReaderTest {

  private static MapNode read(String name, String text) {
    return TreeReader.read(SourceText.of(name, text.getBytes(StandardCharsets.UTF_8)));
  }

  private static String faultsOf(String name, String text) {
    return assertThrows(InvalidInput.class, () -> read(name, text)).getMessage();
  }

  private static Node at(MapNode tree, String... path) {
    Node node = tree;
    for (String step : path) {
      node =
          node instanceof MapNode map
              ? map.find(step).orElseThrow().value()
              : ((ListNode) node).items().get(Integer.parseInt(step));
    }
    return node;
  }

  @Test
  void everyNameAndValueKnowsItsPlace() {
    MapNode tree = read("p.yaml", "# x\na: 38 ft\nb:\n  - {k: 2, 'l m': \"x\"}\n  -   run: 3\n");
    assertEquals("p.yaml:2:1", tree.find("a").orElseThrow().keyPlace().toString());
    assertEquals("p.yaml:2:4", at(tree, "a").place().toString());
    assertEquals("p.yaml:4:3", at(tree, "b").place().toString());
    assertEquals("p.yaml:4:5", at(tree, "b", "0").place().toString());
    assertEquals("p.yaml:4:9", at(tree, "b", "0", "k").place().toString());
    assertEquals("p.yaml:4:19", at(tree, "b", "0", "l m").place().toString());
    assertEquals("p.yaml:5:12", at(tree, "b", "1", "run").place().toString());
  }

  @Test
  void jsonNamesAndValuesKnowTheirPlacesToo() {
    MapNode tree = read("p.json", "{\n  \"a\": \"38 ft\",\n  \"b\": [true, 1.5e3, null]\n}");
    assertEquals("p.json:2:3", tree.find("a").orElseThrow().keyPlace().toString());
    assertEquals("p.json:2:8", at(tree, "a").place().toString());
    assertEquals("p.json:3:15", at(tree, "b", "1").place().toString());
  }

  @ParameterizedTest(name = "{0} is {1} \"{2}\"")
  @CsvSource({
    "38 ft, TEXT, 38 ft",
    "38, NUMBER, 38",
    "-1.50, NUMBER, -1.50",
    ".5, TEXT, .5",
    "no, TEXT, no",
    "true, TRUTH, true",
    "010, TEXT, 010",
    "1-1/2 in, TEXT, 1-1/2 in",
    "-1 ft 6 in, TEXT, -1 ft 6 in",
    "'null', NOTHING, ''",
    "'', NOTHING, ''",
    "60 ft ± 5 ft, TEXT, 60 ft ± 5 ft"
  })
  void valuesKeepTheTextThatWasWritten(String written, Scalar.Form form, String text) {
    Scalar scalar = (Scalar) at(read("p.yaml", "a: " + written + "\n"), "a");
    assertEquals(form, scalar.form());
    assertEquals(text, scalar.text());
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"p.json, true", "p, true", "p.JSON, true", "p.yaml, false", "p.yml, false"})
  void aFileIsJsonByItsNameOrItsFirstBrace(String name, boolean json) {
    String text = json ? "{\"a\": \"x\"}" : "{a: x}";
    assertEquals("x", ((Scalar) at(read(name, text), "a")).text());
  }

  @Test
  void jsonIsYamlTooWhateverItsIndentation() {
    assertEquals("1", ((Scalar) at(read("p.yaml", "{\n\t\"a\": 1\n}\n"), "a")).text());
  }

  @Test
  void aByteOrderMarkIsPassedOver() {
    MapNode tree = read("p.yaml", "\uFEFFa: 1\n");
    assertEquals("p.yaml:1:1", tree.find("a").orElseThrow().keyPlace().toString());
  }

  @ParameterizedTest
  @CsvSource({"'a: 1\r\nb: 2\r\n', 2:4", "'a: 1\rb: 2\r', 2:4", "'a: 1\n\nb: 2', 3:4"})
  void anyLineEndsCount(String text, String place) {
    assertEquals("p.yaml:" + place, at(read("p.yaml", text), "b").place().toString());
  }

  @Test
  void aDecimalCommaInBracesIsJoinedAgain() {
    MapNode tree = read("p.yaml", "a: {flow: 1,5 m3/h, head: 2 m}\n");
    assertEquals("1,5 m3/h", ((Scalar) at(tree, "a", "flow")).text());
    assertEquals("2 m", ((Scalar) at(tree, "a", "head")).text());
  }

  static Stream<Arguments> wrongYaml() {
    return Stream.of(
        Arguments.of(
            "a: b: c",
            "1:5: \":\" cannot stand here; look at the indentation of this line and the one before,"
                + " and put a text that holds \": \" in quotes"),
        Arguments.of(
            "a: 1\n\tb: 2",
            "2:1: a tab stands where the line is indented; indent with" + " spaces only"),
        Arguments.of("a: [1, 2", "1:4: the list that begins here is not closed"),
        Arguments.of("x: 1\na: {b: 1", "2:4: the brace that begins here is not closed"),
        Arguments.of(
            "title: 'Miller's place'",
            "1:16: an apostrophe inside '...' ends the text; put the text in double quotes:"
                + " \"...\""),
        Arguments.of(
            "a: {title: 'Miller's place'}",
            "1:20: an apostrophe inside '...' ends the text; put the text in double quotes:"
                + " \"...\""),
        Arguments.of(
            "a: \"the \"new\" pond\"",
            "1:10: a double quote inside \"...\" ends the text; put the text in single quotes:"
                + " '...'"),
        Arguments.of("a: 'x", "1:4: the quote that begins here is not closed"),
        Arguments.of("a: @x", "1:4: \"@\" cannot begin a value; put the value in quotes"),
        Arguments.of("a: %60", "1:4: \"%\" cannot begin a value; put the value in quotes"),
        Arguments.of("a: 1\nb\nc: 2", "2:1: \": \" is missing after this name"),
        Arguments.of(
            "a: - 5 in",
            "1:4: \"- \" begins a list item and cannot stand here; write a negative number without"
                + " a space after the sign"),
        Arguments.of(
            "a:\n  b: 1\n c: 2",
            "3:2: this does not fit what stands before it; look at the indentation, and put a text"
                + " with quotes or brackets in it in quotes as a whole"),
        Arguments.of(
            "a: 1\n---\nb: 2",
            "3:1: this stands after the end of the project; a file holds one project"),
        Arguments.of(
            "- a", "1:1: a project begins with fields such as \"rillwright: 1\", not with a value"),
        Arguments.of(
            "a:1", "1:1: a project begins with fields such as \"rillwright: 1\", not with a value"),
        Arguments.of(
            "a: \u0007",
            "1:4: the character with the number 0007 may not stand in a project file; delete it"),
        Arguments.of(
            "a: 1\na: 2\nb: 3\nb: 4",
            "2:1: \"a\" is here twice, first in line 1\n"
                + "p.yaml:4:1: \"b\" is here twice, first in line 3"));
  }

  @ParameterizedTest
  @MethodSource
  void wrongYaml(String text, String fault) {
    assertEquals("p.yaml:" + fault, faultsOf("p.yaml", text));
  }

  static Stream<Arguments> wrongJson() {
    return Stream.of(
        Arguments.of("{\"a\": 1", "the file ends before every bracket and quote is closed"),
        Arguments.of("{\"a\": ft}", "\"ft\" needs quotes around it"),
        Arguments.of(
            "{\"a\": 1,}",
            "\"}\" is not expected here; look for a missing quote, comma or bracket before it"),
        Arguments.of(
            "a: 1",
            "a project in JSON begins with \"{\"; if it is YAML, end the file's name in .yaml"));
  }

  @ParameterizedTest
  @MethodSource
  void wrongJson(String text, String fault) {
    String shown = faultsOf("p.json", text);
    assertTrue(shown.matches("p\\.json:1:\\d+: .*"), shown);
    assertTrue(shown.endsWith(": this is not JSON: " + fault), shown);
  }

  @ParameterizedTest
  @CsvSource({
    "'a: &x 1', 1:4",
    "'a: &x {b: 1}', 1:4",
    "'a: &x\n  b: 1', 1:4",
    "'&x a: 1', 1:1",
    "'a: [&x 1]', 1:5",
    "'a: !!int 3', 1:4",
    "'a: !x {b: 1}', 1:4",
    "'a: *x', 1:4"
  })
  void partsOfYamlThatHideWhatAFileSaysAreRefused(String text, String place) {
    assertTrue(faultsOf("p.yaml", text).startsWith("p.yaml:" + place + ": \""), text);
  }

  @Test
  void quotedTextMayBeginWithAnything() {
    assertEquals("&x", ((Scalar) at(read("p.yaml", "a: '&x'"), "a")).text());
    assertEquals("*x", ((Scalar) at(read("p.yaml", "a: \"*x\""), "a")).text());
  }

  @ParameterizedTest
  @CsvSource({"p.yaml, [", "p.json, [", "p.yaml, {a: ", "p.json, {\"a\": "})
  void deepNestingIsRefusedBeforeItCosts(String name, String opening) {
    String text = (name.endsWith("json") ? "{\"x\": " : "x: ") + opening.repeat(100_000);
    assertTrue(
        faultsOf(name, text).endsWith("this is nested more than 40 deep; no project needs that"));
  }

  @Test
  void aProjectMayBeLongerThanItsParserUsuallyReads() {
    String text = ("#" + "x".repeat(100) + "\n").repeat(40_000) + "a: 1";
    assertEquals("1", ((Scalar) at(read("p.yaml", text), "a")).text());
  }

  @Test
  void shortValuesWithoutEndAreRefused() {
    SourceText text = new SourceText("p.yaml", "a: [1, 2, 3, 4, 5]");
    InvalidInput wrong = assertThrows(InvalidInput.class, () -> TreeReader.read(text, 4));
    assertEquals(
        "p.yaml:1:11: from here on there are too many values; no project needs them",
        wrong.getMessage());
    assertEquals(1, TreeReader.read(text, 7).entries().size());
  }

  @Test
  void escapesInAFileNeverReachTheTerminal() {
    String shown = faultsOf("p\u001b[31m.yaml", "\"\\e[2J\": 1\n\"\\e[2J\": 2\n");
    assertEquals("p\\u001b[31m.yaml:2:1: \"\\u001b[2J\" is here twice, first in line 1", shown);
  }
}
