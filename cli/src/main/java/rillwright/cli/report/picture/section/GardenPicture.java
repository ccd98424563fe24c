package rillwright.cli.report.picture.section;

import java.util.List;
import java.util.OptionalDouble;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.section.Measures;
import rillwright.cli.study.section.Measures.Source;
import rillwright.cli.study.section.Section;
import rillwright.cli.study.section.Station;
import rillwright.cli.study.section.Way;
import rillwright.curves.chart.content.SectionChart;
import rillwright.curves.chart.content.SectionChart.Piece;
import rillwright.curves.chart.content.SectionChart.Side;
import rillwright.curves.chart.content.SectionChart.Symbol;
import rillwright.solver.network.Fall;

/** The long section for who will look at the water: falls, ponds and where the pipe lies. */
public final class GardenPicture {
  private final Section section;
  private final ShownUnits units;

  private GardenPicture(Section section) {
    this.section = section;
    this.units = Shown.of(section);
  }

  /**
   * What is to be drawn.
   *
   * @param from who drew it and when; may be empty
   */
  public static SectionChart of(Section section, String from) {
    GardenPicture picture = new GardenPicture(section);
    List<Way> ways = picture.ways();
    return new SectionChart(
        section.title(),
        from + "Heights to scale, lengths not." + SectionPicture.leftOut(ways.size()),
        picture.units.headUnit(),
        ways.stream()
            .limit(SectionPicture.MOST_WAYS)
            .map(way -> new SectionChart.Way(way.to().value(), picture.pieces(way)))
            .toList());
  }

  /** Those that come out into the open; all where none does. */
  private List<Way> ways() {
    boolean any = section.ways().stream().anyMatch(way -> way.home().isPresent());
    return section.ways().stream().filter(way -> way.home().isPresent() || !any).toList();
  }

  private List<Piece> pieces(Way way) {
    return way.stations().stream()
        .filter(station -> !isDetail(SectionSymbols.of(station)))
        .map(this::piece)
        .toList();
  }

  private static boolean isDetail(Symbol symbol) {
    return symbol.isInPipe() && symbol != Symbol.PIPE && symbol != Symbol.PUMP;
  }

  private Piece piece(Station station) {
    Symbol symbol = SectionSymbols.of(station);
    return new Piece(
        symbol,
        station.lengthM(),
        switch (symbol) {
          case PIPE -> "pipe";
          case PUMP -> "pump";
          default -> new SectionFigures(section, units).name(station);
        },
        height(station),
        side(station.before()),
        side(station.after()),
        SectionWater.in(station, section));
  }

  private List<String> height(Station station) {
    return station.subject() instanceof Station.AtPoint at && at.point() instanceof Fall fall
        ? List.of("lip " + units.level(fall.crestM()))
        : List.of();
  }

  private static Side side(Measures at) {
    OptionalDouble none = OptionalDouble.empty();
    return new Side(at.elevationM(), at.source() != Source.ASSUMED, none, none, none, none);
  }
}
