/**
 * The characters of a data sheet: lines, cells and numbers, each with its place. Knows nothing of
 * pumps; notes what is wrong with {@link rillwright.curves.sheet.fault}.
 */
package rillwright.curves.sheet.text;
