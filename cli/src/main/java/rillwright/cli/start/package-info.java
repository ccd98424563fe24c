/**
 * How the program starts soon: a Java machine that finds its classes laid out in an archive beside
 * the jar needs half the time. Knows no commands; {@code Main} decides.
 */
package rillwright.cli.start;
