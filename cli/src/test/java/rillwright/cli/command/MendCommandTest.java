package rillwright.cli.command;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What mend says first, and of what is not enough. */
class MendCommandTest {
  private static final String OFF =
      "A pond that is topped up only with the pump off does not run over at a stop; then ";

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
        OFF + "this is enough: take pump P-400 for \"supply\", set",
        "about 60° from open or more (K 220; turn it until the flow is right)");
    Run.assertReported(
        mend("long-stream/stream.yaml", "--set", "points.spill box.target=7.5 m3/h"),
        OFF + "nothing has to be changed.");
  }

  @Test
  void oneFallHasNoOtherToThrottle() {
    Run.assertReported(
        mend("small-pond/pond.yaml"),
        "Or take a pump that makes 1,800 gph at 3.7 ft with the adjustable valves wide open. ");
  }
}
