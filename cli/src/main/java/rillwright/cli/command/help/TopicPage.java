package rillwright.cli.command.help;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.TableBuilder;
import rillwright.cli.schema.FieldRow;
import rillwright.cli.schema.FieldRows;

/**
 * The page of a topic. In its text the first line is the title; {@code ##} begins a heading, four
 * spaces a sample, {@code -} a point of a list, {@code @fields DEFINITION: HEADING} stands for the
 * fields of a definition of the schema, {@code @sections NAME, NAME} for those of sections of the
 * file, {@code @quantities} for how quantities are written; other lines are paragraphs up to an
 * empty one.
 */
final class TopicPage {
  private static final String SAMPLE = "    ";
  private static final String FIELDS = "@fields ";
  private static final int LONGEST_FIELD = 26;

  private final PageBuilder page;
  private final FieldRows fields = FieldRows.published();
  private final List<String> gathered = new ArrayList<>();
  private boolean isSample;

  private TopicPage(String title) {
    this.page = new PageBuilder(title);
  }

  static Page of(Topic topic) {
    List<String> lines = topic.lines();
    TopicPage page = new TopicPage(lines.get(0));
    lines.subList(1, lines.size()).forEach(page::line);
    page.close();
    return page.page.build();
  }

  /** All topics. */
  static Page list() {
    PageBuilder page = new PageBuilder("Help");
    page.paragraph(
        "\"rillwright help TOPIC\" explains one of these, \"rillwright help COMMAND\" a command.");
    TableBuilder table = new TableBuilder("TOPIC");
    table.column("", Side.LEFT);
    for (Topic topic : Topic.values()) {
      table.row(topic.word(), topic.title());
    }
    page.table(table);
    return page.build();
  }

  /** The topic that explains each field, by its name. */
  static Map<String, Topic> fields() {
    FieldRows rows = FieldRows.published();
    Map<String, Topic> explained = new TreeMap<>();
    for (Topic topic : Topic.values()) {
      for (String line : topic.lines()) {
        if (line.startsWith(FIELDS)) {
          String[] words = line.substring(FIELDS.length()).split(": ", 2);
          explained.putIfAbsent(words[1].toLowerCase(Locale.ROOT), topic);
          rows.of(words[0]).stream()
              .flatMap(row -> Stream.of(row.name().split("\\.")))
              .forEach(name -> explained.putIfAbsent(name, topic));
        }
      }
    }
    return explained;
  }

  private void line(String line) {
    boolean sample = line.startsWith(SAMPLE);
    if ((sample != isSample && !line.isEmpty()) || (line.isEmpty() && !isSample)) {
      close();
    }
    isSample = sample || (isSample && line.isEmpty());
    if (line.startsWith("## ")) {
      page.heading(line.substring(3));
    } else if (line.startsWith(FIELDS)) {
      String[] words = line.substring(FIELDS.length()).split(": ", 2);
      fields(words[1], fields.of(words[0]));
    } else if (line.startsWith("@sections ")) {
      List<String> names = List.of(line.substring("@sections ".length()).split(", ", -1));
      fields(
          "SECTION",
          fields.of("").stream()
              .filter(row -> names.contains(row.name().replaceFirst("\\..*", "")))
              .toList());
    } else if (line.equals("@quantities")) {
      quantities();
    } else if (line.startsWith("- ")) {
      close();
      page.marked("- ", line.substring(2));
    } else if (!line.isEmpty() || isSample) {
      gathered.add(sample ? line.substring(SAMPLE.length()) : line);
    }
  }

  private void close() {
    while (isSample && !gathered.isEmpty() && gathered.get(gathered.size() - 1).isEmpty()) {
      gathered.remove(gathered.size() - 1);
    }
    if (!gathered.isEmpty() && isSample) {
      page.sample(gathered);
    } else if (!gathered.isEmpty()) {
      page.paragraph(String.join(" ", gathered));
    }
    gathered.clear();
  }

  private void quantities() {
    TableBuilder table = new TableBuilder("QUANTITY");
    table.column("HOW IT IS WRITTEN", Side.LEFT);
    fields.quantities().forEach(row -> table.row(row.name(), row.meaning()));
    page.table(table);
  }

  private void fields(String heading, List<FieldRow> rows) {
    TableBuilder table = new TableBuilder(heading, LONGEST_FIELD);
    table.column("TAKES", Side.LEFT).column("MEANING", Side.LEFT);
    rows.forEach(row -> table.row(row.name(), row.takes(), row.meaning()));
    page.table(table);
  }
}
