/**
 * The parts of a line: one reader a kind, and the pipe that they stand in. Uses {@code field},
 * {@code pump} and what lies below them, the catalogue and the solver's parts.
 */
package rillwright.cli.file.part;
