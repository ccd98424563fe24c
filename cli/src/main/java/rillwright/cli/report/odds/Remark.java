package rillwright.cli.report.odds;

/**
 * Something to know about odds.
 *
 * @param code a short stable code
 * @param at the point or quantity that it is about; empty for the whole
 * @param message in plain words
 */
public record Remark(String code, String at, String message) {}
