package rillwright.solver.study.diagnosis.cause.kind;

import java.util.List;
import java.util.Optional;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.cause.CauseKind;
import rillwright.solver.study.diagnosis.cause.Quantity;
import rillwright.solver.study.diagnosis.cause.Site;
import rillwright.solver.study.diagnosis.cause.SizeRange;
import rillwright.solver.study.diagnosis.job.AsBuilt;

/** All is as it was built: as built, it is undersized. */
record NothingWrong() implements CauseKind {

  @Override
  public String name() {
    return CauseTable.NOTHING_WRONG;
  }

  @Override
  public Quantity quantity() {
    return Quantity.ofNoSize("all as built");
  }

  @Override
  public Optional<SizeRange> sizes() {
    return Optional.empty();
  }

  @Override
  public double weight() {
    return 0.05;
  }

  @Override
  public List<Site> sitesIn(AsBuilt job) {
    return List.of(new Site(CauseId.anywhere(name()), (size, altered) -> {}));
  }
}
