package rillwright.cli.catalogue;

import java.util.Optional;
import rillwright.solver.law.Bore;

/**
 * A kind of check valve: loss = cracking head + K V²/2g.
 *
 * @param type as project files name it: {@code swing}
 * @param size the size for which it holds, {@code any} if for all
 * @param bore that size's bore; empty if for all
 * @param lossCoefficient K when open, dimensionless
 * @param least least K that is published or usual
 * @param greatest greatest K that is published or usual
 * @param crackingHeadM head at which it begins to open, m
 * @param leastCrackingHeadM least that is usual, m
 * @param greatestCrackingHeadM greatest that is usual, m
 * @param source where the numbers are from
 */
public record CheckValveRow(
    String type,
    String size,
    Optional<Bore> bore,
    double lossCoefficient,
    double least,
    double greatest,
    double crackingHeadM,
    double leastCrackingHeadM,
    double greatestCrackingHeadM,
    String source)
    implements Sized {

  private static final String SWING = "swing";

  /** Whether it is a swing check valve, whose disc the water must hold open. */
  public boolean swings() {
    return type.equals(SWING);
  }

  static CheckValveRow of(TableRow row, RoughFriction.SizedLoss loss) {
    return new CheckValveRow(
        row.text("type"),
        loss.size(),
        loss.bore(),
        loss.lossCoefficient(),
        row.number("least"),
        row.number("greatest"),
        row.lengthM("cracking"),
        row.lengthM("cracking least"),
        row.lengthM("cracking greatest"),
        row.source());
  }
}
