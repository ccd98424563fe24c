package rillwright.cli.report.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.sheet.SheetFigures;
import rillwright.curves.sheet.DataSheet;
import rillwright.curves.unit.Dimension;
import rillwright.curves.wording.PlainText;
import rillwright.solver.finding.DoubtfulSheetDetector;
import rillwright.solver.law.pump.BestEfficiency;

/** What is to be known about a data sheet. */
public final class SheetRemarks {
  private SheetRemarks() {}

  /** Whole sentences; empty if there is nothing to say. */
  public static List<String> of(SheetFigures figures, ShownUnits units) {
    DataSheet sheet = figures.sheet();
    double density = figures.densityKgPerM3();
    List<String> remarks = new ArrayList<>();
    CurveNotes.of(sheet.curve(), density, units).forEach(note -> remarks.add(capital(note) + "."));
    DoubtfulSheetDetector.find(sheet.curve(), density, figures.model())
        .ifPresent(finding -> remarks.add(finding.message(units)));
    if (BestEfficiency.flowM3PerS(sheet.curve()).isEmpty()) {
      remarks.add("It gives no electrical power, so neither efficiency nor running cost is shown.");
    }
    if (sheet.reordered()) {
      remarks.add("Its points are not in order of flow; they are read in that order.");
    }
    if (!sheet.passedOver().isEmpty()) {
      remarks.add(
          "Only flow, head, power and NPSH required are read; passed over: "
              + PlainText.quoted(String.join(", ", sheet.passedOver()))
              + ".");
    }
    pressures(figures).ifPresent(remarks::add);
    return remarks;
  }

  private static Optional<String> pressures(SheetFigures figures) {
    return figures
        .sheet()
        .units()
        .filter(written -> written.head().dimension() == Dimension.PRESSURE)
        .map(
            written ->
                "Its heads are given as pressures in "
                    + written.head().symbol()
                    + "; they are turned into heads of water of "
                    + Math.round(figures.densityKgPerM3())
                    + " kg/m3.");
  }

  private static String capital(String sentence) {
    return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
  }
}
