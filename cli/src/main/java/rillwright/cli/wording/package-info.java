/**
 * How the program speaks: nearest names, lists of choices, harmless text. Uses nothing else of the
 * project.
 */
package rillwright.cli.wording;
