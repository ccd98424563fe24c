package rillwright.solver.study.diagnosis.cause.kind;

import java.util.List;
import java.util.Optional;
import rillwright.solver.law.weir.TiltedCrest;
import rillwright.solver.law.weir.WiderCrest;
import rillwright.solver.network.Fall;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.cause.CauseKind;
import rillwright.solver.study.diagnosis.cause.Quantity;
import rillwright.solver.study.diagnosis.cause.Site;
import rillwright.solver.study.diagnosis.cause.SizeRange;
import rillwright.solver.study.diagnosis.job.Alteration;
import rillwright.solver.study.diagnosis.job.AsBuilt;
import rillwright.solver.study.diagnosis.job.Look;

/** A cause at a fall. */
record FallFault(
    String name, Quantity quantity, SizeRange range, double weight, boolean needsCrest, At effect)
    implements CauseKind {
  /** Twelve millimetres are as plain to see as 15 % of anything; common practice, no source. */
  private static final double SEEN_PER_M_LOW = 0.15 / 0.012;

  /** What it makes of a fall. */
  interface At {
    void apply(Fall fall, double size, Alteration job);
  }

  static FallFault moreLift() {
    return new FallFault(
        "more lift than drawn",
        Quantity.length("how much higher the crest is", 100),
        SizeRange.even(0.05, 2),
        0.01,
        false,
        (fall, size, job) ->
            job.changePoint(
                Fall.class, fall.name(), f -> f.withCrest(f.crestM() + size, f.weir())));
  }

  static FallFault streamLeak() {
    return new FallFault(
        "stream leak",
        Quantity.share("share lost between crest and reading"),
        SizeRange.even(0.05, 0.7),
        0.04,
        false,
        (fall, size, job) -> {
          job.show(Look.GROUND, fall.name().value(), size);
          job.loseAfter(fall.name(), size, true);
        });
  }

  /** It runs down behind the stones and comes back to the pond unseen. */
  static FallFault behindTheRocks() {
    return new FallFault(
        "water behind the rocks",
        Quantity.share("share that runs behind the rocks"),
        SizeRange.even(0.05, 0.7),
        0.03,
        false,
        (fall, size, job) -> {
          job.show(Look.ROCKS, fall.name().value(), size);
          job.loseAfter(fall.name(), size, false);
        });
  }

  static FallFault crestWider() {
    return new FallFault(
        "crest wider",
        Quantity.ratio("how many times as wide it is"),
        SizeRange.even(1.1, 2.5),
        0.02,
        true,
        (fall, size, job) ->
            job.changePoint(
                Fall.class,
                fall.name(),
                f -> f.withCrest(f.crestM(), new WiderCrest(f.weir(), size))));
  }

  static FallFault crestNotLevel() {
    return new FallFault(
        "crest not level",
        Quantity.length("how far one end is low", 1),
        SizeRange.even(0.003, 0.03),
        0.02,
        true,
        (fall, size, job) -> {
          job.show(Look.CREST, fall.name().value(), SEEN_PER_M_LOW * size);
          job.changePoint(
              Fall.class,
              fall.name(),
              f -> f.withCrest(f.crestM() - size, new TiltedCrest(f.weir(), size)));
        });
  }

  @Override
  public Optional<SizeRange> sizes() {
    return Optional.of(range);
  }

  @Override
  public List<Site> sitesIn(AsBuilt job) {
    return Places.falls(job.network()).stream()
        .filter(fall -> !needsCrest || fall.widthM().isPresent())
        .map(
            fall ->
                new Site(
                    CauseId.at(name, fall.name().value()),
                    (size, altered) -> effect.apply(fall, size, altered)))
        .toList();
  }
}
