/**
 * Weirs: flow over a crest against the head upstream of it, and how thick the sheet is at the
 * brink.
 */
package rillwright.solver.law.weir;
