/**
 * The section {@code pumps}: data sheets by name, in the file or in files beside it. Uses {@code
 * field} and what lies below it, and the data sheets of curves.
 */
package rillwright.cli.file.pump;
