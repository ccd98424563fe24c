package rillwright.cli.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rillwright.cli.file.ProjectReader;
import rillwright.solver.finding.Finding;

class SheetFindingsTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "none",
      value = {
        "twin-falls/falls.yaml | parallel | none",
        "twin-falls/falls.yaml | series   | submersible-in-series",
        "fish-pond/pond.yaml   | series   | none"
      })
  void onlySubmersiblePumpsMayNotStandInSeries(String example, String arranged, String code) {
    List<String> two =
        List.of("lines.supply.pump.count=2", "lines.supply.pump.arranged=" + arranged);
    Path file = Path.of("..", "examples").resolve(example);

    List<String> codes =
        SheetFindings.of(ProjectReader.read(file, two)).stream().map(Finding::code).toList();
    assertEquals(code == null ? List.of() : List.of(code), codes);
  }
}
