package rillwright.cli.command;

import org.junit.jupiter.api.Test;

/** What mend says first, and of what is not enough. */
class MendCommandTest {
  private static String mend(String project) {
    return Run.of("mend", "../examples/" + project).flat();
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
        "A pond that is topped up only with the pump off does not run over at a stop; then this is"
            + " enough: take pump P-400 for \"supply\", set");
  }

  @Test
  void oneFallHasNoOtherToThrottle() {
    Run.assertReported(
        mend("small-pond/pond.yaml"),
        "Or take a pump that makes 1,800 gph at 3.7 ft with the adjustable valves wide open. ");
  }
}
