package rillwright.cli.report.json;

import static rillwright.cli.json.Quantity.FLOW;
import static rillwright.cli.json.Quantity.METRES;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import rillwright.cli.json.Json;
import rillwright.cli.json.Shape;
import rillwright.cli.json.Value;
import rillwright.cli.report.Estimate;
import rillwright.cli.report.check.CheckNotes;
import rillwright.cli.report.text.PartWords;
import rillwright.cli.report.text.PointWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.check.Checked;
import rillwright.curves.sheet.DataSheet;
import rillwright.solver.finding.Finding;
import rillwright.solver.finding.Severity;
import rillwright.solver.network.Line;
import rillwright.solver.network.Part;
import rillwright.solver.network.Point;
import rillwright.solver.pumping.PumpPlace;

/** What a file says, for programs. */
public final class CheckJson {
  /** Something of the file, and the units in which people read it. */
  private record Read<T>(T what, ShownUnits units) {}

  private static final Shape<Read<Point>> POINT =
      Shape.<Read<Point>>of()
          .member(
              "kind",
              Value.oneOf("basin", "chamber", "tee", "fall", "outlet"),
              "Which of the five.",
              point -> point.what.kind())
          .numberOrNull(
              "targetM3PerS", FLOW, "Its target; null without.", point -> point.what.targetM3PerS())
          .words("words", "The same for people.", point -> PointWords.of(point.what, point.units));

  /** A part, or a change of bore between two runs. */
  private record Met(String kind, String words) {}

  private static final Shape<Met> PART =
      Shape.<Met>of()
          .words("part", "What it is.", Met::kind)
          .words("words", "The same for people.", Met::words);

  private static final Shape<Read<Line>> LINE =
      Shape.<Read<Line>>of()
          .words("from", "The point where it begins.", line -> line.what.from().value())
          .words("to", "The point where it ends.", line -> line.what.to().value())
          .numberOrNull(
              "insideM",
              METRES.above(0),
              "Bore to which its velocity refers; null without any.",
              line ->
                  line.what
                      .mainBore()
                      .map(bore -> OptionalDouble.of(bore.diameterM()))
                      .orElse(OptionalDouble.empty()))
          .list(
              "parts",
              PART,
              "In order, the changes of bore between them included.",
              line -> parts(line.what, line.units));

  private static final Shape<DataSheet> PUMP =
      Shape.<DataSheet>of()
          .member(
              "points",
              Value.wholeFrom(2),
              "Rows of the sheet.",
              sheet -> (long) sheet.curve().points().size())
          .number(
              "shutOffHeadM",
              METRES.above(0),
              "Head at no flow.",
              sheet -> sheet.curve().publishedShutOffHeadM())
          .number(
              "greatestFlowM3PerS",
              FLOW.above(0),
              "The last published flow.",
              sheet -> sheet.curve().lastFlowM3PerS())
          .truth(
              "levelled",
              "Whether a hump had to be made monotone.",
              sheet -> sheet.curve().isLevelled());

  static final Shape<Checked> SHAPE =
      Estimate.<Checked>answer("check", "What the file says.")
          .words("title", Meaning.TITLE, Checked::title)
          .each(
              "points",
              POINT,
              "Points by name.",
              it -> read(it.project().network().points(), Shown.of(it)),
              point -> point.what.name().value())
          .each(
              "lines",
              LINE,
              "Lines by name.",
              it -> read(it.project().network().lines(), Shown.of(it)),
              line -> line.what.name().value())
          .byName(
              "pumps",
              PUMP,
              "Data sheets by the name of the pump.",
              it -> it.project().sheets(),
              Function.identity())
          .list(
              "notes",
              Value.someWords(),
              "What the reader should know, and what was taken where the file is silent.",
              CheckNotes::of)
          .list(
              "findings",
              FoundJson.SHAPE,
              "What can hardly be, and what must be decided before anything flows.",
              it -> FoundJson.list(findings(it), Shown.of(it)))
          .list("changed", Value.words(), Meaning.CHANGED, Checked::changes);

  private CheckJson() {}

  /** The JSON text. */
  public static String of(Checked checked) {
    return Json.text(SHAPE, checked);
  }

  private static List<Met> parts(Line line, ShownUnits units) {
    List<Met> parts = new ArrayList<>();
    for (int i = 0; i < line.parts().size(); i++) {
      Part part = line.parts().get(i);
      line.changeOfBoreAt(i)
          .ifPresent(change -> parts.add(new Met(change.kind(), PartWords.of(change, units))));
      parts.add(new Met(part.kind(), PartWords.of(part, units)));
    }
    return parts;
  }

  private static <T> List<Read<T>> read(List<T> all, ShownUnits units) {
    return all.stream().map(one -> new Read<>(one, units)).toList();
  }

  private static List<Finding> findings(Checked checked) {
    Stream<Finding> planned =
        PumpPlace.listPlanned(checked.project().network()).stream()
            .map(
                place ->
                    Finding.of(
                        Severity.NOTE,
                        "pump-to-be-chosen",
                        place.line().value(),
                        "Its pump is still to be chosen; \"rillwright duty\" tells what it must"
                            + " make."));
    return Stream.concat(checked.findings().stream(), planned).toList();
  }
}
