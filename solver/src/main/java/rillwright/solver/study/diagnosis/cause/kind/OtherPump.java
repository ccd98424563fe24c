package rillwright.solver.study.diagnosis.cause.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.solver.network.Pump;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.cause.CauseKind;
import rillwright.solver.study.diagnosis.cause.Effect;
import rillwright.solver.study.diagnosis.cause.Quantity;
import rillwright.solver.study.diagnosis.cause.Site;
import rillwright.solver.study.diagnosis.cause.SizeRange;
import rillwright.solver.study.diagnosis.job.Alteration;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.job.JobFacts;
import rillwright.solver.study.diagnosis.job.PartPlace;

/** Another pump stands there than the file says: one of those whose sheets it names. */
record OtherPump() implements CauseKind {

  @Override
  public String name() {
    return "other pump";
  }

  @Override
  public Quantity quantity() {
    return Quantity.ofNoSize("another data sheet of the file");
  }

  @Override
  public Optional<SizeRange> sizes() {
    return Optional.empty();
  }

  @Override
  public double weight() {
    return 0.02;
  }

  @Override
  public List<Site> sitesIn(AsBuilt job) {
    List<Site> sites = new ArrayList<>();
    for (PartPlace place : Places.ofParts(job.network(), Places::isRunningPump)) {
      Pump filed = (Pump) Places.part(job.network(), place);
      List<String> others = new ArrayList<>();
      List<JobFacts.Sheet> sheets = new ArrayList<>();
      for (Map.Entry<String, JobFacts.Sheet> entry : job.facts().sheets().entrySet()) {
        if (!entry.getValue().curve().equals(filed.set().curve())) {
          others.add(entry.getKey());
          sheets.add(entry.getValue());
        }
      }
      if (!others.isEmpty()) {
        sites.add(new Site(CauseId.at(name(), place), new Swap(place, others, sheets)));
      }
    }
    return sites;
  }

  private record Swap(PartPlace place, List<String> choices, List<JobFacts.Sheet> sheets)
      implements Effect {
    @Override
    public void apply(double which, Alteration job) {
      job.changePart(place, Pump.class, pump -> pump.withCurve(sheets.get((int) which).curve()));
    }
  }
}
