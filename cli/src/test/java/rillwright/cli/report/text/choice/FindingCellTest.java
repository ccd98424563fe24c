package rillwright.cli.report.text.choice;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Severity;
import rillwright.solver.network.LineName;

class FindingCellTest {
  private static Finding found(String code, String at) {
    return Finding.of(Severity.ADVICE, code, at, "");
  }

  @Test
  void onlyASpeedElsewhereNamesItsLine() {
    List<Finding> findings =
        List.of(
            found("fast-discharge", "supply"),
            found("fast-discharge", "low"),
            found("far-from-best-efficiency", "supply"),
            found("over-target", "low fall"));

    assertEquals(
        "fast discharge, fast discharge in \"low\", far from best efficiency",
        FindingCell.of(findings, Set.of(new LineName("supply"))));
    assertEquals("none", FindingCell.of(List.of(found("under-target", "fall"))));
  }
}
