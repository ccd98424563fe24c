package rillwright.cli.file.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.file.tree.SourceText;

/** An edit writes what is new and leaves the rest as it is written. All data is invented. */
class EditedTextTest {
  static final String POND =
      """
      # A pond; all data is invented.
      rillwright: 1
      title:   'A pond: small'   # the name

      points:   # levels by laser
        pond: {kind: basin, level: 0 ft}
        # the stone that we found
        fall: {kind: fall, crest: 4 ft, width: 30 in}   # level it
        jet:
            kind: outlet
            elevation: "1 m"      # by eye

      lines:
        supply:
          from: pond
          to: fall     # the upper
          parts:
            - pump: small
            # a long way
            - run: 20 ft          # paced
            - valve: {type: ball, open: 100 %}
            - run:
                length: 3 ft
                inside: 1,5 in
        jet:
          from: pond
          to: jet
          parts: [run: 1 m, {fitting: {k: 1}}]
      pumps: {small: small.csv}

      readings:
      - {at: fall, flow: 100 gph}
      - {at: jet, flow: 80 gph, when: valve shut, valve: supply}
      conditions:
        dry: {points: {pond: {level: -1 ft}}, lines: {supply: {pump: {speed: 90 %}}}}
      # the end
      """;

  static EditedText of(String text) {
    return EditedText.of(new SourceText(text.startsWith("{") ? "p.json" : "p.yaml", text));
  }

  /** What an edit makes of the pond is the pond with some pieces of its text replaced. */
  private static void assertEdit(UnaryOperator<EditedText> edit, String... fromTo) {
    for (String lineBreak : new String[] {"\n", "\r\n"}) {
      String pond = POND.replace("\n", lineBreak);
      String expected = pond;
      for (int i = 0; i < fromTo.length; i += 2) {
        String from = fromTo[i].replace("\n", lineBreak);
        assertTrue(expected.contains(from), from);
        expected = expected.replace(from, fromTo[i + 1].replace("\n", lineBreak));
      }
      assertEquals(expected, edit.apply(of(pond)).text());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "title=New | 'A pond: small' | New",
        "title=New: # 1 | 'A pond: small' | 'New: # 1'",
        "title='It''s: new' | 'A pond: small' | '''It''''s: new'''",
        "points.fall.crest=5 ft | 4 ft | 5 ft",
        "points.fall.crest=a, b | 4 ft | 'a, b'",
        "points.fall.width=0,8 m | 30 in | 0,8 m",
        "points.jet.elevation=2 m ± 1 in | \"1 m\" | 2 m ± 1 in",
        "lines.supply.run.length=21 ft | 20 ft | 21 ft",
        "lines.supply.run=21 ft | 20 ft | 21 ft",
        "lines.supply.run.roughness=1 mm | 20 ft  | {length: 20 ft, roughness: 1 mm}",
        "lines.supply.run 2.inside=2 in | 1,5 in | 2 in",
        "lines.supply.pump=null | pump: small | pump: 'null'",
        "lines.supply.pump.speed=90 % | pump: small | pump: {model: small, speed: 90 %}",
        "lines.jet.run.length=2 m | run: 1 m | run: 2 m",
        "lines.jet.fitting.count=2 | {k: 1} | {k: 1, count: 2}",
        "points.fall.target=null | width: 30 in | width: 30 in, target: 'null'",
        "readings.1.flow=90 gph | flow: 100 gph | flow: 90 gph",
        "conditions.dry.points.pond.level=-2 ft | -1 ft | -2 ft"
      })
  void aValueIsSetAlone(String change, String from, String to) {
    assertEdit(text -> text.set(change), from, to);
  }

  @Test
  void aFieldThatIsNotThereIsWrittenWhereAPersonWouldWriteIt() {
    assertEdit(
        text -> text.set("points.jet.level=0 m"),
        "      elevation: \"1 m\"      # by eye\n",
        "      elevation: \"1 m\"      # by eye\n      level: 0 m\n");
    assertEdit(
        text -> text.set("lines.supply.pipe.size=2 in"),
        "    to: fall     # the upper\n",
        "    to: fall     # the upper\n    pipe: {size: 2 in}\n");
    assertEdit(text -> text.set("show=metric"), "   # the name\n", "   # the name\nshow: metric\n");
    assertEdit(
        text -> text.set("lines.supply.new fitting.k=1"),
        "          inside: 1,5 in\n",
        "          inside: 1,5 in\n      - fitting: {k: 1}\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "title=A pond: small",
        "points.jet.elevation=1 m",
        "lines.supply.run=20 ft",
        "lines.supply.run.length=20 ft",
        "lines.supply.run 2.inside=1,5 in"
      })
  void aValueThatIsThereAlreadyChangesNothing(String change) {
    EditedText text = of(POND);
    assertSame(text, text.set(change));
  }

  @Test
  void pointsAndLinesAreAdded() {
    assertEdit(
        text -> text.add("points.low fall", "{kind: fall, crest: 2 ft}"),
        "      elevation: \"1 m\"      # by eye\n",
        "      elevation: \"1 m\"      # by eye\n  low fall: {kind: fall, crest: 2 ft}\n");
    assertEdit(
        text ->
            text.add(
                "lines.low",
                "{from: pond, to: fall, parts: [run: 3 ft, valve: {type: ball, open: 50 %}]}"),
        "{fitting: {k: 1}}]\n",
        """
        {fitting: {k: 1}}]
          low:
            from: pond
            to: fall
            parts:
              - run: 3 ft
              - valve: {type: ball, open: 50 %}
        """);
    assertEdit(
        text -> text.add("pumps.large", "large.csv"),
        "{small: small.csv}",
        "{small: small.csv, large: large.csv}");
    assertEdit(
        text -> text.add("signs", "[for weeks]"),
        "valve: supply}\n",
        "valve: supply}\nsigns: [for weeks]\n");
    assertEdit(
        text -> text.add("streams", "{main: {from: fall, to: pond, reaches: [{length: 1 m}]}}"),
        "small.csv}\n",
        """
        small.csv}

        streams:
          main:
            from: fall
            to: pond
            reaches:
              - length: 1 m
        """);
  }

  @Test
  void whatIsRemovedTakesItsLineAndLeavesCommentsOfTheirOwn() {
    assertEdit(
        text -> text.remove("points.fall"),
        "  fall: {kind: fall, crest: 4 ft, width: 30 in}   # level it\n",
        "");
    assertEdit(text -> text.remove("points.fall.crest"), ", crest: 4 ft", "");
    assertEdit(text -> text.remove("points.fall.kind"), "kind: fall, ", "");
    assertEdit(text -> text.remove("points.fall.width"), ", width: 30 in", "");
    assertEdit(
        text -> text.remove("lines.supply.run"), "      - run: 20 ft          # paced\n", "");
    assertEdit(
        text -> text.remove("lines.supply.run 2"),
        "      - run:\n          length: 3 ft\n          inside: 1,5 in\n",
        "");
    assertEdit(text -> text.remove("lines.supply.pump"), "      - pump: small\n", "");
    assertEdit(text -> text.remove("lines.jet.run"), "run: 1 m, ", "");
    assertEdit(text -> text.remove("pumps.small"), "pumps: {small: small.csv}\n", "");
    assertEdit(
        text -> text.remove("readings.2"),
        "- {at: jet, flow: 80 gph, when: valve shut, valve: supply}\n",
        "");
    assertEdit(text -> text.remove("title"), "title:   'A pond: small'   # the name\n", "");
    assertEdit(
        text -> text.remove("points.jet.kind").remove("points.jet.elevation"),
        ":\n      kind: outlet\n      elevation: \"1 m\"      # by eye\n",
        ": {}\n");
  }

  @Test
  void partsAreInsertedAndMovedWithTheirComments() {
    assertEdit(
        text -> text.insert("lines.supply.parts", 1, "gauge: {name: G1, elevation: 0 ft}"),
        "      - pump: small\n",
        "      - gauge: {name: G1, elevation: 0 ft}\n      - pump: small\n");
    assertEdit(
        text -> text.insert("lines.jet.parts", 2, "run: 2 m"),
        "[run: 1 m, {",
        "[run: 1 m, {run: 2 m}, {");
    assertEdit(
        text -> text.move("lines.supply.parts", 2, 1),
        "      - pump: small\n      # a long way\n      - run: 20 ft          # paced\n",
        "      # a long way\n      - run: 20 ft          # paced\n      - pump: small\n");
    assertEdit(
        text -> text.move("lines.jet.parts", 1, 2),
        "[run: 1 m, {fitting: {k: 1}}]",
        "[{fitting: {k: 1}}, run: 1 m]");
    assertEdit(
        text -> text.insert("readings", 3, "{at: fall, crest head: 1 in}"),
        "valve: supply}\n",
        "valve: supply}\n- {at: fall, crest head: 1 in}\n");
  }

  @Test
  void aNewNameIsWrittenWhereverTheOldOneIs() {
    assertEdit(
        text -> text.rename("points.fall", "top: high"),
        "  fall: {",
        "  'top: high': {",
        "to: fall ",
        "to: 'top: high' ",
        "at: fall",
        "at: 'top: high'");
    assertEdit(
        text -> text.rename("points.pond", "basin"),
        "  pond: {",
        "  basin: {",
        "from: pond",
        "from: basin",
        "{pond: {level",
        "{basin: {level");
    assertEdit(
        text -> text.rename("lines.supply", "main"),
        "  supply:\n",
        "  main:\n",
        "valve: supply",
        "valve: main",
        "{supply: {pump",
        "{main: {pump");
    assertEdit(
        text -> text.rename("pumps.small", "P-1"),
        "{small: small.csv}",
        "{P-1: small.csv}",
        "pump: small",
        "pump: P-1");
  }

  @Test
  void jsonIsEditedLikewise() {
    String json =
        "{\n\t\"title\": \"a \\\"b\\\" 😀\",\n\t\"points\": {\"pond\": {\"level\":\"0 ft\"}}\n}\n";
    assertEquals(json.replace("0 ft", "1 \\\"ft"), of(json).set("points.pond.level=1 \"ft").text());
    assertEquals(
        json.replace("\"0 ft\"", "\"0 ft\", \"kind\": \"basin\""),
        of(json).set("points.pond.kind=basin").text());
    assertEquals(
        json.replace(",\n\t\"points\"", ",\n\t\"show\": \"us\",\n\t\"points\""),
        of(json).set("show=us").text());
    assertEquals(
        json.replace("\t\"title\": \"a \\\"b\\\" 😀\",\n", ""), of(json).remove("title").text());
  }

  @Test
  void noLastLineBreakAndOtherCharactersAreKept() {
    String text = "title: 😀 two  # 😀\npoints:\n  \"p 😀\": {level: 0 ft}";
    assertEquals(text.replace("0 ft", "1 ft"), of(text).set("points.p 😀.level=1 ft").text());
    assertEquals(text + "\n  q: {level: 1 ft}", of(text).add("points.q", "{level: 1 ft}").text());
  }
}
