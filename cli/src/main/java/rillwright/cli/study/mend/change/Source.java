package rillwright.cli.study.mend.change;

import java.util.List;
import rillwright.cli.study.mend.site.Site;

/** A class of changes that may be tried. */
public interface Source {
  /**
   * What may be tried at a site.
   *
   * @return each with what takes its place where it does not mend, the handier first
   */
  List<List<Candidate>> candidates(Site site);
}
