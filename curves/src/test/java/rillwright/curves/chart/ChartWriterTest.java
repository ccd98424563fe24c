package rillwright.curves.chart;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import rillwright.curves.chart.content.CurvePoint;
import rillwright.curves.chart.content.CurveSeries;
import rillwright.curves.chart.content.OperatingChart;
import rillwright.curves.chart.mark.CurveMark;
import rillwright.curves.chart.mark.Ink;
import rillwright.curves.chart.mark.Pen;
import rillwright.curves.unit.Unit;

class ChartWriterTest {
  static Stream<OperatingChart> charts() {
    return Stream.of(
        Samples.usual(),
        Samples.bare(),
        Samples.dozen(),
        Samples.pipes(),
        Samples.hostile(),
        Samples.onlySystem(),
        Samples.tooWeak(),
        Samples.wanted());
  }

  private static BufferedImage picture(OperatingChart chart) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(ChartWriter.png(chart)));
  }

  private static Document svg(OperatingChart chart) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(ChartWriter.svg(chart)));
  }

  private static List<String> texts(Document svg) {
    List<String> texts = new ArrayList<>();
    NodeList found = svg.getElementsByTagName("text");
    for (int i = 0; i < found.getLength(); i++) {
      texts.add(found.item(i).getTextContent());
    }
    return texts;
  }

  @Test
  void theSameChartGivesTheSameBytes() {
    assertArrayEquals(ChartWriter.png(Samples.pipes()), ChartWriter.png(Samples.pipes()));
    assertArrayEquals(ChartWriter.svg(Samples.pipes()), ChartWriter.svg(Samples.pipes()));
  }

  @ParameterizedTest
  @MethodSource("charts")
  void thePictureHasItsSizeAndIsDrawnOnWhite(OperatingChart chart) throws IOException {
    BufferedImage picture = picture(chart);
    assertEquals(1600, picture.getWidth());
    assertEquals(1000, picture.getHeight());
    Set<Integer> colors = new HashSet<>();
    int white = 0;
    for (int y = 0; y < 1000; y++) {
      for (int x = 0; x < 1600; x++) {
        int rgb = picture.getRGB(x, y);
        colors.add(rgb);
        white += rgb == Color.WHITE.getRGB() ? 1 : 0;
      }
    }
    assertTrue(colors.size() > 100, "colours: " + colors.size());
    assertTrue(white > 1000 * 1600 / 2, "white pixels: " + white);
    assertTrue(white < 1000 * 1600 * 0.99, "white pixels: " + white);
    for (int x = 0; x < 1600; x++) {
      assertEquals(Color.WHITE.getRGB(), picture.getRGB(x, 0), "the edge is free");
      assertEquals(Color.WHITE.getRGB(), picture.getRGB(x, 999), "the edge is free");
    }
  }

  @ParameterizedTest
  @MethodSource("charts")
  void theDrawingIsASmallFileOfShapesAndText(OperatingChart chart) throws Exception {
    assertTrue(ChartWriter.svg(chart).length < 100_000);
    Element root = svg(chart).getDocumentElement();
    assertEquals("svg", root.getTagName());
    assertEquals("img", root.getAttribute("role"));
    assertEquals("0 0 1600 1000", root.getAttribute("viewBox"));
    assertEquals(0, root.getElementsByTagName("script").getLength());
    assertEquals(0, root.getElementsByTagName("image").getLength());
    assertFalse(new String(ChartWriter.svg(chart), UTF_8).contains("<!DOCTYPE"));
  }

  @Test
  void saysAllThatMattersInWords() throws Exception {
    List<String> texts = texts(svg(Samples.usual()));
    for (String expected :
        List.of(
            "Demo 30 stream",
            "Flow, gph",
            "Head, ft",
            "Power, W",
            "0",
            "7,000",
            "35",
            "700",
            "4,000 gph at 19.2 ft",
            "516 W",
            "beyond the data sheet",
            "power drawn (right axis)",
            "the skimmer passes no",
            "static head 7.2 ft: the rest is friction")) {
      assertTrue(texts.contains(expected), expected + " is not in " + texts);
    }
    assertEquals(
        2,
        texts.stream().filter("demo 40 gives"::equals).count(),
        "beside the curve, in the legend");
    assertEquals(2, texts.stream().filter("what the system takes"::equals).count());
  }

  @Test
  void describesThePictureForThoseWhoHearIt() throws Exception {
    Document svg = svg(Samples.usual());
    assertEquals("Demo 30 stream", svg.getElementsByTagName("title").item(0).getTextContent());
    String description = svg.getElementsByTagName("desc").item(0).getTextContent();
    assertTrue(description.contains("4,000 gph at 19.2 ft, 516 W"), description);
    assertTrue(description.contains("Head in ft against flow in gph"), description);
    String ids = svg.getDocumentElement().getAttribute("aria-labelledby");
    assertEquals("title description", ids);
  }

  @Test
  void holdsNumbersAtTheirAxisWhateverTheFontOfTheReader() throws Exception {
    NodeList texts = svg(Samples.usual()).getElementsByTagName("text");
    Set<String> anchors = new HashSet<>();
    for (int i = 0; i < texts.getLength(); i++) {
      Element text = (Element) texts.item(i);
      if (text.getTextContent().equals("35")) {
        assertEquals("end", text.getAttribute("text-anchor"));
      }
      anchors.add(text.getAttribute("text-anchor"));
    }
    assertEquals(Set.of("start", "middle", "end"), anchors);
  }

  @Test
  void dashesTheCurveBeyondItsDataSheetAndTheSystemButNotThePump() {
    OperatingChart usual = Samples.usual();
    String svg = new String(ChartWriter.svg(usual), UTF_8);
    assertTrue(svg.contains("stroke-dasharray=\"9,8\""), "beyond the data sheet");
    assertTrue(svg.contains("stroke-dasharray=\"26,9\""), "system");
    String hostile = new String(ChartWriter.svg(Samples.hostile()), UTF_8);
    assertFalse(hostile.contains("stroke-dasharray=\"9,8\""), "nothing goes beyond there");
  }

  @Test
  void drawsEachCurveInOneStrokeSoThatDashesRunThrough() throws Exception {
    NodeList paths = svg(Samples.bare()).getElementsByTagName("path");
    int curves = 0;
    for (int i = 0; i < paths.getLength(); i++) {
      Element path = (Element) paths.item(i);
      curves += path.getAttribute("d").chars().filter(c -> c == 'L').count() > 12 ? 1 : 0;
    }
    assertEquals(3, curves, "published, beyond, system");
  }

  @Test
  void showsMarkupAndControlCharactersAsPlainText() throws Exception {
    Document svg = svg(Samples.hostile());
    String first = texts(svg).get(0);
    assertTrue(first.startsWith("<script>alert(\"x\")</script> & \\u202eevil\\u0007 ]]>"), first);
    assertTrue(texts(svg).stream().noneMatch(text -> text.contains("\u202e")));
    assertTrue(texts(svg).stream().noneMatch(text -> text.contains("\u0007")));
  }

  @Test
  void leavesALimitFarBeyondTheCurvesOutOfThePlotButTellsOfIt() throws Exception {
    Document svg = svg(Samples.tooWeak());
    assertFalse(texts(svg).contains("no more than a river comes in"));
    assertTrue(texts(svg).contains("static head 12.4 ft"));
    String description = svg.getElementsByTagName("desc").item(0).getTextContent();
    assertTrue(description.contains("no more than a river comes in"), description);
  }

  @Test
  void keepsTheLegendInItsRowsHoweverLongTheNames() throws Exception {
    List<String> texts = texts(svg(Samples.hostile()));
    assertTrue(
        texts.stream()
            .anyMatch(text -> text.startsWith("pump with a name") && text.endsWith("\u2026")));
  }

  @Test
  void aCurveOfColourHasADifferentDashOrMarkThanEveryOther() {
    Set<String> pumps = new HashSet<>();
    for (int i = 0; i < 12; i++) {
      CurveMark mark = CurveMark.pump(i, 12);
      boolean open = mark.fill().equals(Ink.PAPER);
      pumps.add(mark.shape() + " " + open + " " + mark.edge());
    }
    assertEquals(12, pumps.size());
    Set<List<Float>> systems = new HashSet<>();
    for (int i = 0; i < 5; i++) {
      systems.add(Pen.system(i, 5).dash());
    }
    systems.add(Pen.power().dash());
    systems.add(Pen.pump(0, 1).dash());
    systems.add(Pen.pump(0, 1).beyond().dash());
    assertEquals(8, systems.size());
  }

  @Test
  void gridLinesStandWhereTheNumbersOfTheAxesDo() throws Exception {
    double greatestFlow = Unit.GALLON_PER_HOUR.toSi(6900);
    CurveSeries low =
        new CurveSeries("", List.of(new CurvePoint(0, 0.1), new CurvePoint(greatestFlow, 10)));
    OperatingChart plain =
        new OperatingChart(
            "",
            "",
            Unit.GALLON_PER_HOUR,
            Unit.FOOT,
            List.of(low),
            List.of(),
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    BufferedImage picture = picture(plain);
    NodeList texts = svg(plain).getElementsByTagName("text");
    int lines = 0;
    for (int i = 0; i < texts.getLength(); i++) {
      Element text = (Element) texts.item(i);
      if (text.getTextContent().matches("[1-6],000")) {
        int x = (int) Math.round(Double.parseDouble(text.getAttribute("x")));
        lines += isDarkerThanBeside(picture, x) ? 1 : 0;
      }
    }
    assertEquals(6, lines);
  }

  /** Looks along an upright line of pixels near the top of the plot, where no curve runs. */
  private static boolean isDarkerThanBeside(BufferedImage picture, int x) {
    int dark = 0;
    for (int y = 150; y < 160; y++) {
      int row = y;
      boolean on =
          IntStream.rangeClosed(x - 1, x + 1)
              .anyMatch(at -> new Color(picture.getRGB(at, row)).getRed() < 240);
      boolean beside = new Color(picture.getRGB(x + 5, y)).getRed() > 250;
      dark += on && beside ? 1 : 0;
    }
    return dark > 7;
  }
}
