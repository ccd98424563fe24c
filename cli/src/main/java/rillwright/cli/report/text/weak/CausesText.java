package rillwright.cli.report.text.weak;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.text.PartWords;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.report.weak.CausePlace;
import rillwright.cli.report.weak.RiskWords;
import rillwright.cli.study.weak.CausesAnswer;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.cause.Sign;
import rillwright.solver.study.diagnosis.cause.SizeRange;

/** The causes of a job before anything was read, for people. */
public final class CausesText {
  /** Lengths from here on are shown as heads. */
  private static final double TALL_M = 0.5;

  private CausesText() {}

  /** The page. */
  public static Page of(CausesAnswer answer) {
    PageBuilder page = ChangedWords.page(answer.title(), answer.changes());
    page.space();
    page.paragraph(
        "Prior: the probability of a cause before any reading, for a job reported weak: common"
            + " practice, no source. To use your own figures, print this with \"--format json\","
            + " edit it and give it with \"--priors FILE\"; priors that do not add up to 1 are"
            + " scaled until they do.");
    page.table(causes(answer));
    page.paragraph(
        "Each size between \"from\" and \"to\" is as likely as any other; with \"log\" each"
            + " doubling is, from 1 to 2 as from 100 to 200. "
            + PartWords.K);
    page.table(signs(answer));
    page.paragraph(
        "Signs multiply the chance of a cause by these factors: common practice, no source. All"
            + " other causes keep theirs.");
    if (answer.built().network().isPumped()) {
      page.marked("! ", RiskWords.TRIPS);
    }
    return page.build();
  }

  private static TableBuilder causes(CausesAnswer answer) {
    TableBuilder table =
        new TableBuilder("CAUSES")
            .column("prior", Side.RIGHT)
            .column("from", Side.RIGHT)
            .column("to", Side.RIGHT)
            .column("at", Side.LEFT)
            .column("size", Side.LEFT);
    for (Cause cause : answer.causes().causes()) {
      table.row(
          cause.id().cause(),
          String.format(Locale.ROOT, "%.1f %%", 100 * cause.prior()),
          cause.sizes().map(sizes -> number(sizes.from(), cause, Shown.of(answer))).orElse(""),
          cause
              .sizes()
              .map(sizes -> number(sizes.to(), cause, Shown.of(answer)) + log(sizes))
              .orElse(""),
          CausePlace.shortly(cause.id()),
          cause.quantity().words());
    }
    return table;
  }

  private static String number(double value, Cause cause, ShownUnits units) {
    if (cause.quantity().unit().equals("1")) {
      return String.format(Locale.ROOT, "%.3f", value).replaceAll("\\.?0+$", "");
    }
    return value < TALL_M ? units.fineDepth(value) : units.head(value);
  }

  private static String log(SizeRange sizes) {
    return sizes.log() ? " log" : "";
  }

  private static TableBuilder signs(CausesAnswer answer) {
    TableBuilder table = new TableBuilder("SIGN").column("changes the chance of", Side.LEFT);
    for (Sign sign : Sign.values()) {
      table.row(
          sign.words(),
          factors(answer.signs().factors().getOrDefault(sign, Map.of()), answer.names()));
    }
    return table;
  }

  /** What a sign does to the causes that the job can have. */
  private static String factors(Map<String, Double> factors, List<String> names) {
    Map<Double, List<String>> byFactor = new TreeMap<>((one, other) -> Double.compare(other, one));
    factors.forEach(
        (cause, factor) -> {
          if (names.contains(cause)) {
            byFactor.computeIfAbsent(factor, f -> new ArrayList<>()).add(cause);
          }
        });
    List<String> words = new ArrayList<>();
    byFactor.forEach(
        (factor, causes) ->
            words.add(
                "\u00d7 "
                    + String.format(Locale.ROOT, "%.2f", factor).replaceAll("\\.?0+$", "")
                    + " "
                    + String.join(", ", causes)));
    return words.isEmpty() ? "nothing" : String.join("; ", words);
  }
}
