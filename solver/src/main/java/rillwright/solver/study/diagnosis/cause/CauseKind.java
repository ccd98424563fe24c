package rillwright.solver.study.diagnosis.cause;

import java.util.List;
import java.util.Optional;
import rillwright.solver.study.diagnosis.job.AsBuilt;

/** A kind of cause: what it is called, how large it can be, where it can sit. */
public interface CauseKind {

  /** Its name. */
  String name();

  /** What it changes. */
  Quantity quantity();

  /** How large it can be; empty if it is there or not. */
  Optional<SizeRange> sizes();

  /** How likely it is before any reading, given that a fall is weak; common practice. */
  double weight();

  /** Where it can sit in a job. */
  List<Site> sitesIn(AsBuilt job);
}
