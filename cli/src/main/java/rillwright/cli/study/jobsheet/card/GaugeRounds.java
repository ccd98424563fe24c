package rillwright.cli.study.jobsheet.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rillwright.cli.study.jobsheet.card.CardReading.Pressure;
import rillwright.cli.study.jobsheet.card.CardReading.When;
import rillwright.solver.network.LineName;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.reading.GaugeReading;
import rillwright.solver.reading.PumpsOff;
import rillwright.solver.reading.ShutOff;
import rillwright.solver.steady.NoBalance;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.study.diagnosis.reading.Tolerance;

/** Gauges: running, with the valve shut, with the pump off. */
final class GaugeRounds {
  private GaugeRounds() {}

  static List<CardReading> of(SteadyState state) {
    List<GaugeReading> running = GaugeReading.listIn(state);
    if (running.isEmpty()) {
      return List.of();
    }
    List<ShutOff> shutOffs =
        PumpPlace.listChosen(state.network()).stream()
            .flatMap(pump -> ShutOff.of(state.network(), pump).stream())
            .toList();
    List<Map<String, List<GaugeReading>>> shut =
        shutOffs.stream().map(shutOff -> byGauge(shutOff.readings())).toList();
    Map<String, List<GaugeReading>> pumpsOff = byGauge(pumpsOff(state));
    List<CardReading> readings = new ArrayList<>();
    for (GaugeReading reading : running) {
      readings.add(read(reading, When.RUNNING, List.of()));
      for (int i = 0; i < shutOffs.size(); i++) {
        List<LineName> shutIn = shutOffs.get(i).shutIn();
        same(reading, shut.get(i)).forEach(it -> readings.add(read(it, When.VALVE_SHUT, shutIn)));
      }
      same(reading, pumpsOff).stream()
          .filter(it -> it.pressurePa().isPresent())
          .forEach(it -> readings.add(read(it, When.PUMP_OFF, List.of())));
    }
    return readings;
  }

  private static List<GaugeReading> pumpsOff(SteadyState state) {
    try {
      return PumpsOff.listReadings(state.network());
    } catch (NoBalance drawsNeedThePump) {
      return List.of();
    }
  }

  private static Map<String, List<GaugeReading>> byGauge(List<GaugeReading> readings) {
    return readings.stream().collect(Collectors.groupingBy(reading -> reading.gauge().name()));
  }

  private static List<GaugeReading> same(GaugeReading as, Map<String, List<GaugeReading>> byGauge) {
    return byGauge.getOrDefault(as.gauge().name(), List.of());
  }

  private static CardReading read(GaugeReading reading, When when, List<LineName> shut) {
    double pressure = reading.pressurePa().orElse(0);
    double error = Tolerance.GAUGE.halfWidthAt(pressure);
    return new CardReading(
        reading.gauge().name(),
        new Pressure(when, shut),
        reading.pressurePa(),
        pressure - error,
        pressure + error);
  }
}
