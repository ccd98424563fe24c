package rillwright.cli.catalogue.page;

import static rillwright.cli.catalogue.page.Digits.fixed;
import static rillwright.cli.catalogue.page.Digits.inches;
import static rillwright.cli.catalogue.page.Digits.millimetres;
import static rillwright.cli.catalogue.page.Digits.range;
import static rillwright.cli.catalogue.page.Digits.three;
import static rillwright.cli.json.Quantity.METRES;
import static rillwright.cli.json.Quantity.NUMBER;
import static rillwright.cli.json.Quantity.SHARE;

import java.util.List;
import java.util.Locale;
import rillwright.cli.catalogue.Bed;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.Lip;
import rillwright.curves.unit.Unit;

/** The sections about water under the open sky: lips of falls and stream beds. */
final class OpenWaterSections {
  /** Q = C b h^1.5 has C in m^½/s; in feet it is larger by the root of feet in a metre. */
  private static final double FEET_ROOT = Math.sqrt(Unit.FOOT.fromSi(1));

  private OpenWaterSections() {}

  static Section<Lip> lips(Catalogue catalogue) {
    return new Section<>(
        "lips",
        "lips",
        "Q = C b h^1.5 over a fall's crest, h upstream of it; and how far a depth may be off",
        catalogue.listLips(),
        lip -> List.of(lip.name()),
        List.of(
            Column.words("lip", Lip::name),
            Column.number("C, metric", lip -> fixed(lip.coefficient(), 2)),
            Column.number("C, feet", lip -> fixed(lip.coefficient() * FEET_ROOT, 2)),
            Column.number("depth", lip -> "±" + three(100 * lip.band()) + " %"),
            Column.words("sheet at the brink", OpenWaterSections::brink)),
        List.of(
            Field.words("name", "Which.", Lip::name),
            Field.number("coefficient", NUMBER.from(0), "C of Q = C b h^1.5.", Lip::coefficient),
            Field.words("brink", "How the sheet leaves it.", OpenWaterSections::brink),
            Field.number(
                "band", SHARE.from(0).upTo(1), "By what share a depth may be off.", Lip::band)),
        Lip::source);
  }

  /** {@code thin edge}, {@code free overfall}. */
  private static String brink(Lip lip) {
    return lip.brink().name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  static Section<Bed> beds(Catalogue catalogue) {
    return new Section<>(
        "beds",
        "beds",
        "stream beds: Manning n, or the size of stone (84 % are smaller) for shallow water",
        catalogue.listBeds(),
        bed -> List.of(bed.name()),
        List.of(
            Column.words("bed", Bed::name),
            Column.words("computed with", bed -> measure(bed)),
            Column.words("range", OpenWaterSections::bedRange),
            Column.words("what it is like", Bed::about)),
        List.of(
            Field.words("name", "Which.", Bed::name),
            new Field.MaybeNumber<>(
                "manningN",
                NUMBER.above(0),
                "Manning n; null if known by its stones.",
                Bed::manningN),
            new Field.MaybeNumber<>(
                "stoneM", METRES.above(0), "D84; null if known by Manning n.", Bed::stoneM),
            Field.number("least", NUMBER.from(0), "Least that is published or usual.", Bed::least),
            Field.number(
                "greatest", NUMBER.from(0), "Greatest that is published or usual.", Bed::greatest),
            Field.words("about", "What it is like.", Bed::about)),
        Bed::source);
  }

  private static String measure(Bed bed) {
    return bed.measure() == Bed.Measure.MANNING_N
        ? "n " + fixed(bed.normal(), 3)
        : three(millimetres(bed.normal())) + " mm, " + fixed(inches(bed.normal()), 1) + " in";
  }

  private static String bedRange(Bed bed) {
    return bed.measure() == Bed.Measure.MANNING_N
        ? range(bed.least(), bed.greatest())
        : range(millimetres(bed.least()), millimetres(bed.greatest())) + " mm";
  }
}
