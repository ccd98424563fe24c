package rillwright.cli.report.page.html;

import static org.apache.commons.text.StringEscapeUtils.escapeXml10;

import java.util.List;
import java.util.Locale;
import rillwright.cli.report.page.Cell;
import rillwright.cli.report.page.Table;
import rillwright.cli.report.page.Table.Column;
import rillwright.cli.report.page.Table.Row;
import rillwright.cli.report.page.Table.Side;
import rillwright.cli.report.page.Tone;

/**
 * A table: its heading as caption, its names as headings of rows. Each cell holds its column's
 * heading too, for narrow pages on which a row stands below another as a list.
 */
final class HtmlTable {
  private final Table table;
  private final StringBuilder html;

  private HtmlTable(Table table, StringBuilder html) {
    this.table = table;
    this.html = html;
  }

  static void print(Table table, StringBuilder html) {
    new HtmlTable(table, html).print();
  }

  private void print() {
    boolean named = table.rows().stream().anyMatch(row -> !row.name().isEmpty());
    html.append("<table>\n");
    if (!table.heading().isEmpty()) {
      html.append("<caption>%s</caption>\n".formatted(escapeXml10(table.heading())));
    }
    html.append("<thead>\n<tr>").append(named ? "<td></td>" : "");
    for (Column column : table.columns()) {
      String heading = escapeXml10(column.heading().text());
      String side = classes(column.side(), Tone.PLAIN);
      html.append(
          heading.isEmpty() ? "<td></td>" : "<th scope=\"col\"%s>%s</th>".formatted(side, heading));
    }
    html.append("</tr>\n</thead>\n<tbody>\n");
    for (Row row : table.rows()) {
      html.append("<tr>").append(named ? rowHeading(row.name()) : "");
      cells(row.cells(), named);
      html.append("</tr>\n");
    }
    html.append("</tbody>\n</table>\n");
  }

  private void cells(List<Cell> cells, boolean named) {
    for (int i = 0; i < cells.size(); i++) {
      Cell cell = cells.get(i);
      Column column = table.columns().get(i);
      if (i == 0 && !named) {
        html.append(rowHeading(cell.text()));
      } else {
        html.append("<td data-label=\"%s\"".formatted(escapeXml10(column.heading().text())))
            .append(classes(column.side(), cell.tone()))
            .append('>')
            .append(cell.tone() == Tone.TO_WRITE ? "" : escapeXml10(cell.text()))
            .append("</td>");
      }
    }
  }

  private static String rowHeading(String name) {
    return name.isEmpty() ? "<td></td>" : "<th scope=\"row\">%s</th>".formatted(escapeXml10(name));
  }

  private static String classes(Side side, Tone tone) {
    String named = side == Side.RIGHT ? "figure" : "";
    if (tone == Tone.GOOD || tone == Tone.WARNING) {
      named = (named + " " + tone.name().toLowerCase(Locale.ROOT)).strip();
    } else if (tone == Tone.TO_WRITE) {
      named = "write";
    }
    return named.isEmpty() ? "" : " class=\"%s\"".formatted(named);
  }
}
