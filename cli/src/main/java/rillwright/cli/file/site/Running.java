package rillwright.cli.file.site;

import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.file.field.Price;

/**
 * How long the pumps run and what electricity costs, as far as the file says.
 *
 * @param price of a kilowatt-hour
 * @param hoursPerDay 0 to 24
 * @param daysPerYear 0 to 366
 */
public record Running(
    Optional<Price> price, OptionalDouble hoursPerDay, OptionalDouble daysPerYear) {}
