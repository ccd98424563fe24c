package rillwright.cli.report.picture;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.study.balance.BalanceAnswer;
import rillwright.cli.study.balance.BalanceRequest;
import rillwright.cli.study.balance.ValveSweeps;
import rillwright.solver.progress.Progress;
import rillwright.solver.study.valvesetting.ValveSettingFinder.Aim;

/** What the picture of moved valves says of those that were not moved. */
class SharePictureTest {
  @Test
  void saysWhichOfManyValvesWereMoved() {
    Path file = Path.of("../examples/twin-falls/falls.yaml");
    BalanceAnswer answer =
        new BalanceRequest(List.of(), Aim.LARGEST_SHARE)
            .answer(ProjectReader.read(file, List.of()), Progress.UNSEEN);
    ValveSweeps all = ValveSweeps.of(answer);
    assertFalse(SharePicture.of(answer, all).caption().contains("Moved"));
    ValveSweeps some = new ValveSweeps(all.sweeps(), 24, 60);
    String caption = SharePicture.of(answer, some).caption();
    assertTrue(caption.contains("Moved: the first 24 of 60 valves."), caption);
  }
}
