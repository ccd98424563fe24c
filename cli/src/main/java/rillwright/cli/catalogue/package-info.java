/**
 * Pipe sizes, fittings, valves, lips and stream beds that the program knows by name, each with its
 * source. The data are the CSV resources beside this package. Uses the solver's laws and the units.
 */
package rillwright.cli.catalogue;
