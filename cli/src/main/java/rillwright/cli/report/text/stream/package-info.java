/** Streams and levels as text. */
package rillwright.cli.report.text.stream;
