/** What a data sheet says in its comments: price, supply, speeds, needs at the inlet. */
package rillwright.curves.sheet.fact;
