package rillwright.cli.need;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.pump.SheetFolder;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.curves.sheet.DataSheet;
import rillwright.solver.law.pump.MoreOutThanIn;

/** Separates data sheets that can be right from those whose output exceeds their input. */
public final class ImpossibleSheets {
  private ImpossibleSheets() {}

  /**
   * A folder without them; they are named among its faults.
   *
   * @throws InvalidInput if none is left
   */
  public static SheetFolder without(SheetFolder folder, Project project) {
    Map<String, DataSheet> possible = new LinkedHashMap<>();
    List<Fault> faults = new ArrayList<>(folder.faults());
    double density = project.network().water().densityKgPerM3();
    for (Map.Entry<String, DataSheet> entry : folder.sheets().entrySet()) {
      DataSheet sheet = entry.getValue();
      Optional<MoreOutThanIn> worst = MoreOutThanIn.find(sheet.curve(), density);
      if (worst.isPresent()) {
        Place file = Place.whole(sheet.name());
        faults.add(Fault.at(file, shown(worst.get(), Shown.of(project.show()))));
      } else {
        possible.put(entry.getKey(), sheet);
      }
    }
    if (possible.isEmpty()) {
      throw new InvalidInput(faults);
    }
    return new SheetFolder(possible, faults);
  }

  private static String shown(MoreOutThanIn worst, ShownUnits units) {
    return "power cannot be right: hydraulic output exceeds electrical input at "
        + units.writtenFlow(worst.flowM3PerS())
        + ": "
        + units.power(worst.waterPowerW())
        + " of water from "
        + units.power(worst.powerW())
        + "; check the unit";
  }
}
