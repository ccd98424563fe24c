package rillwright.cli.catalogue.page;

import static rillwright.cli.catalogue.page.Digits.fixed;
import static rillwright.cli.catalogue.page.Digits.inches;
import static rillwright.cli.catalogue.page.Digits.millimetres;
import static rillwright.cli.catalogue.page.Digits.range;
import static rillwright.cli.catalogue.page.Digits.three;
import static rillwright.cli.json.Quantity.METRES;
import static rillwright.cli.json.Quantity.NUMBER;
import static rillwright.cli.json.Quantity.PRESSURE;
import static rillwright.cli.json.Quantity.SHARE;

import java.util.List;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.CheckValveRow;
import rillwright.cli.catalogue.FittingLoss;
import rillwright.cli.catalogue.Material;
import rillwright.cli.catalogue.PipeEnd;
import rillwright.cli.catalogue.PipeSize;
import rillwright.cli.catalogue.SkimmerMouth;
import rillwright.cli.catalogue.ValveOpening;
import rillwright.curves.unit.Unit;
import rillwright.solver.network.PipeWall;

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
        DeviceSection.of(catalogue),
        skimmers(catalogue),
        OpenWaterSections.lips(catalogue),
        OpenWaterSections.beds(catalogue));
  }

  private static Section<PipeSize> pipes(Catalogue catalogue) {
    return new Section<>(
        "pipes",
        "pipes",
        "inside diameter, absolute roughness and, of pressure pipe, its rating in cool water",
        catalogue.listPipes(),
        pipe -> List.of(pipe.material(), pipe.material() + " " + pipe.size()),
        List.of(
            Column.words("material", PipeSize::material),
            Column.words("size", PipeSize::size),
            Column.number("inside, in", pipe -> fixed(inches(pipe.insideM()), 3)),
            Column.number("inside, mm", pipe -> fixed(millimetres(pipe.insideM()), 1)),
            Column.number("rough, mm", pipe -> three(millimetres(pipe.roughnessM()))),
            Column.words("range, mm", Sections::roughnessRange),
            Column.number("rated", Sections::rated)),
        List.of(
            Field.words("material", "Of which it is.", PipeSize::material),
            Field.words("size", "For which it holds; \"any\" for all.", PipeSize::size),
            Field.number("insideM", METRES.above(0), "Inside diameter.", PipeSize::insideM),
            Field.number("roughnessM", METRES.from(0), "Absolute roughness.", PipeSize::roughnessM),
            Field.number(
                "leastRoughnessM",
                METRES.from(0),
                "Least that it may be when new.",
                pipe -> pipe.wall().leastRoughnessM()),
            Field.number(
                "greatestRoughnessM",
                METRES.from(0),
                "Greatest that it may be when new.",
                pipe -> pipe.wall().greatestRoughnessM()),
            new Field.MaybeNumber<>(
                "ratedPressurePa",
                PRESSURE,
                "Pressure that it is made for in cool water; null if it is no pressure pipe or not"
                    + " known.",
                pipe ->
                    pipe.pressure().stream().mapToDouble(PipeWall::ratedPressurePa).findFirst())),
        PipeSize::source);
  }

  /** In the unit in which pipe of its kind is sold. */
  private static String rated(PipeSize pipe) {
    Unit unit = pipe.size().endsWith("mm") ? Unit.BAR : Unit.PSI;
    return pipe.pressure()
        .map(wall -> three(unit.fromSi(wall.ratedPressurePa())) + " " + unit.symbol())
        .orElse("");
  }

  private static String roughnessRange(PipeSize pipe) {
    Material wall = pipe.wall();
    return range(millimetres(wall.leastRoughnessM()), millimetres(wall.greatestRoughnessM()));
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
            Field.words("type", "Which.", FittingLoss::type),
            Field.words("size", "For which it holds; \"any\" for all.", FittingLoss::size),
            Field.number(
                "lossCoefficient",
                NUMBER.from(0),
                "K on the velocity head.",
                FittingLoss::lossCoefficient),
            Field.number(
                "least", NUMBER.from(0), "Least that is published or usual.", FittingLoss::least),
            Field.number(
                "greatest",
                NUMBER.from(0),
                "Greatest that is published or usual.",
                FittingLoss::greatest)),
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
            Field.words("name", "Which.", PipeEnd::name),
            Field.number(
                "lossCoefficient",
                NUMBER.from(0),
                "K on the velocity head.",
                PipeEnd::lossCoefficient),
            Field.number(
                "least", NUMBER.from(0), "Least that is published or usual.", PipeEnd::least),
            Field.number(
                "greatest",
                NUMBER.from(0),
                "Greatest that is published or usual.",
                PipeEnd::greatest)),
        PipeEnd::source);
  }

  private static Section<ValveOpening> valves(Catalogue catalogue) {
    return new Section<>(
        "valves",
        "valves",
        "K by opening, share of turn or lift; log K straight between; rows below open K are unused",
        catalogue.listValveOpenings(),
        opening -> List.of(opening.type()),
        List.of(
            Column.words("type", ValveOpening::type),
            Column.words("size", ValveOpening::size),
            Column.number("open, %", opening -> three(100 * opening.opening())),
            Column.number("turned from open", Sections::angle),
            Column.number("K", opening -> three(opening.lossCoefficient()))),
        List.of(
            Field.words("type", "Which.", ValveOpening::type),
            Field.words("size", "For which it holds; \"any\" for all.", ValveOpening::size),
            Field.number(
                "opening", SHARE.from(0).upTo(1), "Share of the travel.", ValveOpening::opening),
            Field.number(
                "lossCoefficient",
                NUMBER.from(0),
                "K on the velocity head.",
                ValveOpening::lossCoefficient)),
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
            Field.words("type", "Which.", CheckValveRow::type),
            Field.words("size", "For which it holds; \"any\" for all.", CheckValveRow::size),
            Field.number(
                "lossCoefficient",
                NUMBER.from(0),
                "K on the velocity head.",
                CheckValveRow::lossCoefficient),
            Field.number(
                "least", NUMBER.from(0), "Least that is published or usual.", CheckValveRow::least),
            Field.number(
                "greatest",
                NUMBER.from(0),
                "Greatest that is published or usual.",
                CheckValveRow::greatest),
            Field.number(
                "crackingHeadM",
                METRES.from(0),
                "Head at which it begins to open.",
                CheckValveRow::crackingHeadM),
            Field.number(
                "leastCrackingHeadM",
                METRES.from(0),
                "Least that is published or usual.",
                CheckValveRow::leastCrackingHeadM),
            Field.number(
                "greatestCrackingHeadM",
                METRES.from(0),
                "Greatest that is published or usual.",
                CheckValveRow::greatestCrackingHeadM)),
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
            Field.words("name", "Which.", SkimmerMouth::name),
            Field.number(
                "dischargeCoefficient",
                NUMBER.from(0),
                "Of the mouth as a weir.",
                SkimmerMouth::dischargeCoefficient)),
        SkimmerMouth::source);
  }
}
