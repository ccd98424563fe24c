package rillwright.cli.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import rillwright.cli.file.ProjectReader;
import rillwright.curves.unit.Unit;
import rillwright.solver.network.Fall;
import rillwright.solver.network.LineName;
import rillwright.solver.network.PointName;
import rillwright.solver.network.Pump;
import rillwright.solver.steady.LineState;
import rillwright.solver.steady.PartState;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/** The invented jobs give the numbers that another program gave; the citation heads the table. */
class SolvedJobsTest {
  private static final double TOLERANCE = 0.03;

  @ParameterizedTest(name = "{0} {1}: {2} is {3} {4}")
  @CsvFileSource(resources = "solved-jobs.csv", numLinesToSkip = 4)
  void agreesWithTheOtherProgram(
      String file, String changes, String what, double expected, String unit, double halfDigit) {
    List<String> list = changes == null ? List.of() : Stream.of(changes.split("; ")).toList();
    SteadyState state =
        SteadyStateFinder.find(
            ProjectReader.read(ExampleFolders.ROOT.resolve(file), list).network());

    double found = Unit.find(unit).orElseThrow().fromSi(quantity(state, what));

    assertEquals(expected, found, Math.max(TOLERANCE * expected, halfDigit));
  }

  private static double quantity(SteadyState state, String what) {
    for (Quantity quantity : Quantity.values()) {
      if (what.startsWith(quantity.words)) {
        return quantity.of(state, what.substring(quantity.words.length()));
      }
    }
    throw new IllegalArgumentException("no quantity is called " + what);
  }

  /** What a row tells, by its first words; the rest is the name of a point or line. */
  private enum Quantity {
    OUTFLOW("outflow ") {
      @Override
      double of(SteadyState state, String name) {
        return state.point(new PointName(name)).outflowM3PerS();
      }
    },
    HEAD("head ") {
      @Override
      double of(SteadyState state, String name) {
        return state.point(new PointName(name)).headM().orElseThrow();
      }
    },
    DROP("drop ") {
      @Override
      double of(SteadyState state, String name) {
        return -state.point(new PointName(name)).headM().orElseThrow();
      }
    },
    CREST_HEAD("crest head ") {
      @Override
      double of(SteadyState state, String name) {
        Fall fall = (Fall) state.network().point(new PointName(name));
        return fall.weir().headAt(OUTFLOW.of(state, name));
      }
    },
    FLOW("flow ") {
      @Override
      double of(SteadyState state, String name) {
        return line(state, name).flowM3PerS();
      }
    },
    VELOCITY("velocity ") {
      @Override
      double of(SteadyState state, String name) {
        return line(state, name).velocityMPerS().orElseThrow();
      }
    },
    PUMP_HEAD("pump head ") {
      @Override
      double of(SteadyState state, String name) {
        return pump(state, name).set().headAt(line(state, name).flowM3PerS());
      }
    },
    PUMP_POWER("pump power ") {
      @Override
      double of(SteadyState state, String name) {
        return pump(state, name).set().powerAt(line(state, name).flowM3PerS()).orElseThrow();
      }
    };

    private final String words;

    Quantity(String words) {
      this.words = words;
    }

    abstract double of(SteadyState state, String name);

    private static LineState line(SteadyState state, String name) {
      return state.line(new LineName(name));
    }

    private static Pump pump(SteadyState state, String name) {
      return line(state, name).parts().stream()
          .map(PartState::part)
          .filter(Pump.class::isInstance)
          .map(Pump.class::cast)
          .findFirst()
          .orElseThrow();
    }
  }
}
