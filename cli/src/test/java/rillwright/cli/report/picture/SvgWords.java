package rillwright.cli.report.picture;

import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import rillwright.curves.chart.layout.TextBlock;

/**
 * A line of text in a picture.
 *
 * @param text of it
 * @param place where it stands, the room above and below its letters left out
 */
record SvgWords(String text, Rectangle2D place) {
  /** Of capitals and figures, as a share of the size of the font. */
  private static final double CAPITALS = 0.73;

  /** All lines of text in a picture. */
  static List<SvgWords> list(byte[] svg) throws Exception {
    NodeList texts =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(svg))
            .getElementsByTagName("text");
    List<SvgWords> words = new ArrayList<>();
    for (int i = 0; i < texts.getLength(); i++) {
      words.add(of((Element) texts.item(i)));
    }
    return words;
  }

  /** Size of a picture. */
  static Rectangle2D paper(byte[] svg) throws Exception {
    Element root =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(svg))
            .getDocumentElement();
    double width = Double.parseDouble(root.getAttribute("width"));
    return new Rectangle2D.Double(0, 0, width, Double.parseDouble(root.getAttribute("height")));
  }

  private static SvgWords of(Element text) {
    boolean bold = inherited(text, "font-weight").equals("bold");
    int size = Integer.parseInt(inherited(text, "font-size").replace("px", ""));
    Font font = new Font(Font.SANS_SERIF, bold ? Font.BOLD : Font.PLAIN, size);
    double width = new TextBlock(List.of(), font).widthOf(text.getTextContent());
    double share =
        switch (text.getAttribute("text-anchor")) {
          case "middle" -> 0.5;
          case "end" -> 1;
          default -> 0;
        };
    double left = Double.parseDouble(text.getAttribute("x")) - share * width;
    double baseline = Double.parseDouble(text.getAttribute("y"));
    double height = CAPITALS * size;
    return new SvgWords(
        text.getTextContent(), new Rectangle2D.Double(left, baseline - height, width, height));
  }

  private static String inherited(Element element, String attribute) {
    for (Node at = element; at instanceof Element one; at = at.getParentNode()) {
      if (one.hasAttribute(attribute)) {
        return one.getAttribute(attribute);
      }
    }
    return "";
  }
}
