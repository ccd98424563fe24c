/**
 * The sections that only some studies use, checked for their shape: known fields, quantities of the
 * right kind, names that exist. Uses {@code field}, {@code point} and what lies below them.
 */
package rillwright.cli.file.outline;
