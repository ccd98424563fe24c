package rillwright.cli.study.asbuilt;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rillwright.cli.file.UncertainQuantities.Named;
import rillwright.cli.study.Answer;
import rillwright.cli.study.Job;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.uncertainty.posterior.Posterior.Band;

/**
 * What readings say of what was not known exactly.
 *
 * @param job that it is about
 * @param network with the middle of every quantity
 * @param quantities that were not known exactly, in the order of the file
 * @param falls what they get
 * @param readings what was read, in the order of the file
 * @param chiSquare how far the readings are from all that is possible; looks do not count
 * @param chance that readings of a job that is possible are as far from it, 0 to 1
 * @param leftOut what was read or seen that only tells of faults, in the order of the file
 * @param next what would narrow the flows most, the best first
 * @param pumps that have no data sheet
 */
public record AsbuiltAnswer(
    Job job,
    Network network,
    List<Quantity> quantities,
    List<FallFlow> falls,
    List<Compared> readings,
    double chiSquare,
    double chance,
    List<Reading> leftOut,
    List<Narrowing> next,
    List<LearntPump> pumps)
    implements Answer {
  /** Readings that are less likely than this do not fit. */
  private static final double UNLIKELY = 0.001;

  public AsbuiltAnswer {
    quantities = List.copyOf(quantities);
    falls = List.copyOf(falls);
    readings = List.copyOf(readings);
    leftOut = List.copyOf(leftOut);
    next = List.copyOf(next);
    pumps = List.copyOf(pumps);
  }

  /** One of the sizes that a pipe may have, and how likely it is, 0 to 1. */
  public record SizeChance(String size, double before, double after) {}

  /**
   * A quantity in its base unit before and after the readings.
   *
   * @param chances of each size, where it is a pipe's; else none
   */
  public record Quantity(Named named, Band prior, Band posterior, List<SizeChance> chances) {
    /** A band that is less narrow than this share of the one before tells nothing new. */
    private static final double NARROWED = 0.9;

    private static final double MOVED = 0.1;

    public Quantity {
      chances = List.copyOf(chances);
    }

    /** Whether the readings say anything of it. */
    public boolean isLearnt() {
      return chances.stream().anyMatch(it -> Math.abs(it.after() - it.before()) > MOVED)
          || posterior.width() < NARROWED * prior.width()
          || Math.abs(posterior.p50() - prior.p50()) > MOVED * prior.width();
    }
  }

  /** Flow over a fall or out of an outlet before and after the readings, m³/s. */
  public record FallFlow(PointName name, Band before, Band after) {}

  /**
   * A reading beside what is expected.
   *
   * @param expected by all readings together; empty where nothing tells what it would be
   * @param deviations by how many of its standard deviations it is above that; empty likewise
   */
  public record Compared(Reading reading, OptionalDouble expected, OptionalDouble deviations) {
    private static final double MANY = 2.5;

    /** Whether it is far from what all readings together say. */
    public boolean isOff() {
      return Math.abs(deviations.orElse(0)) > MANY;
    }
  }

  /**
   * A reading that is not taken yet.
   *
   * @param left by fall, how wide the band of its flow would be, as a share of now
   */
  public record Narrowing(Measurand what, Map<PointName, Double> left) {
    /** The mean of what is left of the bands. */
    public double leftInAll() {
      return left.values().stream().mapToDouble(it -> it).average().orElse(1);
    }
  }

  /** Whether a job within the ranges may well read like this. */
  public boolean fits() {
    return chance >= UNLIKELY;
  }
}
