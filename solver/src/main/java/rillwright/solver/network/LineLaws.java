package rillwright.solver.network;

import java.util.ArrayList;
import java.util.List;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.SeriesLaw;

/**
 * The laws of a line in its setting.
 *
 * @param own of its entrance, parts and exit by themselves, in order; copied
 * @param withChanges the same in series, with what each change of bore takes counted to the second
 *     of its runs
 */
record LineLaws(List<HeadLaw> own, SeriesLaw withChanges) {
  LineLaws {
    own = List.copyOf(own);
  }

  static LineLaws of(Line line, Setting setting) {
    List<HeadLaw> own = new ArrayList<>();
    own.add(line.entrance().lawAtFrom());
    line.parts().forEach(part -> own.add(part.law(setting)));
    own.add(line.exit().lawAtTo());
    List<HeadLaw> all = new ArrayList<>(own);
    for (ChangeOfBore change : line.changesOfBore()) {
      int run = change.after().index() + 1;
      all.set(run, new SeriesLaw(List.of(change.law(), all.get(run))));
    }
    return new LineLaws(own, new SeriesLaw(all));
  }
}
