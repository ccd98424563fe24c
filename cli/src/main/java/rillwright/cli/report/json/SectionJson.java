package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.METRES;
import static rillwright.cli.json.Quantity.PRESSURE;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import rillwright.cli.json.Json;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.report.Estimate;
import rillwright.cli.report.NoBalanceWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.study.section.Measures;
import rillwright.cli.study.section.Measures.Source;
import rillwright.cli.study.section.Section;
import rillwright.cli.study.section.Station;
import rillwright.cli.study.section.Way;
import rillwright.solver.network.Gauge;
import rillwright.solver.network.PointName;
import rillwright.solver.water.Water;

/** A long section for programs. */
public final class SectionJson {
  private record Side(Measures at, Water water) {}

  private record Met(Station station, Water water) {
    Optional<String> line() {
      return station.subject() instanceof Station.InLine in
          ? Optional.of(in.line().value())
          : Optional.empty();
    }

    Optional<String> name() {
      if (station.subject() instanceof Station.AtPoint at) {
        return Optional.of(at.point().name().value());
      } else if (station.subject() instanceof Station.InStream in) {
        return Optional.of(in.stream());
      }
      return station.subject() instanceof Station.InLine in && in.part() instanceof Gauge gauge
          ? Optional.of(gauge.name())
          : Optional.empty();
    }
  }

  private record Route(Way way, Water water) {}

  private static final Shape<Side> SIDE =
      Shape.<Side>named("sectionSide", "One side of a place.")
          .number(
              "distanceM",
              METRES.from(0),
              "From the beginning of the way: lengths of runs and reaches.",
              side -> side.at.distanceM())
          .number(
              "elevationM",
              METRES,
              "Of the pipe, the crest or the bed.",
              side -> side.at.elevationM())
          .member(
              "elevationFrom",
              Value.oneOf(Stream.of(Source.values()).map(SectionJson::word).toList()),
              "The file, a straight line between what it gives, or nothing that it gives: assumed.",
              side -> word(side.at.source()))
          .numberOrNull(
              "headM",
              METRES,
              "Total head running; null where nothing determines it.",
              side -> side.at.headM())
          .numberOrNull(
              "gaugeHeadM",
              METRES,
              "The same less the velocity head: what a gauge shows, its elevation added.",
              side -> side.at.gaugeHeadM())
          .numberOrNull(
              "pressurePa",
              PRESSURE,
              "What a gauge shows; null where the file does not give the elevation.",
              side -> side.at.pressurePa(side.water))
          .numberOrNull(
              "restHeadM",
              METRES,
              "Where water stands with the pumps off; null where nothing holds it.",
              side -> side.at.restHeadM())
          .numberOrNull(
              "shutOffHeadM",
              METRES,
              "Head against shut valves; null where no pump makes any.",
              side -> side.at.shutOffHeadM());

  private static final Shape<Met> PLACE =
      Shape.<Met>named("sectionPlace", "What the water meets.")
          .words(
              "kind",
              "What it is, by the words of the file; \"free fall\" on the way back.",
              met -> met.station.kind().orElse("free fall"))
          .orNull("line", Value.words(), "The line it stands in; null elsewhere.", Met::line)
          .orNull("name", Value.words(), "Of a point, gauge or stream; null elsewhere.", Met::name)
          .member(
              "before",
              SIDE,
              "Where the water comes from.",
              met -> new Side(met.station.before(), met.water))
          .member(
              "after",
              SIDE,
              "Where the water goes.",
              met -> new Side(met.station.after(), met.water))
          .numberOrNull(
              "shutOffPressurePa",
              PRESSURE,
              "Pressure against shut valves at its lower side; null where no pump makes any or the"
                  + " elevation is assumed.",
              met -> met.station.shutOffPressurePa(met.water))
          .numberOrNull(
              "ratedPressurePa",
              PRESSURE.above(0),
              "Pressure that a pipe is made for at the water's temperature; null where not known.",
              met -> met.station.ratedPressurePa(met.water))
          .truth(
              "belowAtmospheric",
              "Whether the pipe, as drawn, is below atmospheric pressure there.",
              met -> met.station.isUnderSuction());

  private static final Shape<Route> WAY =
      Shape.<Route>named("sectionWay", "A way of the water.")
          .words("from", "The point where it begins.", it -> name(it.way.from()))
          .words("to", "The point where it leaves the lines.", it -> name(it.way.to()))
          .orNull(
              "home",
              Value.words(),
              "The basin that it runs back to; null where it does not.",
              it -> it.way.home().map(PointName::value))
          .list(
              "places",
              PLACE,
              "In the order the water meets them.",
              it -> it.way.stations().stream().map(at -> new Met(at, it.water)).toList());

  static final Shape<Section> SHAPE =
      Estimate.<Section>answer("section", "Elevations and heads along the water's ways.")
          .words("title", Meaning.TITLE, Section::title)
          .orNull(
              "condition",
              Value.words(),
              "The condition of the site; null as written.",
              Section::condition)
          .truth("converged", "Whether there is a balanced state.", it -> it.state().isPresent())
          .orNull(
              "noBalance",
              Value.words(),
              "Why there is none; null too where a pump is still to be chosen.",
              it -> it.noBalance().map(reason -> NoBalanceWords.of(reason, Shown.of(it))))
          .list(
              "ways",
              WAY,
              "Each line stands in one of them.",
              it -> it.ways().stream().map(way -> new Route(way, it.network().water())).toList())
          .list("changed", Value.words(), Meaning.CHANGED, Section::changes);

  private SectionJson() {}

  private static String name(PointName point) {
    return point.value();
  }

  private static String word(Source source) {
    return source.name().toLowerCase(Locale.ROOT);
  }

  /** The JSON text. */
  public static String of(Section section) {
    return Json.text(SHAPE, section);
  }
}
