package rillwright.solver.study.diagnosis.reading;

/**
 * What it takes to read something; common practice, no source.
 *
 * @param minutes of work
 * @param risk what may go wrong
 */
public record Effort(int minutes, Risk risk) {

  /** What may go wrong while something is read. */
  public enum Risk {
    NONE,
    /** A pump runs against a shut valve. */
    SHUT_OFF,
    /** Electricity near water. */
    ELECTRICITY,
    /** Hands or feet near open water or a suction. */
    OPEN_WATER,
    /** The pump is switched off and on. */
    PUMP_OFF,
    /** Somebody holds a chamber's mouth shut while its pump draws. */
    HELD_SHUT,
    /** A part of the line is opened. */
    OPENED,
    /** A meter shows another flow than there is where its pipe is bent, soft or not full. */
    METER_PLACE
  }
}
