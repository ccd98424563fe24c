package rillwright.cli.file.field;

import rillwright.cli.file.fault.Place;
import rillwright.cli.file.quantity.Quantity;
import rillwright.cli.file.quantity.Range;

/**
 * A quantity of the file that is not known exactly.
 *
 * @param what which one, for a person: {@code line "supply": run}
 * @param place where it is written
 * @param quantity its middle and spread, in base units
 * @param range what is valid
 */
public record Uncertain(String what, Place place, Quantity quantity, Range range) {}
