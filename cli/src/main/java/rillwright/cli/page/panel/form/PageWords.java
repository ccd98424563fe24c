package rillwright.cli.page.panel.form;

import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rillwright.cli.page.desk.Places;

/** What the page says where answers and messages name commands and options of the terminal. */
public final class PageWords {
  private static final Map<String, String> TITLES =
      Map.ofEntries(
          Map.entry("solve", "All figures"),
          Map.entry("duty", "Duty"),
          Map.entry("pumps", "Pumps"),
          Map.entry("pipes", "Pipe sizes"),
          Map.entry("balance", "Set the valves"),
          Map.entry("mend", "Mend it"),
          Map.entry("stream", "Stream and levels"),
          Map.entry("odds", "Odds"),
          Map.entry("weak", "Weak fall"),
          Map.entry("asbuilt", "As built"),
          Map.entry("sheet", "Job sheet"),
          Map.entry("check", "Check"),
          Map.entry("catalogue", "Catalogue"),
          Map.entry("section", "Drawing with figures"));

  /** {@code "rillwright pipes", "mend" and "sheet"}, in HTML too. */
  private static final Pattern COMMANDS =
      Pattern.compile(
          "(?<q>\"|&quot;)rillwright (\\w+)(?: (?:--)?\\w+)?\\k<q>"
              + "(?:(?:, | and )\\k<q>\\w+\\k<q>)*(?: and \\k<q>\\w+\\k<q>)?");

  private static final Pattern NAME =
      Pattern.compile("(\"|&quot;)(?:rillwright )?(\\w+)[^\"&]*\\1");

  private static final String SHEETS = ", or allow its folder with \"--sheets FOLDER\"";

  /** A text, be it alone or between the tags of HTML. */
  private static final Pattern TEXT = Pattern.compile("(?<=^|>)[^<>]+");

  /** An address where it ends for sure; what is to be typed with "=" stays. */
  private static final Pattern ADDRESS =
      Pattern.compile(
          "^(Look at |SIZE of )?((?:points|lines)\\.[^=]+?)(?=$| first:| \\d+ %$| \\()");

  /** What only repeats a run at a terminal. */
  private static final Pattern SEED =
      Pattern.compile("(?<= of the uncertain values| in each condition) \\(seed \\d+\\)");

  private PageWords() {}

  /** The title of a panel. */
  static String title(String name) {
    return TITLES.getOrDefault(name, name);
  }

  /** A text, or HTML made of it, with the panels' titles in place of commands. */
  public static String here(String said) {
    String titled =
        COMMANDS
            .matcher(said.replace(SHEETS, ""))
            .replaceAll(found -> Matcher.quoteReplacement(titled(found.group())));
    return TEXT.matcher(titled).replaceAll(found -> Matcher.quoteReplacement(plain(found.group())));
  }

  private static String plain(String text) {
    return ADDRESS
        .matcher(SEED.matcher(text).replaceAll(""))
        .replaceAll(
            found ->
                Matcher.quoteReplacement(
                    Optional.ofNullable(found.group(1)).orElse("")
                        + Places.words(found.group(2).replace("&quot;", "\""))));
  }

  private static String titled(String commands) {
    return NAME.matcher(commands).replaceAll(PageWords::titled);
  }

  private static String titled(MatchResult name) {
    return Matcher.quoteReplacement(name.group(1) + title(name.group(2)) + name.group(1));
  }
}
