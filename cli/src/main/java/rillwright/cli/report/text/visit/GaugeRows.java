package rillwright.cli.report.text.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.solve.Solved;
import rillwright.solver.network.LineName;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.reading.GaugeReading;
import rillwright.solver.reading.PumpsOff;
import rillwright.solver.reading.ShutOff;
import rillwright.solver.steady.NoBalance;

/** Gauges: running, with the valve shut, with the pump off. */
final class GaugeRows {
  /** Error of a gauge up to 15 psi or 1 bar of class 1.6, Pa: a quarter psi; common practice. */
  private static final double GAUGE_PA = 1724;

  private final Solved solved;
  private final ShownUnits units;
  private final TableBuilder table;
  private final Set<Hint> hints;

  private GaugeRows(Solved solved, TableBuilder table, Set<Hint> hints) {
    this.solved = solved;
    this.units = Shown.of(solved);
    this.table = table;
    this.hints = hints;
  }

  static void add(Solved solved, TableBuilder table, Set<Hint> hints) {
    new GaugeRows(solved, table, hints).add();
  }

  private void add() {
    List<GaugeReading> running = GaugeReading.listIn(solved.state());
    if (running.isEmpty()) {
      return;
    }
    List<ShutOff> shutOffs =
        PumpPlace.listChosen(solved.state().network()).stream()
            .flatMap(pump -> ShutOff.of(solved.state().network(), pump).stream())
            .toList();
    List<GaugeReading> pumpsOff = pumpsOff();
    for (GaugeReading reading : running) {
      row(reading.gauge().name(), "pump running", reading);
      for (ShutOff shutOff : shutOffs) {
        for (GaugeReading shut : same(reading, shutOff.readings())) {
          row("", "valve of " + names(shutOff.shutIn()) + " shut, 10 s at most", shut);
          hints.add(Hint.SHUT_OFF);
        }
      }
      for (GaugeReading off : same(reading, pumpsOff)) {
        if (off.pressurePa().isPresent()) {
          row("", "pump off, water standing", off);
          hints.add(Hint.PUMP_OFF);
        }
      }
    }
  }

  private List<GaugeReading> pumpsOff() {
    try {
      return PumpsOff.listReadings(solved.state().network());
    } catch (NoBalance drawsNeedThePump) {
      return List.of();
    }
  }

  private static List<GaugeReading> same(GaugeReading as, List<GaugeReading> readings) {
    List<GaugeReading> same = new ArrayList<>(readings);
    same.removeIf(reading -> !reading.gauge().name().equals(as.gauge().name()));
    return same;
  }

  private static String names(List<LineName> lines) {
    return lines.stream()
        .map(name -> '"' + name.value() + '"')
        .collect(Collectors.joining(" and "));
  }

  private void row(String name, String what, GaugeReading reading) {
    if (reading.pressurePa().isEmpty()) {
      table.row(name, what, "cut off", "");
      return;
    }
    double pressure = reading.pressurePa().getAsDouble();
    table.row(
        name,
        what,
        units.pressure(pressure),
        units.pressures(pressure - GAUGE_PA, pressure + GAUGE_PA));
  }
}
