package rillwright.solver.finding;

import java.util.List;

/** Quantities in the words and units of the reader. */
public interface Wording {

  /** A flow, from m³/s: "3,600 gph". */
  String flow(double flowM3PerS);

  /** A flow that somebody wrote down, reported as it is written, from m³/s: "1,440 gph". */
  String writtenFlow(double flowM3PerS);

  /** A level above the datum, from m: "86 in". */
  String level(double levelM);

  /** A limit of common practice, from m/s: "5 ft/s". */
  String velocityLimit(double velocityMPerS);

  /** A height or length, from m: "7.2 ft". */
  String length(double lengthM);

  /** A small depth or difference of level, from m: "0.8 in". */
  String depth(double depthM);

  /** A head, from m: "14 ft". */
  String head(double headM);

  /** A speed of water in a pipe, from m/s: "5.1 ft/s". */
  String velocity(double velocityMPerS);

  /** A pressure above the air's, from Pa: "4.2 psi". */
  String pressure(double pressurePa);

  /** An electrical or hydraulic power, from W: "135 W". */
  String power(double powerW);

  /** A volume of water, from m³: "240 gal". */
  String volume(double volumeM3);

  /** Parts of a volume, from m³, that add up to it as {@link #volume} shows it. */
  List<String> volumes(List<Double> partsM3);

  /** A time, from s: "12 minutes". */
  String duration(double seconds);

  /** A share: "40 %". */
  String share(double share);

  /**
   * A sentence that a program adds to a finding of this code, led by a space: which command tells
   * more, what to write in a file; empty if there is none.
   */
  default String hint(String code) {
    return "";
  }
}
