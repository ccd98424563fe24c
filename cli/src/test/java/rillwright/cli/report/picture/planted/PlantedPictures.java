package rillwright.cli.report.picture.planted;

import rillwright.cli.file.Project;
import rillwright.cli.study.solve.SolveRequest;
import rillwright.cli.study.solve.Solved;
import rillwright.curves.trace.SystemCurve;
import rillwright.solver.network.Network;
import rillwright.solver.pumping.PumpPlace;
import rillwright.solver.steady.SteadyState;
import rillwright.solver.steady.SteadyStateFinder;

/** Pictures that compute, for the test of the rules. */
final class PlantedPictures {
  private PlantedPictures() {}

  static final class Solves {
    SteadyState state(Network network) {
      return SteadyStateFinder.find(network);
    }
  }

  static final class Traces {
    SystemCurve curve(Network network, PumpPlace place) {
      return SystemCurve.trace(network, place, 1);
    }
  }

  static final class Asks {
    Solved solved(Project project) {
      return new SolveRequest().answer(project);
    }
  }
}
