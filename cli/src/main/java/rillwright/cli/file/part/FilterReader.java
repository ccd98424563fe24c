package rillwright.cli.file.part;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.solver.law.HeadLaw;
import rillwright.solver.law.NoLoss;
import rillwright.solver.law.filter.TwoTermFit;
import rillwright.solver.law.minor.PowerLoss;
import rillwright.solver.network.Filter;
import rillwright.solver.network.Part;

/** Reads filters. */
final class FilterReader implements PartReader {
  private static final Range EXPONENT = Range.between(1, 2, "must be 1 to 2");
  private static final double USUAL_EXPONENT = 2;

  private final Measure head;

  FilterReader(Measure head) {
    this.head = head;
  }

  @Override
  public String kind() {
    return "filter";
  }

  @Override
  public List<String> fields() {
    return List.of("rating", "points", "clogged", "open top", "holds");
  }

  @Override
  public Part read(Fields fields, Surroundings around) {
    return new Filter(
        clean(fields),
        fields.findOr("clogged", Measure.SHARE, Range.SHARE, 0),
        fields.find("open top", head, Range.POSITIVE),
        fields.findOr("holds", Measure.VOLUME, Range.NOT_NEGATIVE, 0));
  }

  private HeadLaw clean(Fields fields) {
    if (fields.has("rating") == fields.has("points")) {
      fields.fault(
          "give its loss when clean either as one rating, for example \"rating: {flow: 3000 gph,"
              + " head: 4 ft}\", or as points");
    }
    return fields.has("rating")
        ? fields
            .findFields("rating", List.of("flow", "head", "exponent"))
            .<HeadLaw>map(this::rated)
            .orElse(NoLoss.bothWays())
        : throughPoints(fields);
  }

  private PowerLoss rated(Fields rating) {
    double flow = rating.require("flow", Measure.FLOW, Range.POSITIVE, "3000 gph");
    double headM = rating.require("head", head, Range.POSITIVE, "4 ft");
    double exponent = rating.findOr("exponent", Measure.NUMBER, EXPONENT, USUAL_EXPONENT);
    return new PowerLoss(headM, flow, exponent);
  }

  private HeadLaw throughPoints(Fields fields) {
    List<TwoTermFit.Point> points = new ArrayList<>();
    for (Fields row : fields.listRows("points", List.of("flow", "head"))) {
      double flow = row.require("flow", Measure.FLOW, Range.NOT_NEGATIVE, "3000 gph");
      double headM = row.require("head", head, Range.NOT_NEGATIVE, "4 ft");
      if (row.areSound() && flow > 0 && headM == 0) {
        row.fault("head", "a filter takes some head at any flow; it must be greater than 0");
      }
      if (row.areSound() && flow > 0) {
        points.add(new TwoTermFit.Point(flow, headM));
      }
    }
    if (!fields.areSound()) {
      return NoLoss.bothWays();
    }
    try {
      return TwoTermFit.through(points);
    } catch (IllegalArgumentException e) {
      fields.fault("points", "these points are no filter's: " + e.getMessage());
      return NoLoss.bothWays();
    }
  }
}
