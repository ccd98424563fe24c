package rillwright.cli.report.picture.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import rillwright.solver.network.Fitting;

/** The picture of a long section. */
public final class SectionPicture {
  /** Whether heads against a shut valve are drawn. */
  public enum ShutOff {
    SHOWN,
    LEFT_OUT
  }

  /** More ways than these are more than a sheet of paper takes. */
  static final int MOST_WAYS = 16;

  /** More pieces than these are too many for a page of paper. */
  private static final int MOST_PIECES = 30;

  private final Section section;
  private final ShownUnits units;
  private final ShutOff shutOff;

  private SectionPicture(Section section, ShutOff shutOff) {
    this.section = section;
    this.units = Shown.of(section);
    this.shutOff = shutOff;
  }

  /** What is to be drawn. */
  public static SectionChart of(Section section, ShutOff shutOff) {
    SectionPicture picture = new SectionPicture(section, shutOff);
    return new SectionChart(
        section.title(),
        picture.caption(),
        picture.units.headUnit(),
        section.ways().stream().limit(MOST_WAYS).map(picture::way).toList());
  }

  /** The same on as many pictures as it takes for each to be read on a page of paper. */
  public static List<SectionChart> leaves(SectionChart whole) {
    List<SectionChart> leaves = new ArrayList<>();
    List<SectionChart.Way> ways = new ArrayList<>();
    for (SectionChart.Way way : whole.ways()) {
      int pieces = ways.stream().mapToInt(it -> it.pieces().size()).sum();
      if (pieces > 0 && pieces + way.pieces().size() > MOST_PIECES) {
        leaves.add(whole.with(ways));
        ways.clear();
      }
      ways.add(way);
    }
    leaves.add(whole.with(ways));
    return leaves;
  }

  private String caption() {
    return SectionCaption.of(
        section,
        "Levels to scale, in "
            + units.headUnit().symbol()
            + "; distances not to scale. Pipe is drawn straight between elevations that the file"
            + " gives."
            + leftOut(section.ways().size()));
  }

  /** That some of the ways are not drawn, where it is so. */
  static String leftOut(int ways) {
    return ways > MOST_WAYS ? " The first " + MOST_WAYS + " of " + ways + " ways are drawn." : "";
  }

  private SectionChart.Way way(Way way) {
    List<Piece> pieces = new ArrayList<>();
    List<Station> fittings = new ArrayList<>();
    for (Station station : way.stations()) {
      boolean isFitting =
          station.subject() instanceof Station.InLine part && part.part() instanceof Fitting;
      if (isFitting) {
        fittings.add(station);
      } else {
        addFittings(pieces, fittings);
        pieces.add(piece(station));
      }
    }
    addFittings(pieces, fittings);
    return new SectionChart.Way(name(way), pieces);
  }

  private static String name(Way way) {
    String out = way.from().value() + " to " + way.to().value();
    return way.home().map(home -> out + ", and back to " + home.value()).orElse(out);
  }

  private Piece piece(Station station) {
    SectionFigures figures = new SectionFigures(section, units);
    List<String> lines = new ArrayList<>(figures.of(station));
    if (shutOff == ShutOff.SHOWN) {
      lines.addAll(figures.ofShutOff(station));
    }
    return new Piece(
        SectionSymbols.of(station),
        station.lengthM(),
        figures.name(station),
        lines,
        side(station.before()),
        side(station.after()),
        SectionWater.in(station, section));
  }

  /** Fittings that follow each other stand in one place. */
  private void addFittings(List<Piece> pieces, List<Station> fittings) {
    if (!fittings.isEmpty()) {
      SectionFigures figures = new SectionFigures(section, units);
      pieces.add(
          new Piece(
              Symbol.FITTINGS,
              0,
              figures.nameOf(fittings),
              figures.takenBy(fittings),
              side(fittings.get(0).before()),
              side(fittings.get(fittings.size() - 1).after()),
              Optional.empty()));
      fittings.clear();
    }
  }

  private Side side(Measures at) {
    return new Side(
        at.elevationM(),
        at.source() != Source.ASSUMED,
        at.headM(),
        at.gaugeHeadM(),
        at.restHeadM(),
        shutOff == ShutOff.SHOWN ? at.shutOffHeadM() : OptionalDouble.empty());
  }
}
