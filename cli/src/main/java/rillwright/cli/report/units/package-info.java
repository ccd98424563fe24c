/**
 * Quantities as they are shown to people: units and no more figures than mean something. Uses the
 * units of {@code curves} and the solver's {@code finding}.
 *
 * <p>One rule: what is computed is rounded to three figures and no finer than 1 gph, 0.1 ft, 0.1
 * in, 0.01 ft/s, 0.1 psi, 0.01 m3/h, 0.01 m, 1 mm, 0.01 m/s, 0.1 kPa, 1 W, 1 of a currency, the
 * same wherever it is shown; what somebody wrote in these units (lengths, targets, points of data
 * sheets) is shown as it is written, and if in another unit to four figures. Levels are all in
 * inches, or all in metres with three decimals as drawings have them. Lengths below 4 ft are in
 * inches if whole quarters of one and no whole feet. Inches are decimal; fractions stand only where
 * somebody holds a ruler. A column of figures has one number of decimals. Limits of common practice
 * have two figures.
 */
package rillwright.cli.report.units;
