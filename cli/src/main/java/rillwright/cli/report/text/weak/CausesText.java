package rillwright.cli.report.text.weak;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.text.Ink;
import rillwright.cli.report.text.Page;
import rillwright.cli.report.text.TextTable;
import rillwright.cli.report.text.TextTable.Side;
import rillwright.cli.report.weak.CausePlace;
import rillwright.cli.report.weak.CausesAnswer;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.cause.Sign;
import rillwright.solver.study.diagnosis.cause.SizeRange;

/** The causes of a job before anything was read, for people. */
public final class CausesText {
  private CausesText() {}

  /** The page. */
  public static String of(CausesAnswer answer, Ink ink) {
    Page page = new Page(ink);
    page.title(answer.title());
    ChangedWords.print(answer.changes(), page);
    page.blank();
    page.paragraph(
        "How likely each cause is before anything is read, given that somebody called because a"
            + " fall is weak: common practice, no source. To go by your own experience, print this"
            + " with \"--format json\", edit it and give it back with \"--priors FILE\".");
    page.table(causes(answer));
    page.table(signs(answer));
    page.paragraph(
        "What was seen and told multiplies the chance of a cause by these: common practice, no"
            + " source. All others stay as they are.");
    return page.toString();
  }

  private static TextTable causes(CausesAnswer answer) {
    TextTable table =
        new TextTable("CAUSES")
            .column("", Side.LEFT)
            .column("prior", Side.RIGHT)
            .column("from", Side.RIGHT)
            .column("to", Side.RIGHT)
            .column("at", Side.LEFT)
            .column("changes", Side.LEFT);
    String before = "";
    for (Cause cause : answer.causes().causes()) {
      String name = cause.id().cause();
      table.row(
          "",
          name.equals(before) ? "" : name,
          String.format(Locale.ROOT, "%.1f %%", 100 * cause.prior()),
          cause.sizes().map(sizes -> number(sizes.from(), cause)).orElse("-"),
          cause.sizes().map(sizes -> number(sizes.to(), cause) + log(sizes)).orElse("-"),
          CausePlace.shortly(cause.id()),
          cause.quantity().words());
      before = name;
    }
    return table;
  }

  private static String number(double value, Cause cause) {
    String number = String.format(Locale.ROOT, "%.3f", value).replaceAll("\\.?0+$", "");
    return number + (cause.quantity().unit().equals("1") ? "" : " " + cause.quantity().unit());
  }

  private static String log(SizeRange sizes) {
    return sizes.log() ? " log" : "";
  }

  private static TextTable signs(CausesAnswer answer) {
    TextTable table = new TextTable("SIGN").column("changes the chance of", Side.LEFT);
    for (Sign sign : Sign.values()) {
      table.row(sign.words(), factors(answer.signs().factors().getOrDefault(sign, Map.of())));
    }
    return table;
  }

  private static String factors(Map<String, Double> factors) {
    Map<Double, List<String>> byFactor = new TreeMap<>((one, other) -> Double.compare(other, one));
    factors.forEach(
        (cause, factor) -> byFactor.computeIfAbsent(factor, f -> new ArrayList<>()).add(cause));
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
