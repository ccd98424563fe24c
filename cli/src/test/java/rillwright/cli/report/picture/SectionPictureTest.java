package rillwright.cli.report.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.report.picture.section.SectionPicture;
import rillwright.cli.report.picture.section.SectionPicture.ShutOff;
import rillwright.cli.report.picture.section.SketchPicture;
import rillwright.cli.study.section.Section;
import rillwright.cli.study.section.SectionRequest;
import rillwright.curves.chart.ChartWriter;
import rillwright.curves.chart.content.Chart;
import rillwright.curves.chart.content.SectionChart;
import rillwright.curves.chart.content.SectionChart.Piece;
import rillwright.curves.chart.content.SectionChart.Symbol;

/** Sections and sketches of the examples, as they stand on the paper. */
class SectionPictureTest {
  private static final String TWIN = "twin-falls/falls.yaml";

  private static Section section(String example, String... changes) {
    Path file = Path.of("..", "examples").resolve(example);
    Project project = ProjectReader.read(file, List.of(changes));
    return new SectionRequest().answer(project);
  }

  private static List<Piece> pieces(SectionChart chart) {
    return chart.ways().stream().flatMap(way -> way.pieces().stream()).toList();
  }

  static Stream<Chart> pictures() {
    return Stream.of(
            TWIN,
            "long-stream/dry.yaml",
            "fish-pond/pond.yaml",
            "header-pond/troughs.yaml",
            "dry-vault/vault.yaml",
            "hidden-reservoir/fall.yaml",
            "weak-fall/fall.yaml")
        .map(SectionPictureTest::section)
        .flatMap(one -> Stream.of(SectionPicture.of(one, ShutOff.SHOWN), SketchPicture.of(one)));
  }

  @ParameterizedTest
  @MethodSource("pictures")
  void wordsStandOnThePaperAndNoneOnAnother(Chart picture) throws Exception {
    byte[] svg = ChartWriter.svg(picture);
    List<SvgWords> words = SvgWords.list(svg);
    Rectangle2D paper = SvgWords.paper(svg);
    assertTrue(words.size() > 10, "there are words");
    for (SvgWords one : words) {
      assertTrue(paper.contains(one.place()), one::toString);
      for (SvgWords other : words) {
        boolean apart = one.equals(other) || !one.place().intersects(other.place());
        assertTrue(apart, () -> one + " stands on " + other);
      }
    }
  }

  @Test
  void everyPartIsDrawnOnceWithItsFigures() {
    SectionChart chart = SectionPicture.of(section(TWIN), ShutOff.LEFT_OUT);
    assertEquals(2, chart.ways().size());
    assertEquals("pond to high fall, and back to pond", chart.ways().get(0).name());
    assertEquals("split to low fall, and back to pond", chart.ways().get(1).name());
    List<Piece> pumps =
        pieces(chart).stream().filter(piece -> piece.symbol() == Symbol.PUMP).toList();
    assertEquals(1, pumps.size());
    assertEquals(List.of("3,790 gph", "adds 11.1 ft", "405 W"), pumps.get(0).figures());
    assertEquals(3, pieces(chart).stream().filter(it -> it.symbol() == Symbol.PIPE).count());
  }

  @Test
  void shutOffStandsAgainstWhatThePipeIsMadeFor() {
    Section section = section("long-stream/stream.yaml");
    Piece pipe =
        pieces(SectionPicture.of(section, ShutOff.SHOWN)).stream()
            .filter(piece -> piece.symbol() == Symbol.PIPE)
            .findFirst()
            .orElseThrow();
    assertTrue(pipe.figures().contains("made for 1,000 kPa"), pipe::toString);
    assertTrue(pipe.start().shutOffHeadM().getAsDouble() > pipe.start().headM().getAsDouble());
    assertTrue(
        pieces(SectionPicture.of(section, ShutOff.LEFT_OUT)).stream()
            .allMatch(piece -> piece.start().shutOffHeadM().isEmpty()));
  }

  /** The suction pipe of a pump above the water is marked; no pipe behind a pump is. */
  @Test
  void suctionIsMarkedWhereThePipeLiesAboveTheHeadLine() {
    List<Piece> pieces = pieces(SectionPicture.of(section("dry-vault/vault.yaml"), ShutOff.SHOWN));
    List<Piece> pipes = pieces.stream().filter(piece -> piece.symbol() == Symbol.PIPE).toList();
    assertTrue(pipes.get(0).end().suctionM().getAsDouble() > 0.9);
    assertTrue(pipes.get(1).start().suctionM().getAsDouble() < 0);
    assertTrue(section("dry-vault/vault.yaml").hasSuction());
    assertFalse(section(TWIN).hasSuction());
  }

  @Test
  void whatIsStillToBeChosenIsDrawnWithoutHeads() {
    Section section = section(TWIN, "lines.supply.pump=to be chosen");
    SectionChart chart = SectionPicture.of(section, ShutOff.SHOWN);
    assertTrue(chart.caption().contains("a pump is still to be chosen"), chart.caption());
    assertTrue(pieces(chart).stream().allMatch(piece -> piece.start().headM().isEmpty()));
    assertTrue(ChartWriter.png(chart).length > 0);
  }

  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void theSamePictureHasTheSameBytes(boolean sketch) {
    Section section = section("fish-pond/pond.yaml");
    Chart chart = sketch ? SketchPicture.of(section) : SectionPicture.of(section, ShutOff.LEFT_OUT);
    String svg = new String(ChartWriter.svg(chart), StandardCharsets.UTF_8);
    assertEquals(svg, new String(ChartWriter.svg(chart), StandardCharsets.UTF_8));
    assertFalse(svg.contains("http://") && svg.contains("href"), "nothing is fetched");
  }
}
