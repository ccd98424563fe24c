package rillwright.cli.report.odds;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rillwright.cli.study.odds.OddsAnswer.Unknown;

/** What an uncertain quantity is called, in words before any address in the file. */
public final class UnknownWords {
  private static final Pattern OF_PART = Pattern.compile("line \"(.*)\": ([^:]+)(?:: (.+))?");
  private static final Pattern OF_THING = Pattern.compile("(?:point|pump) \"(.*)\": (.+)");
  private static final Map<String, String> FIELDS =
      Map.of(
          "open", "opening",
          "k", "K",
          "unknown: bend", "bend of its curve",
          "unknown: shut-off", "shut-off head",
          "unknown: runs out", "flow at no head");
  private static final Map<String, String> BARE = Map.of("run", "length", "loss", "K");

  private UnknownWords() {}

  /** Part, line and quantity: "valve in side, opening". */
  public static String of(Unknown unknown) {
    return of(unknown.what());
  }

  /** The same of what the file calls it: {@code line "side": valve: open}. */
  public static String of(String what) {
    Matcher part = OF_PART.matcher(what);
    if (part.matches()) {
      String kind = part.group(2);
      String field = part.group(3) == null ? BARE.getOrDefault(kind, "") : field(part.group(3));
      return partOf(what) + (field.isEmpty() ? "" : ", " + field);
    }
    Matcher thing = OF_THING.matcher(what);
    return thing.matches() ? thing.group(1) + ", " + field(thing.group(2)) : what;
  }

  /**
   * Part and line alone: "valve in side", "valve 2 of side", which is no inches; all words where it
   * is of no part.
   */
  public static String partOf(String what) {
    Matcher part = OF_PART.matcher(what);
    if (!part.matches()) {
      return of(what);
    }
    String kind = part.group(2);
    boolean isNumbered = Character.isDigit(kind.charAt(kind.length() - 1));
    return kind + (isNumbered ? " of " : " in ") + part.group(1);
  }

  private static String field(String written) {
    return FIELDS.getOrDefault(written, written.replace(": ", " "));
  }
}
