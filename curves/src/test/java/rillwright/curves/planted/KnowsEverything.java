package rillwright.curves.planted;

import org.apache.batik.svggen.SVGGraphics2D;
import org.knowm.xchart.XYChart;
import rillwright.cli.planted.Above;

/** Both drawing libraries and a module above, outside of where they belong. */
record KnowsEverything(XYChart chart, SVGGraphics2D graphics, Above above) {}
