/**
 * What a crew read and saw on site, mapped from a file to values. Uses {@code file.field}, {@code
 * file.outline} and the solver's diagnosis.
 */
package rillwright.cli.file.visit;
