/**
 * The questions whose answers make a first project: a list of values with their words, suggestions
 * and readers, the project's text made of the answers, and the talk itself without a terminal. A
 * page in a browser could ask the same list. Uses {@code file} and the solver's duty.
 */
package rillwright.cli.interview;
