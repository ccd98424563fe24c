package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

/** What mend says first, and of what is not enough. */
class MendCommandTest {
  private static final String OFF =
      "A pond that is topped up only with the pump off does not run over at a stop; then ";

  private static final Pattern SPEED = Pattern.compile("speed=(\\d+) %");
  private static final double TARGET_M3_PER_S = 9.0 / 3600;

  private static String mend(String project, String... more) {
    List<String> arguments = new ArrayList<>(List.of("mend", "../examples/" + project));
    arguments.addAll(List.of(more));
    return Run.of(arguments.toArray(String[]::new)).flat();
  }

  @Test
  void pumpThatGivesTooMuchIsThrottledOnlyWhereValvesAloneAreNotEnough() {
    Run.assertReported(
        mend("twin-falls/ball-valves.yaml"),
        "Take pump P-600 for \"supply\" 2,710 gph 125.4 %",
        "A fall left over 125 % has to be throttled as well. Setting valves alone is enough (1 under"
            + " MEET EVERY TARGET), so another pump with valves set too is listed only where it"
            + " draws less.",
        "with the adjustable valves wide open, then the other falls throttled to their targets.");
  }

  @Test
  void pondThatRunsOverAtStopHasTheCureThatCostsNothing() {
    Run.assertReported(
        mend("long-stream/stream.yaml"),
        "For the targets alone, another pump has to make 9 m3/h at 2.91 m",
        OFF + "there is less to change: take pump P-400 for \"supply\", set",
        "about 60° from open or more (K 220; turn it until the flow is right)");
    Run.assertReported(
        mend("long-stream/stream.yaml", "--set", "points.spill box.target=7.5 m3/h"),
        OFF
            + "no other need is left. While it runs, \"pond\" then has only 36 L above the level at"
            + " which it starves; evaporation is not in the file.");
  }

  /** At the levels that run a percent less would miss the target of 9 m3/h, whatever the pond. */
  @Test
  void aPumpRunsNoFasterWithALargerPondThanItsTargetAsks() {
    int slowed = 0;
    for (JsonNode remedy :
        Run.json("mend", LongStream.PROJECT, "--from", LongStream.SUPPLIER).get("remedies")) {
      List<String> set = remedy.get("set").valueStream().map(JsonNode::stringValue).toList();
      String all = String.join("\t", set);
      Matcher speed = SPEED.matcher(all);
      if (remedy.get("mends").booleanValue() && all.contains("points.pond") && speed.find()) {
        String slower = "speed=" + (Integer.parseInt(speed.group(1)) - 1) + " %";
        assertTrue(runningM3PerS(set) >= TARGET_M3_PER_S, all);
        assertTrue(
            runningM3PerS(List.of(speed.replaceFirst(slower).split("\t"))) < TARGET_M3_PER_S, all);
        slowed++;
      }
    }
    assertTrue(slowed > 1, slowed + " remedies");
  }

  private static double runningM3PerS(List<String> set) {
    List<String> stream =
        new ArrayList<>(List.of("stream", LongStream.PROJECT, "--sheets", LongStream.SUPPLIER));
    set.forEach(change -> stream.addAll(List.of("--set", change)));
    return Run.json(stream.toArray(String[]::new))
        .get("streams")
        .get("main")
        .get("flowM3PerS")
        .doubleValue();
  }

  @ParameterizedTest
  @CsvSource({
    "lines.intake.skimmer.sill=2 in, 2 in below the sill of the skimmer in \"intake\"",
    "points.fall.crest=-30 in, 30 in below the water that it should fall into: check the sign",
  })
  void whatIsWrongInTheFileIsSaidHereToo(String change, String said) {
    Run.assertReported(mend("small-pond/pond.yaml", "--set", change), said);
  }

  @Test
  void oneFallHasNoOtherToThrottle() {
    Run.assertReported(
        mend("small-pond/pond.yaml"),
        "Or take a pump that makes 1,800 gph at 3.7 ft with the adjustable valves wide open. ");
  }

  /** As "stream" warns of it: 0.8 days as a whole, 0.3 of the lesser change. */
  @Test
  void littleRoomIsSaidWhereThePondSoonStarves() {
    String dry = mend("long-stream/dry.yaml");
    Run.assertReported(
        dry,
        "While it runs, \"pond\" then has only 261 L above the level at which it starves, 19.5"
            + " hours without topping up.",
        OFF + "there is less to change: set the valve",
        "only 87 L above the level at which it starves, 7.6 hours without topping up.",
        "MEET THE NEEDS ABOVE",
        "little: 87 L, 7.6 hours");
    assertFalse(dry.contains("MEET EVERY NEED") || dry.contains("is enough:"), dry);
    Run.assertReported(
        Run.of(
                "stream",
                "../examples/long-stream/dry.yaml",
                "--set",
                "lines.supply.valve.k=106",
                "--set",
                "lines.intake.skimmer.height=125 mm",
                "--set",
                "lines.intake.skimmer.sill=-100 mm")
            .flat(),
        "0.3 days of evaporation and splash");
  }

  /** Where days are asked for the room is enough, and the heading says that all is met. */
  @Test
  void roomForAWeekIsNotLittle() {
    String week = mend("long-stream/dry.yaml", "--days", "7");
    assertFalse(week.contains("MEET THE NEEDS ABOVE"), week);
  }
}
