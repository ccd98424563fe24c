package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of valves, in every combination of valves and targets. */
class BalanceWordsTest {
  private static final Path EXAMPLES = Path.of("..", "examples");
  private static final String PROJECT = EXAMPLES.resolve("twin-falls/ball-valves.yaml").toString();
  private static final String OWN_WAY =
      "\"high fall\" governs: it needs the most head, so the others are throttled and its own line"
          + " stays as it is.";

  @TempDir private Path folder;

  private static String text(List<String> arguments) {
    return Run.of(arguments.toArray(String[]::new)).flat();
  }

  private String changed(String from, String to) throws IOException {
    return TwinFalls.changed("ball-valves.yaml", folder, from, to);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "--valves low,high | so its valves stay wide open and the others are throttled",
        "--valves low | " + OWN_WAY,
        "--valves high | and none of these valves can throttle the others for it.",
        "--target | The pump gives more than the targets: the excess is throttled, and some of its"
            + " power is lost in the valves; a setting not held to the targets would give all of them more.",
        "--valves low --target | a setting not held to the targets would give the fall with the least more."
      })
  void whatDecidesTheShareIsTrueForTheValvesNamed(String options, String words) {
    List<String> arguments = new ArrayList<>(List.of("balance", PROJECT));
    arguments.addAll(List.of(options.split(" ")));
    String text = text(arguments);

    Run.assertReported(
        text,
        words,
        "Never shut all lines while it runs, but for the ten seconds of a gauge test.");
    assertEquals(
        options.contains("--target"), text.contains("a setting not held to the targets"), text);
  }

  @Test
  void tooMuchForEachNamesTheOption() {
    String troughs = EXAMPLES.resolve("header-pond/troughs.yaml").toString();
    Run.assertReported(
        text(List.of("balance", troughs)),
        "! These settings do not hold the falls to their targets: every fall at 130 % of its target."
            + " For the targets themselves, at which a remedy aims, use \"rillwright balance"
            + " --target\". SET IN THIS ORDER");
    String held = text(List.of("balance", troughs, "--target"));
    assertFalse(held.contains("share out all the water"), held);
  }

  @Test
  void openingBeyondThePublishedTableIsAGuess() throws IOException {
    String gate =
        changed("lip: stone, target: 90 gph/in}\n  high", "lip: stone, target: 48 gph/in}\n  high");
    String text = text(List.of("balance", gate, "--target", "--set", "lines.low.valve.type=gate"));

    Run.assertReported(text, "would stand nearly shut. Published losses end at 25 % open");
  }

  @Test
  void fallThatNoValveHoldsBackIsTheReasonAndNotThePump() {
    for (String valve : List.of("supply", "high")) {
      String text = text(List.of("balance", PROJECT, "--valves", valve));
      Run.assertReported(
          text,
          "The pump is strong enough for the targets, but \"high fall\" gets 90 % of its target",
          "The valve in \"low\" would, and leave more for the others: name that line too");
      assertFalse(text.contains("too small"), text);
    }
  }

  @Test
  void pumpWhoseCurveEndsBeforeTheTargetsLacksFlow() {
    String small = "lines.supply.pump=P-180";
    String one = text(List.of("balance", PROJECT, "--set", small, "--valves", "high"));
    Run.assertReported(
        one,
        "together they ask for 3,600 gph, and its curve ends at 3,233 gph. No fall gets less than");
  }

  @Test
  void pumpThatIsTooSmallEvenSoLacksLessHead() {
    String slow = "lines.supply.pump.speed=88 %";
    String one = text(List.of("balance", PROJECT, "--set", slow, "--valves", "high"));
    Run.assertReported(
        one, "of head, even with what goes elsewhere held back. No fall gets less than");
  }

  @Test
  void waterToAFallWithoutATargetMayBeClosedOff() throws IOException {
    String text =
        text(
            List.of(
                "balance",
                changed(
                    "width: 24 in, lip: stone, target: 90 gph/in", "width: 24 in, lip: stone")));
    Run.assertReported(
        text,
        "The pump is strong enough for the targets, but \"high fall\" gets 90 % of its target",
        "what runs through it is lost to the falls. Close it as far as that water can be spared");
    assertFalse(text.contains("stronger pump or"), text);
  }

  @Test
  void gateValveIsReportedByHowFarItIsOpenInTableAndPicture() throws IOException {
    Path picture = folder.resolve("share.svg");
    String project = changed("type: ball", "type: gate");
    String text = text(List.of("balance", project, "--chart", picture.toString()));
    Run.assertReported(text, "flow cut by 1 %", "low gate valve 56 % open 56 % 14 gph set here");
    Run.assertReported(Files.readString(picture), "56 % open: 103 % of the target", "open, %");
  }

  @Test
  void pictureShowsAValveThatChangesSomething() throws IOException {
    Path picture = folder.resolve("share.svg");
    text(List.of("balance", EXAMPLES + "/fish-pond/pond.yaml", "--chart", picture.toString()));
    String svg = Files.readString(picture);
    Run.assertReported(svg, "fall branch");
    assertFalse(svg.contains("filter branch"), svg);
  }

  @Test
  void fallsWithWaysOfTheirOwnNeedNoSecondRound() throws IOException {
    String file =
        """
        rillwright: 1
        title: apart
        show: metric
        points:
          header: {kind: basin, level: 3 m}
          near: {kind: outlet, elevation: 0 m, target: 2 m3/h}
          far: {kind: outlet, elevation: 0 m, target: 2 m3/h}
        lines:
          to near:
            from: header
            to: near
            pipe: {inside: 50 mm, factor: 0.02}
            parts: [{run: 5 m}, {valve: {type: ball, open: 100 %, adjustable: yes}}]
          to far:
            from: header
            to: far
            pipe: {inside: 50 mm, factor: 0.02}
            parts: [{run: 25 m}, {valve: {type: ball, open: 100 %, adjustable: yes}}]
        """;
    String project = Files.writeString(folder.resolve("apart.yaml"), file).toString();

    String text = text(List.of("balance", project));
    Run.assertReported(text, "Each fall has its own line");
    assertFalse(text.contains("goes to the other falls"), text);
    Run.assertReported(
        text(List.of("balance", EXAMPLES + "/header-pond/troughs.yaml")),
        "Closing it raises the other falls: time all of them again");
  }
}
