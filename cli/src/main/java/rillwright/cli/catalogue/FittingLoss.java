package rillwright.cli.catalogue;

import java.util.Optional;
import rillwright.solver.law.Bore;

/**
 * Loss of a fitting, on the velocity head of the bore that it sits in.
 *
 * @param type as project files name it: {@code elbow 90}
 * @param size the size for which it holds, {@code any} if for all
 * @param bore that size's bore; empty if for all
 * @param lossCoefficient K, dimensionless
 * @param least least K that is published or usual
 * @param greatest greatest K that is published or usual
 * @param source where the numbers are from
 */
public record FittingLoss(
    String type,
    String size,
    Optional<Bore> bore,
    double lossCoefficient,
    double least,
    double greatest,
    String source)
    implements Sized {

  static FittingLoss of(TableRow row, RoughFriction.SizedLoss loss) {
    return new FittingLoss(
        row.text("type"),
        loss.size(),
        loss.bore(),
        loss.lossCoefficient(),
        row.number("least"),
        row.number("greatest"),
        row.source());
  }
}
