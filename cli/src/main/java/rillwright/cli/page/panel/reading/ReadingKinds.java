package rillwright.cli.page.panel.reading;

import static rillwright.cli.file.edit.Quoting.json;

import java.util.List;
import java.util.Optional;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.report.weak.ReadingWords;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Network;
import rillwright.solver.network.PointName;
import rillwright.solver.study.diagnosis.reading.Drawdown;
import rillwright.solver.study.diagnosis.reading.LevelBelow;
import rillwright.solver.study.diagnosis.reading.LineFlow;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Measurands;
import rillwright.solver.study.diagnosis.reading.Meter;
import rillwright.solver.study.diagnosis.reading.Sight;

/** What can be read at a job, each as the file writes it. */
public final class ReadingKinds implements Measurand.Teller<List<ReadingKinds.Kind>> {
  private static final String SECONDS = "8.6 s";

  private final Network network;
  private final ShownUnits units;

  private ReadingKinds(Network network, ShownUnits units) {
    this.network = network;
    this.units = units;
  }

  /**
   * A way to write a reading.
   *
   * @param what is read
   * @param words for it
   * @param written in the file up to its value, which comes next
   * @param example of a value
   */
  public record Kind(Measurand what, String words, String written, String example) {}

  /**
   * The ways to write a reading, the usual one first; none for what has no gauge yet and for looks.
   */
  public static List<Kind> of(Measurand what, Network network, ShownUnits units) {
    return what.tell(new ReadingKinds(network, units));
  }

  private Kind kind(Measurand what, String more, String written, String example) {
    String words = new ReadingWords(units).opening(what) + more;
    String when =
        what.when()
            .shutIn()
            .map(line -> ", when: valve shut, valve: " + json(line.value()))
            .orElseGet(
                () -> what.when().name().equals("running") ? "" : ", when: " + what.when().name());
    int last = written.lastIndexOf(", ");
    return new Kind(
        what, words, written.substring(0, last) + when + written.substring(last), example);
  }

  private static String at(PointName point, String field) {
    return "at: " + json(point.value()) + ", " + field;
  }

  private String depth() {
    return units.equals(ShownUnits.METRIC) ? "20 mm" : "3/4 in";
  }

  private String flow() {
    return units.equals(ShownUnits.METRIC) ? "9 m3/h" : "2400 gph";
  }

  @Override
  public List<Kind> flow(Measurands.Flow flow) {
    String bucket = units.equals(ShownUnits.METRIC) ? "20 L" : "5 gal";
    return List.of(
        kind(
            flow,
            ": seconds to fill " + bucket,
            at(flow.point(), "bucket: " + bucket + ", time"),
            SECONDS),
        kind(flow, ": as read", at(flow.point(), "flow"), flow()));
  }

  @Override
  public List<Kind> crestHead(Measurands.CrestHead head) {
    Measurands.Brink lip = new Measurands.Brink(head.fall(), head.when());
    return List.of(
        kind(head, ", upstream of it", at(head.fall(), "crest head"), depth()),
        kind(lip, "", at(lip.fall(), "brink"), depth()));
  }

  @Override
  public List<Kind> brink(Measurands.Brink brink) {
    return List.of(kind(brink, "", at(brink.fall(), "brink"), depth()));
  }

  @Override
  public List<Kind> teePressure(Measurands.TeePressure pressure) {
    return List.of(kind(pressure, "", at(pressure.tee(), "pressure"), pressure()));
  }

  private String pressure() {
    return units.equals(ShownUnits.METRIC) ? "25 kPa" : "3.6 psi";
  }

  @Override
  public List<Kind> gaugePressure(Measurands.GaugePressure pressure) {
    String written = "gauge: " + json(pressure.gauge()) + ", pressure";
    return List.of(kind(pressure, "", written, pressure()));
  }

  @Override
  public List<Kind> level(Measurands.Level level) {
    Kind itself = kind(level, "", at(level.point(), "level"), depth());
    List<Basin> basins = network.points(Basin.class);
    Optional<Chamber> chamber =
        network.points(Chamber.class).stream()
            .filter(it -> it.name().equals(level.point()))
            .findFirst();
    return chamber.isPresent() && basins.size() == 1
        ? List.of(
            itself,
            kind(
                new LevelBelow(level.point(), basins.get(0).name(), level.when()),
                "",
                at(level.point(), "below pond"),
                depth()))
        : List.of(itself);
  }

  @Override
  public List<Kind> power(Measurands.Power power) {
    return List.of(kind(power, "", "pump: " + json(power.line().value()) + ", power", "400 W"));
  }

  @Override
  public List<Kind> lineFlow(LineFlow flow) {
    return List.of(
        kind(flow, ": by a meter", "line: " + json(flow.line().value()) + ", flow", flow()));
  }

  @Override
  public List<Kind> drawdown(Drawdown drawdown) {
    return List.of(
        kind(
            drawdown,
            ": fall of the level in 5 s",
            at(drawdown.chamber(), "in: 5 s, drops"),
            units.equals(ShownUnits.METRIC) ? "40 mm" : "1.6 in"));
  }

  /** None to be written: it is entered at a touch. */
  @Override
  public List<Kind> sight(Sight sight) {
    return List.of();
  }

  @Override
  public List<Kind> meter(Meter meter) {
    String at = json(meter.at());
    return List.of(
        switch (meter.kind()) {
          case HANDLE -> kind(meter, ", from open", "look: handle, at: " + at + ", seen", "40 deg");
          case MOUTH -> kind(meter, "", "look: mouth, at: " + at + ", seen", depth());
          case VOLTS -> kind(meter, "", "pump: " + at + ", volts", "108 V");
          case BOX -> kind(meter, "", "at: " + at + ", where: box, flow", flow());
          case FALLS ->
              kind(
                  meter,
                  "",
                  "at: " + at + ", falls",
                  units.equals(ShownUnits.METRIC) ? "3 mm/h" : "1/8 in/h");
        });
  }

  @Override
  public List<Kind> levelBelow(LevelBelow level) {
    return List.of(kind(level, "", at(level.chamber(), "below pond"), depth()));
  }
}
