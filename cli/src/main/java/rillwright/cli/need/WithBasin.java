package rillwright.cli.need;

import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.Basin;

/** Refuses projects without open water, where its level is asked about. */
public final class WithBasin {
  private WithBasin() {}

  /** Throws unless there is a basin. */
  public static void require(Project project) {
    if (project.network().points(Basin.class).isEmpty()) {
      throw new InvalidInput(
          project.places().whole(),
          "no basin is in the file, so no level can fall or rise; write for example \"pond: {kind:"
              + " basin, level: 0 ft, area: 200 ft2}\"");
    }
  }

  /** Throws unless the shape of every basin is known, as it must be to follow levels in time. */
  public static void requireShapes(Project project) {
    for (Basin basin : project.network().points(Basin.class)) {
      if (basin.shape().isEmpty()) {
        throw new InvalidInput(
            project.places().ofPoint(basin.name()),
            "point "
                + PlainText.quoted(basin.name().value())
                + ": its area is needed to follow its level in time; write for example \"area: 200"
                + " ft2\"");
      }
    }
  }
}
