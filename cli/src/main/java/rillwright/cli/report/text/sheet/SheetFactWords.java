package rillwright.cli.report.text.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import rillwright.cli.report.units.ShownUnits;
import rillwright.curves.sheet.fact.Nameplate;
import rillwright.curves.sheet.fact.SheetFacts;

/** What the comments of a data sheet say. */
final class SheetFactWords {
  private final ShownUnits units;

  SheetFactWords(ShownUnits units) {
    this.units = units;
  }

  /** A line each; empty if the sheet says nothing. */
  List<String> of(SheetFacts facts) {
    List<String> lines = new ArrayList<>();
    facts.maker().ifPresent(maker -> lines.add("Maker: " + maker));
    facts.kind().ifPresent(kind -> lines.add("Kind: " + kind));
    facts
        .price()
        .ifPresent(it -> lines.add("Price: " + units.number(it.amount()) + " " + it.currency()));
    add("Water over its inlet, at least: ", facts.needs().minSubmergenceM(), units::width, lines);
    add("NPSH required: ", facts.needs().npshRequiredM(), units::writtenHead, lines);
    add("Primes itself from up to: ", facts.needs().selfPrimingM(), units::writtenHead, lines);
    facts
        .variableSpeed()
        .ifPresent(
            it ->
                lines.add(
                    "Variable speed: "
                        + units.share(it.least())
                        + " to "
                        + units.share(it.greatest())));
    add("Solids up to: ", facts.solidsM(), units::width, lines);
    nameplate(facts.nameplate(), lines);
    facts.remarks().forEach(remark -> lines.add("Note: " + remark));
    return lines;
  }

  private void nameplate(Nameplate plate, List<String> lines) {
    add("Rated power: ", plate.ratedPowerW(), units::power, lines);
    add("Voltage: ", plate.voltageV(), volts -> units.number(volts) + " V", lines);
    add("Power factor: ", plate.powerFactor(), units::number, lines);
    if (plate.phases() > 1) {
      lines.add("Phases: " + plate.phases());
    }
  }

  private static void add(
      String opening, OptionalDouble si, Function<Double, String> words, List<String> lines) {
    si.ifPresent(it -> lines.add(opening + words.apply(it)));
  }
}
