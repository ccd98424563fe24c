package rillwright.solver.study.diagnosis.trial;

/**
 * How well two faults at once are found.
 *
 * @param calls with two faults, and as many with one
 * @param found share of the calls with two in which the pair is listed or one of its members in the
 *     first group
 * @param listed share in which the pair itself is listed
 * @param wronglyLead share of the calls with one fault in which pairs lead
 */
public record PairFigures(int calls, double found, double listed, double wronglyLead) {}
