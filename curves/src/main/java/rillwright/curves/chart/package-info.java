/**
 * Draws pump curves over system curves, as PNG and as SVG. The only package that knows XChart and
 * Batik.
 *
 * <p>XChart draws the plot's ground and grid. The curves are drawn over it in one stroke each,
 * because XChart strokes every piece of a curve by itself, so that dashes would begin anew at every
 * point; words are drawn as text, because XChart turns them into outlines that neither a reader nor
 * a search finds in an SVG.
 */
package rillwright.curves.chart;
