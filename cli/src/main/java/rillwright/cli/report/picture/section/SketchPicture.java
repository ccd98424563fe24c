package rillwright.cli.report.picture.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.section.Section;
import rillwright.curves.chart.content.SketchChart;
import rillwright.curves.chart.content.SketchChart.Kind;
import rillwright.curves.chart.content.SketchChart.Link;
import rillwright.curves.chart.content.SketchChart.Node;
import rillwright.solver.network.Line;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Run;
import rillwright.solver.steady.LineState;

/** The picture of a network without a plan: points at their heights, lines between them. */
public final class SketchPicture {
  private static final Map<String, Kind> KINDS =
      Map.of(
          "basin", Kind.OPEN_WATER,
          "chamber", Kind.CHAMBER,
          "tee", Kind.TEE,
          "fall", Kind.FALL,
          "outlet", Kind.OUTLET);

  private final Section section;
  private final ShownUnits units;

  private SketchPicture(Section section) {
    this.section = section;
    this.units = Shown.of(section);
  }

  /** What is to be drawn. */
  public static SketchChart of(Section section) {
    return new SketchPicture(section).chart();
  }

  private SketchChart chart() {
    List<PointName> names = section.network().points().stream().map(Point::name).toList();
    return new SketchChart(
        section.title(),
        SectionCaption.of(
            section,
            "Points at their heights, in "
                + units.headUnit().symbol()
                + ", as far as the file gives them; distances not to scale. Lines are numbered."),
        units.headUnit(),
        section.network().points().stream().map(this::node).toList(),
        section.network().lines().stream().map(line -> link(line, names)).toList());
  }

  private Node node(Point point) {
    List<String> words = new ArrayList<>(List.of(point.name().value()));
    words.addAll(new SectionFigures(section, units).of(point));
    if (point.drawM3PerS() != 0) {
      words.add(
          (point.drawM3PerS() > 0 ? "draws " : "puts in ")
              + units.writtenFlow(Math.abs(point.drawM3PerS())));
    }
    return new Node(KINDS.get(point.kind()), section.heightM(point), words);
  }

  private Link link(Line line, List<PointName> names) {
    Optional<LineState> running = section.state().map(state -> state.line(line.name()));
    double flow = running.map(LineState::flowM3PerS).orElse(0.0);
    int from = names.indexOf(line.from());
    int to = names.indexOf(line.to());
    List<String> words = new ArrayList<>(List.of(line.name().value()));
    line.placed(Pump.class).forEach(pump -> words.add(pump.part().label()));
    String pipes =
        line.placed(Run.class).stream()
            .map(run -> run.part().label())
            .filter(label -> !label.isEmpty())
            .distinct()
            .collect(Collectors.joining(" and "));
    if (!pipes.isEmpty()) {
      words.add(pipes);
    }
    DoubleStream lengths =
        line.placed(Run.class).stream().map(Placed::part).mapToDouble(Run::lengthM);
    double length = lengths.sum();
    if (length > 0) {
      words.add(units.length(length));
    }
    running.ifPresent(state -> flow(words, state));
    return new Link(flow < 0 ? to : from, flow < 0 ? from : to, flow != 0, words);
  }

  private void flow(List<String> words, LineState state) {
    words.add(state.flowM3PerS() == 0 ? "no flow" : units.flow(Math.abs(state.flowM3PerS())));
    if (state.flowM3PerS() != 0) {
      state.velocityMPerS().ifPresent(velocity -> words.add(units.velocity(velocity)));
    }
  }
}
