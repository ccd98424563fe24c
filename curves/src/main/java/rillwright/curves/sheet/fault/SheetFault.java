package rillwright.curves.sheet.fault;

/**
 * One thing that is wrong with a data sheet.
 *
 * @param line from 1
 * @param column place in the line, in characters from 1
 * @param message what was found and what would be right, one sentence
 */
public record SheetFault(int line, int column, String message) {}
