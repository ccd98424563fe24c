package rillwright.curves.chart.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import rillwright.curves.chart.mark.Words;
import rillwright.curves.chart.mark.Words.Anchored;

/** Batik's canvas, which in addition remembers where each line of text is held. */
public final class SvgCanvas extends SVGGraphics2D {
  private final List<Anchored> lines = new ArrayList<>();

  public SvgCanvas(SVGGeneratorContext context) {
    super(context, false);
  }

  @Override
  public void drawString(String text, float x, float y) {
    lines.add((Anchored) getRenderingHint(Words.ANCHORED));
    super.drawString(text, x, y);
  }

  /** The picture so far, its lines of text held where they should be; can be taken once. */
  public Element picture() {
    Element root = getRoot();
    NodeList texts = root.getElementsByTagName("text");
    if (texts.getLength() != lines.size()) {
      throw new IllegalStateException(
          texts.getLength() + " lines of text in the picture, " + lines.size() + " written");
    }
    for (int i = 0; i < lines.size(); i++) {
      Anchored line = lines.get(i);
      Element text = (Element) texts.item(i);
      text.setAttribute("text-anchor", line.anchor().name().toLowerCase(Locale.ROOT));
      text.setAttribute("x", String.format(Locale.ROOT, "%.2f", line.x()));
    }
    return root;
  }
}
