package rillwright.cli.report.units;

import java.util.Locale;

/** Shares beside a limit: one on its other side is not shown as if it were on this. */
public final class NearLimit {
  private static final int TENTHS = 1000;

  private NearLimit() {}

  /** A share below a limit: "94.9 %" where whole percents would be the limit's, else as always. */
  public static String below(double share, double limit, ShownUnits units) {
    return apart(share, limit, Math.floor(TENTHS * share), units);
  }

  /** A share above a limit: "125.1 %". */
  public static String above(double share, double limit, ShownUnits units) {
    return apart(share, limit, Math.ceil(TENTHS * share), units);
  }

  private static String apart(double share, double limit, double tenths, ShownUnits units) {
    String whole = units.share(share);
    return share != limit && whole.equals(units.share(limit))
        ? String.format(Locale.ROOT, "%.1f %%", tenths / 10)
        : whole;
  }
}
