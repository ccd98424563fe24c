package rillwright.cli.file.visit;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rillwright.cli.file.Project;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Ledger;
import rillwright.cli.file.outline.ReadingForm;
import rillwright.cli.file.outline.SignsReader;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.SourceText;
import rillwright.cli.file.tree.TreeReader;
import rillwright.solver.network.Network;
import rillwright.solver.study.diagnosis.reading.Reading;

/** Reads what was read and seen on site, from a project or from a file of its own. */
public final class VisitReader {
  private static final List<String> SECTIONS =
      List.of("rillwright", "title", "show", "readings", "signs");

  private final Network network;
  private final Ledger ledger;

  private VisitReader(Network network, Ledger ledger) {
    this.network = network;
    this.ledger = ledger;
  }

  /**
   * What a project says.
   *
   * @throws rillwright.cli.file.fault.InvalidInput with all that is wrong with it
   */
  public static Visit inProject(Project project) {
    String file = project.places().whole().source();
    return new VisitReader(project.network(), new Ledger(file))
        .read(project.tree(), project.tree().keys());
  }

  /**
   * What a file of readings says.
   *
   * @throws rillwright.cli.file.fault.InvalidInput with all that is wrong with it
   */
  public static Visit inFile(Path file, Network network) {
    MapNode tree = TreeReader.read(SourceText.read(file));
    return new VisitReader(network, new Ledger(file.toString())).read(tree, SECTIONS);
  }

  private Visit read(MapNode tree, List<String> sections) {
    Fields root = Fields.of(tree, "", ledger, sections);
    if (root.findText("show").filter("metric"::equals).isPresent()) {
      ledger.showMetric();
    }
    ReadingReader reader = new ReadingReader(network);
    List<PlacedReading> placed = new ArrayList<>();
    for (Fields fields : root.listRows("readings", ReadingForm.ALL)) {
      reader
          .read(fields)
          .ifPresent(
              reading -> {
                contradictions(fields, reading, placed);
                placed.add(new PlacedReading(reading, fields.place()));
              });
    }
    Visit visit = new Visit(placed, SignsReader.read(root));
    ledger.faults().throwIfAny();
    return visit;
  }

  private static void contradictions(Fields fields, Reading reading, List<PlacedReading> before) {
    for (PlacedReading other : before) {
      if (other.reading().what().equals(reading.what())) {
        double apart = Math.abs(other.reading().value() - reading.value());
        double both =
            Math.hypot(
                other.reading().tolerance().halfWidthAt(other.reading().value()),
                reading.tolerance().halfWidthAt(reading.value()));
        if (apart > 1.5 * both) {
          fields.fault(
              String.format(
                  Locale.ROOT,
                  "this contradicts the reading of the same quantity in line %d, column %d: they"
                      + " are %.1f times as far apart as both tolerances allow; read it again and"
                      + " keep what you trust",
                  other.place().line(),
                  other.place().column(),
                  apart / both));
        }
      }
    }
  }
}
