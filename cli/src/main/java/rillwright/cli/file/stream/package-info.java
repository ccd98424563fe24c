/**
 * Reads streams, what evaporates and what boxes hold. Uses {@code field}, {@code point} for crests
 * and the catalogue's beds.
 */
package rillwright.cli.file.stream;
