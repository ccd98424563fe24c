package rillwright.solver.study.valvesetting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static rillwright.solver.study.valvesetting.Garden.pump;
import static rillwright.solver.study.valvesetting.Garden.quadratic;
import static rillwright.solver.study.valvesetting.Garden.valve;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rillwright.solver.network.Network;
import rillwright.solver.study.valvesetting.ValveSettingFinder.Aim;

/**
 * Falls along a pipe that is too narrow for them: which valves hold back changes at every trial.
 */
class ManyFallsTest {
  private static final int FALLS = 300;
  private static final double TARGET_M3_PER_S = 3e-4;

  /** Newton steps times lines; more where every step stops at the first valve that it meets. */
  private static final double MOST_WORK = 8e5;

  @Test
  void settingsAreFoundWithoutMeetingTheValvesOneByOne() {
    Random random = new Random(1);
    Garden garden = new Garden().basin("pond", 0).tee("tee 0");
    double greatest = 2 * FALLS * TARGET_M3_PER_S;
    garden.line("supply", "pond", "tee 0", pump(6, greatest));
    for (int i = 0; i < FALLS; i++) {
      if (i > 0) {
        garden.tee("tee " + i).line("stretch " + i, "tee " + (i - 1), "tee " + i, quadratic(4));
      }
      double target = TARGET_M3_PER_S * (0.8 + 0.4 * random.nextDouble());
      double loss = (5 + 10 * random.nextDouble()) * 1e6;
      garden.outlet("fall " + i, 1 + random.nextDouble(), target);
      garden.line("way " + i, "tee " + i, "fall " + i, valve(0), quadratic(loss));
    }
    Network network = garden.network();
    List<ValvePlace> places = ValvePlace.listAdjustable(network);
    assertEquals(FALLS, places.size());
    SearchLeft work = new SearchLeft(MOST_WORK);
    ValveSettings settings = ValveSettingFinder.find(network, places, Aim.LARGEST_SHARE, work);
    assertFalse(settings.cutShort());
  }
}
