package rillwright.curves.chart.svg;

import java.io.ByteArrayOutputStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A chart as an SVG file, by Batik. */
public final class SvgFile {
  private static final String SVG = "http://www.w3.org/2000/svg";
  private static final int DECIMALS = 2;

  private SvgFile() {}

  public static byte[] of(Painting painting) {
    Document document = emptyDocument();
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
    context.setComment(null);
    context.setPrecision(DECIMALS);
    SvgCanvas canvas = new SvgCanvas(context);
    painting.paint(canvas);
    Element root = canvas.picture();
    root.setAttribute("width", Integer.toString(Painting.WIDTH));
    root.setAttribute("height", Integer.toString(painting.height()));
    root.setAttribute("viewBox", "0 0 " + Painting.WIDTH + " " + painting.height());
    root.setAttribute("font-family", "sans-serif");
    root.setAttribute("role", "img");
    root.setAttribute("aria-labelledby", "title description");
    Description description = painting.description();
    prepend(document, root, "desc", "description", description.text());
    prepend(document, root, "title", "title", description.title());
    return bytesOf(root);
  }

  private static byte[] bytesOf(Element root) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      Transformer writer = TransformerFactory.newInstance().newTransformer();
      writer.setOutputProperty(OutputKeys.ENCODING, "UTF-8");
      writer.setOutputProperty(OutputKeys.INDENT, "yes");
      writer.transform(new DOMSource(root), new StreamResult(bytes));
    } catch (TransformerException e) {
      throw new IllegalStateException("this Java cannot write XML", e);
    }
    return bytes.toByteArray();
  }

  private static Document emptyDocument() {
    try {
      return DocumentBuilderFactory.newInstance()
          .newDocumentBuilder()
          .getDOMImplementation()
          .createDocument(SVG, "svg", null);
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("this Java cannot build XML", e);
    }
  }

  private static void prepend(
      Document document, Element root, String name, String id, String text) {
    Element element = document.createElementNS(SVG, name);
    element.setAttribute("id", id);
    element.setTextContent(text);
    root.insertBefore(element, root.getFirstChild());
  }
}
