package rillwright.cli.study.mend.search;

import java.util.Optional;
import rillwright.cli.study.mend.trial.Remedy;

/**
 * What came of a search over sets of changes.
 *
 * @param least the least set that gives every fall its target; empty if none was found
 * @param byCost whether it is the least by cost over the years; else by new pipe laid and pumps
 * @param sets how many sets of sizes and pumps there are
 * @param tried how many of them were put into the project and balanced, valves set
 * @param unpriced how many sizes and pumps were left out because they have no price
 * @param proven whether every other set was tried, or cannot be less, or cannot do it by a bound
 */
public record Searched(
    Optional<Remedy> least, boolean byCost, double sets, int tried, int unpriced, boolean proven) {}
