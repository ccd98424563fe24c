/**
 * A pump's data sheet: the points as published, checked, with the facts that stand beside them.
 * Uses the pump's curve of the solver and the units.
 *
 * <p>A sheet is a CSV with units in its headings. Only flow and head are needed, in any order:
 *
 * <pre>
 * # maker: Maker 1
 * # price: 389 USD
 * flow [gph],head [ft],power [W]
 * 0,31,420
 * 1000,29.5,455
 * </pre>
 *
 * <p>Between semicolons numbers have decimal commas. Other columns are passed over and named,
 * unless their heading looks like a slip for one that counts.
 */
package rillwright.curves.sheet;
