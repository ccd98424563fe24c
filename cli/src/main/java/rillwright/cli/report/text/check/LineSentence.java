package rillwright.cli.report.text.check;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.report.text.PartWords;
import rillwright.cli.report.units.ShownUnits;
import rillwright.solver.network.EndLoss;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineEnd;
import rillwright.solver.network.Part;

/** The parts of a line in a row: "run; 3 × elbow 90 (K 0.9)". */
final class LineSentence {
  private LineSentence() {}

  static String of(Line line, ShownUnits units) {
    List<String> parts = new ArrayList<>();
    end("entrance", line.entrance(), true, units, parts);
    for (int i = 0; i < line.parts().size(); i++) {
      Part part = line.parts().get(i);
      line.changeOfBoreAt(i).ifPresent(change -> parts.add(PartWords.of(change, units)));
      String friction = FrictionWords.of(part, units);
      parts.add(PartWords.of(part, units) + friction);
    }
    end("exit", line.exit(), false, units, parts);
    return String.join("; ", parts);
  }

  private static void end(
      String name, LineEnd end, boolean atFrom, ShownUnits units, List<String> parts) {
    EndLoss loss = end.loss();
    double k = atFrom ? loss.kEntering() : loss.kLeaving();
    if (end.bore().isPresent() && k > 0) {
      parts.add(name + " (K " + units.number(k) + ")");
    }
  }
}
