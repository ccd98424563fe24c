/**
 * The section {@code lines}: chains of parts and their ends. Uses {@code part}, {@code point} and
 * what lies below them, and the solver's lines.
 */
package rillwright.cli.file.line;
