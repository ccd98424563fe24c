package rillwright.cli.report.weak;

import rillwright.curves.wording.PlainText;
import rillwright.solver.network.LineName;
import rillwright.solver.network.PointName;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.job.AsBuilt;

/** Where a cause sits. */
public final class CausePlace {
  private CausePlace() {}

  /** In words: {@code "supply", part 3: ball valve}; empty if it has no place. */
  public static String words(CauseId id, AsBuilt job) {
    if (id.at().isEmpty()) {
      return "";
    }
    String at = PlainText.quoted(id.at().get());
    if (id.part().isEmpty()) {
      return at;
    }
    int part = id.part().getAsInt();
    String label = job.network().line(new LineName(id.at().get())).parts().get(part - 1).label();
    return at + ", part " + part + (label.isEmpty() ? "" : ": " + PlainText.harmless(label));
  }

  /** The same without what the part is: {@code "supply", part 3}. */
  public static String shortly(CauseId id) {
    return id.at().map(PlainText::quoted).orElse("")
        + (id.part().isPresent() ? ", part " + id.part().getAsInt() : "");
  }

  /** What the pumps of its circuit move as built, m³/s; 0 if it has no place. */
  static double pumpFlowM3PerS(CauseId id, AsBuilt job) {
    if (id.at().isEmpty()) {
      return 0;
    }
    String at = id.at().get();
    return isLine(at, job)
        ? job.pumpFlowM3PerS(new LineName(at))
        : job.pumpFlowM3PerS(new PointName(at));
  }

  private static boolean isLine(String name, AsBuilt job) {
    return job.network().lines().stream().anyMatch(line -> line.name().value().equals(name));
  }
}
