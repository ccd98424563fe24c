package rillwright.cli.file.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Limits;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.solver.law.Bore;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.NoLoss;
import rillwright.solver.law.curve.MonotoneCubic;
import rillwright.solver.law.curve.MonotoneCubic.EndSlopes;
import rillwright.solver.law.curve.MonotoneCubic.Knot;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.law.minor.TabulatedLoss;
import rillwright.solver.law.minor.VelocityHeadLoss;
import rillwright.solver.network.Loss;
import rillwright.solver.network.Part;

/** Reads losses of any other kind. */
final class LossReader implements PartReader {
  private static final Range EXPONENT = Range.between(1, 10, "must be 1 to 10");
  private static final double USUAL_EXPONENT = 2;

  private final StandingBore bores;
  private final Measure head;

  LossReader(StandingBore bores, Measure head) {
    this.bores = bores;
    this.head = head;
  }

  @Override
  public String kind() {
    return "loss";
  }

  @Override
  public List<String> fields() {
    List<String> fields = new ArrayList<>(List.of("k", "flow", "head", "exponent", "points"));
    fields.addAll(PipeReader.BORE_FIELDS);
    return fields;
  }

  @Override
  public Part read(Fields fields, Surroundings around) {
    boolean rated = fields.has("flow") || fields.has("head") || fields.has("exponent");
    int ways = (fields.has("k") ? 1 : 0) + (rated ? 1 : 0) + (fields.has("points") ? 1 : 0);
    if (ways != 1) {
      fields.fault("give either its k, or a flow and a head, or points");
    }
    if (fields.has("k")) {
      Bore bore = bores.require(fields, around);
      double k = fields.findOr("k", Measure.NUMBER, Limits.LOSS_COEFFICIENT, 0);
      return new Loss(new VelocityHeadLoss(k, bore), Optional.of(bore), true);
    }
    for (String field : PipeReader.BORE_FIELDS) {
      if (fields.has(field)) {
        fields.fault(field, "only a loss that is given by its k has a bore");
      }
    }
    return new Loss(rated ? rated(fields) : throughPoints(fields), Optional.empty(), true);
  }

  private HeadLaw rated(Fields fields) {
    double flow = fields.require("flow", Measure.FLOW, Range.POSITIVE, "3000 gph");
    double headM = fields.require("head", head, Range.POSITIVE, "3 ft");
    double exponent = fields.findOr("exponent", Measure.NUMBER, EXPONENT, USUAL_EXPONENT);
    return new PowerLoss(headM, flow, exponent);
  }

  private HeadLaw throughPoints(Fields fields) {
    List<Knot> knots = new ArrayList<>(List.of(new Knot(0, 0)));
    for (Fields row : fields.listRows("points", List.of("flow", "head"))) {
      double flow = row.require("flow", Measure.FLOW, Range.NOT_NEGATIVE, "3000 gph");
      double headM = row.require("head", head, Range.NOT_NEGATIVE, "3 ft");
      Knot before = knots.get(knots.size() - 1);
      boolean origin = flow == 0 && headM == 0 && knots.size() == 1;
      if (row.areSound() && !origin && !(flow > before.x() && headM > before.y())) {
        row.fault("flow and head must both rise from point to point, beginning at 0");
      }
      if (!origin) {
        knots.add(new Knot(flow, headM));
      }
    }
    if (fields.has("points") && knots.size() < 2 && fields.areSound()) {
      fields.fault("points", "a loss needs a point with a flow and a head");
    }
    if (!fields.areSound()) {
      return NoLoss.bothWays();
    }
    try {
      return new TabulatedLoss(MonotoneCubic.through(knots, EndSlopes.STEEP_AT_LAST));
    } catch (IllegalArgumentException e) {
      fields.fault("points", "two of these points are too close together");
      return NoLoss.bothWays();
    }
  }
}
