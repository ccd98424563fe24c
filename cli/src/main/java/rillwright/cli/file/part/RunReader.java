package rillwright.cli.file.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.solver.law.Bore;
import rillwright.solver.network.Friction;
import rillwright.solver.network.Part;
import rillwright.solver.network.Run;

/** Reads runs of pipe. */
final class RunReader implements PartReader {
  /** Up to which share of the bore the friction law holds, with room for rounding. */
  private static final double ROUGHEST = 0.05 * (1 + 1e-9);

  private final PipeReader pipes;

  RunReader(PipeReader pipes) {
    this.pipes = pipes;
  }

  @Override
  public String kind() {
    return "run";
  }

  @Override
  public List<String> fields() {
    List<String> fields = new ArrayList<>(List.of("length"));
    fields.addAll(PipeReader.FIELDS);
    return fields;
  }

  @Override
  public boolean isPipe() {
    return true;
  }

  @Override
  public Part read(Fields fields, Surroundings around) {
    double length = fields.require("length", Measure.LENGTH, Range.POSITIVE, "38 ft");
    PipeSpec own = pipes.read(fields, around.pipe().material());
    if (own.material().isPresent() && own.bore().isEmpty()) {
      fields.fault("material", "give the size too, or the inside diameter");
    }
    PipeSpec whole = own.or(around.pipe());
    if (!own.isBlocked() && !around.pipe().isBlocked()) {
      PipeReader.requireOpen(fields, whole);
    }
    Optional<Bore> bore = whole.bore();
    Optional<Friction> friction = whole.friction();
    if (fields.areSound() && bore.isEmpty()) {
      fields.fault(
          "its bore is not known; give the line a pipe, or the run a material and size or an"
              + " inside diameter");
    } else if (fields.areSound() && friction.isEmpty()) {
      fields.fault(
          "the friction of its wall is not known; give a material and size, or roughness,"
              + " hazen c or factor");
    }
    Bore inside = bore.orElse(new Bore(1));
    Friction wall = friction.orElse(new Friction.Roughness(0));
    if (fields.areSound() && isTooRough(wall, inside)) {
      fields.fault(
          "the roughness is more than 5 % of the inside diameter, which no friction law covers");
    }
    return new Run(length, inside, wall, whole.label().orElse(""), whole.wall());
  }

  private static boolean isTooRough(Friction wall, Bore inside) {
    return wall instanceof Friction.Roughness roughness
        && roughness.roughnessM() > ROUGHEST * inside.diameterM();
  }
}
