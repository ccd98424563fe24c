package rillwright.curves.sheet.fact;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.solver.law.pump.SuctionNeeds;

/**
 * What a data sheet says in its comments.
 *
 * @param maker who makes the pump
 * @param price of one pump
 * @param kind such as submersible or external; "invented" of a curve that is no pump's
 * @param needs what it asks of the water at its inlet
 * @param variableSpeed speeds at which it may run
 * @param solidsM largest stone that passes through it, m
 * @param nameplate what it says of the supply
 * @param remarks all other comment lines, in their order
 */
public record SheetFacts(
    Optional<String> maker,
    Optional<Price> price,
    Optional<String> kind,
    SuctionNeeds needs,
    Optional<SpeedRange> variableSpeed,
    OptionalDouble solidsM,
    Nameplate nameplate,
    List<String> remarks) {
  public SheetFacts {
    remarks = List.copyOf(remarks);
  }

  /** Whether the curve is no pump's, but stands for one that is not chosen yet. */
  public boolean isInvented() {
    return kind.filter("invented"::equalsIgnoreCase).isPresent();
  }

  /** Whether it stands under water, where none pumps into another. */
  public boolean isSubmersible() {
    return kind.map(it -> it.toLowerCase(Locale.ROOT))
        .filter(it -> it.contains("submersible"))
        .filter(it -> !it.matches(".*\\bno[nt][- ]?submersible.*"))
        .isPresent();
  }

  /** Whether it stands beside the water, on a suction pipe; false where the sheet does not say. */
  public boolean isExternal() {
    return !isSubmersible()
        && kind.map(it -> it.toLowerCase(Locale.ROOT))
            .filter(it -> it.contains("external"))
            .isPresent();
  }

  /** The same with one more remark. */
  public SheetFacts withRemark(String remark) {
    List<String> more = new ArrayList<>(remarks);
    more.add(remark);
    return new SheetFacts(maker, price, kind, needs, variableSpeed, solidsM, nameplate, more);
  }

  /** Nothing said. */
  public static SheetFacts none() {
    return new SheetFacts(
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        SuctionNeeds.NONE,
        Optional.empty(),
        OptionalDouble.empty(),
        Nameplate.NONE,
        List.of());
  }
}
