package rillwright.cli.catalogue;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import rillwright.solver.law.Bore;

/** Something whose numbers may hold for one bore only. */
interface Sized {
  /** What kind it is, as project files name it. */
  String type();

  /** The bore for which it holds; empty if for all. */
  Optional<Bore> bore();

  /** Of the rows of a type the one whose bore is nearest, by ratio. */
  static <T extends Sized> Optional<T> nearest(List<T> rows, String type, Bore bore) {
    String wanted = Spelling.plain(type);
    return rows.stream()
        .filter(row -> Spelling.isSpelling(row.type(), wanted))
        .min(Comparator.comparingDouble(row -> distance(row, bore)));
  }

  private static double distance(Sized row, Bore bore) {
    return row.bore()
        .map(own -> Math.abs(Math.log(own.diameterM() / bore.diameterM())))
        .orElse(0.0);
  }
}
