/**
 * The section {@code points}: one reader a kind. Uses {@code field} and what lies below it, the
 * catalogue's lips and the solver's points and weirs.
 */
package rillwright.cli.file.point;
