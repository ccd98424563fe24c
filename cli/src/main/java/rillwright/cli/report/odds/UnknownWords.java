package rillwright.cli.report.odds;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rillwright.cli.study.odds.OddsAnswer.Unknown;

/** What an uncertain quantity is called where there is room for a few words. */
public final class UnknownWords {
  private static final Pattern OF_PART = Pattern.compile("line \"(.*)\": ([^:]+)(?:: (.+))?");
  private static final Pattern OF_THING = Pattern.compile("(?:point|pump) \"(.*)\": (.+)");
  private static final Map<String, String> FIELDS = Map.of("open", "opening", "k", "K");
  private static final Map<String, String> BARE = Map.of("run", "length", "loss", "K");

  private UnknownWords() {}

  /** Part, line and quantity: "valve in side, opening". */
  public static String of(Unknown unknown) {
    Matcher part = OF_PART.matcher(unknown.what());
    if (part.matches()) {
      String kind = part.group(2);
      String field = part.group(3) == null ? BARE.getOrDefault(kind, "") : field(part.group(3));
      return kind + " in " + part.group(1) + (field.isEmpty() ? "" : ", " + field);
    }
    Matcher thing = OF_THING.matcher(unknown.what());
    return thing.matches() ? thing.group(1) + ", " + field(thing.group(2)) : unknown.what();
  }

  private static String field(String written) {
    return FIELDS.getOrDefault(written, written.replace(": ", " "));
  }
}
