package rillwright.solver.study.diagnosis.reading;

import java.util.List;
import java.util.Optional;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Pump;
import rillwright.solver.network.Valve;
import rillwright.solver.reading.GaugeReading;
import rillwright.solver.reading.PumpsOff;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.study.diagnosis.job.Alteration;
import rillwright.solver.study.diagnosis.job.PartPlace;
import rillwright.solver.study.diagnosis.reading.Effort.Risk;

/** The state into which the job is brought for a reading. */
public sealed interface When {

  /** As project files name it. */
  String name();

  /** The line whose valve is shut for it, where one is. */
  default Optional<LineName> shutIn() {
    return Optional.empty();
  }

  /** Brings it about. */
  void apply(Alteration job);

  /** What gauges show in it. */
  List<GaugeReading> gauges(SteadyState state);

  /** What it takes to read a gauge in it. */
  Effort gaugeEffort();

  /** As it runs. */
  record Running() implements When {
    @Override
    public String name() {
      return "running";
    }

    @Override
    public void apply(Alteration job) {}

    @Override
    public Effort gaugeEffort() {
      return new Effort(5, Risk.NONE);
    }

    @Override
    public List<GaugeReading> gauges(SteadyState state) {
      return GaugeReading.listIn(state);
    }
  }

  /** The last valve of a line shut, for as long as it takes to read. */
  record ValveShut(LineName line) implements When {

    /** The index of a line's last valve, from 0; −1 without one. */
    public static int lastValve(Line line) {
      return line.placed(Valve.class).stream().mapToInt(Placed::index).max().orElse(-1);
    }

    @Override
    public String name() {
      return "valve shut";
    }

    @Override
    public Optional<LineName> shutIn() {
      return Optional.of(line);
    }

    @Override
    public void apply(Alteration job) {
      int valve = lastValve(job.asBuilt().line(line));
      job.changePart(new PartPlace(line, valve), Valve.class, Valve::shut);
    }

    @Override
    public Effort gaugeEffort() {
      return new Effort(5, Risk.SHUT_OFF);
    }

    @Override
    public List<GaugeReading> gauges(SteadyState state) {
      return GaugeReading.listStanding(state);
    }
  }

  /**
   * The last valve of a line set otherwise, for as long as it takes to read.
   *
   * @param open share of its handle's travel, 0 to 1
   */
  record ValveAt(LineName line, double open) implements When {

    /** Whether a line's last valve is one whose loss by opening is known. */
    public static boolean isPossible(Line line) {
      int valve = ValveShut.lastValve(line);
      return valve >= 0
          && line.parts().get(valve) instanceof Valve last
          && last.loss() instanceof Valve.Opening;
    }

    @Override
    public String name() {
      return "valve at";
    }

    @Override
    public void apply(Alteration job) {
      int valve = ValveShut.lastValve(job.asBuilt().line(line));
      job.changePart(
          new PartPlace(line, valve),
          Valve.class,
          last -> last.loss() instanceof Valve.Opening by ? last.withSetpoint(by.at(open)) : last);
    }

    @Override
    public Effort gaugeEffort() {
      return new Effort(5, Risk.NONE);
    }

    @Override
    public List<GaugeReading> gauges(SteadyState state) {
      return GaugeReading.listIn(state);
    }
  }

  /** All pumps off, the water standing. */
  record PumpOff() implements When {
    @Override
    public String name() {
      return "pump off";
    }

    @Override
    public void apply(Alteration job) {
      job.asBuilt().placed(Pump.class).stream()
          .map(PartPlace::of)
          .forEach(place -> job.changePart(place, Pump.class, pump -> pump.atSpeed(0)));
    }

    @Override
    public Effort gaugeEffort() {
      return new Effort(5, Risk.PUMP_OFF);
    }

    @Override
    public List<GaugeReading> gauges(SteadyState state) {
      return PumpsOff.listReadingsIn(state);
    }
  }
}
