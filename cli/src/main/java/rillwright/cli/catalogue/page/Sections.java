package rillwright.cli.catalogue.page;

import static rillwright.cli.catalogue.page.Digits.fixed;
import static rillwright.cli.catalogue.page.Digits.inches;
import static rillwright.cli.catalogue.page.Digits.millimetres;
import static rillwright.cli.catalogue.page.Digits.range;
import static rillwright.cli.catalogue.page.Digits.three;

import java.util.List;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.CheckValveRow;
import rillwright.cli.catalogue.FittingLoss;
import rillwright.cli.catalogue.PipeEnd;
import rillwright.cli.catalogue.PipeSize;
import rillwright.cli.catalogue.SkimmerMouth;
import rillwright.cli.catalogue.ValveOpening;

/** The sections about what water flows through in pipes. */
final class Sections {
  private Sections() {}

  /** All sections, in the order in which they are printed. */
  static List<Section<?>> all(Catalogue catalogue) {
    return List.of(
        pipes(catalogue),
        fittings(catalogue),
        ends(catalogue),
        valves(catalogue),
        checkValves(catalogue),
        skimmers(catalogue),
        OpenWaterSections.lips(catalogue),
        OpenWaterSections.beds(catalogue));
  }

  private static Section<PipeSize> pipes(Catalogue catalogue) {
    return new Section<>(
        "pipes",
        "pipes",
        "inside diameter and absolute roughness",
        catalogue.listPipes(),
        pipe -> List.of(pipe.material(), pipe.material() + " " + pipe.size()),
        List.of(
            Column.words("material", PipeSize::material),
            Column.words("size", PipeSize::size),
            Column.number("inside, in", pipe -> fixed(inches(pipe.insideM()), 3)),
            Column.number("inside, mm", pipe -> fixed(millimetres(pipe.insideM()), 1)),
            Column.number("roughness, mm", pipe -> three(millimetres(pipe.roughnessM())))),
        List.of(
            Field.words("material", PipeSize::material),
            Field.words("size", PipeSize::size),
            Field.number("insideM", PipeSize::insideM),
            Field.number("roughnessM", PipeSize::roughnessM)),
        PipeSize::source);
  }

  private static Section<FittingLoss> fittings(Catalogue catalogue) {
    return new Section<>(
        "fittings",
        "fittings",
        "loss coefficient K on the velocity head of the bore they sit in",
        catalogue.listFittings(),
        fitting -> List.of(fitting.type()),
        List.of(
            Column.words("type", FittingLoss::type),
            Column.words("size", FittingLoss::size),
            Column.number("K", fitting -> three(fitting.lossCoefficient())),
            Column.words("range", fitting -> range(fitting.least(), fitting.greatest()))),
        List.of(
            Field.words("type", FittingLoss::type),
            Field.words("size", FittingLoss::size),
            Field.number("lossCoefficient", FittingLoss::lossCoefficient),
            Field.number("least", FittingLoss::least),
            Field.number("greatest", FittingLoss::greatest)),
        FittingLoss::source);
  }

  private static Section<PipeEnd> ends(Catalogue catalogue) {
    return new Section<>(
        "ends",
        "ends",
        "K of a pipe's ends in open water, to write as entrance: {k: ...} or exit: {k: ...}",
        catalogue.listEnds(),
        end -> List.of(end.name()),
        List.of(
            Column.words("end", PipeEnd::name),
            Column.number("K", end -> three(end.lossCoefficient())),
            Column.words("range", end -> range(end.least(), end.greatest()))),
        List.of(
            Field.words("name", PipeEnd::name),
            Field.number("lossCoefficient", PipeEnd::lossCoefficient),
            Field.number("least", PipeEnd::least),
            Field.number("greatest", PipeEnd::greatest)),
        PipeEnd::source);
  }

  private static Section<ValveOpening> valves(Catalogue catalogue) {
    return new Section<>(
        "valves",
        "valves",
        "K by opening: share of the handle's turn or the stem's lift; log K straight in between",
        catalogue.listValveOpenings(),
        opening -> List.of(opening.type()),
        List.of(
            Column.words("type", ValveOpening::type),
            Column.number("open, %", opening -> three(100 * opening.openShare())),
            Column.number("turned from open", Sections::angle),
            Column.number("K", opening -> three(opening.lossCoefficient()))),
        List.of(
            Field.words("type", ValveOpening::type),
            Field.number("openShare", ValveOpening::openShare),
            Field.number("lossCoefficient", ValveOpening::lossCoefficient)),
        ValveOpening::source);
  }

  private static String angle(ValveOpening opening) {
    return opening.degreesFromOpen().isPresent()
        ? three(opening.degreesFromOpen().getAsDouble()) + "°"
        : "";
  }

  private static Section<CheckValveRow> checkValves(Catalogue catalogue) {
    return new Section<>(
        "check valves",
        "checkValves",
        "K when open, and the head at which they begin to open",
        catalogue.listCheckValves(),
        valve -> List.of(valve.type()),
        List.of(
            Column.words("type", CheckValveRow::type),
            Column.words("size", CheckValveRow::size),
            Column.number("K", valve -> three(valve.lossCoefficient())),
            Column.words("range", valve -> range(valve.least(), valve.greatest())),
            Column.number("opens at, in", valve -> fixed(inches(valve.crackingHeadM()), 1)),
            Column.number("opens at, mm", valve -> three(millimetres(valve.crackingHeadM()))),
            Column.words("range, mm", Sections::crackingRange)),
        List.of(
            Field.words("type", CheckValveRow::type),
            Field.words("size", CheckValveRow::size),
            Field.number("lossCoefficient", CheckValveRow::lossCoefficient),
            Field.number("least", CheckValveRow::least),
            Field.number("greatest", CheckValveRow::greatest),
            Field.number("crackingHeadM", CheckValveRow::crackingHeadM),
            Field.number("leastCrackingHeadM", CheckValveRow::leastCrackingHeadM),
            Field.number("greatestCrackingHeadM", CheckValveRow::greatestCrackingHeadM)),
        CheckValveRow::source);
  }

  private static String crackingRange(CheckValveRow valve) {
    return range(
        millimetres(valve.leastCrackingHeadM()), millimetres(valve.greatestCrackingHeadM()));
  }

  private static Section<SkimmerMouth> skimmers(Catalogue catalogue) {
    return new Section<>(
        "skimmers",
        "skimmers",
        "discharge coefficient Cd of the mouth, as a weir over its sill",
        catalogue.listSkimmers(),
        mouth -> List.of(mouth.name(), "skimmer"),
        List.of(
            Column.words("mouth", SkimmerMouth::name),
            Column.number("Cd", mouth -> three(mouth.dischargeCoefficient()))),
        List.of(
            Field.words("name", SkimmerMouth::name),
            Field.number("dischargeCoefficient", SkimmerMouth::dischargeCoefficient)),
        SkimmerMouth::source);
  }
}
