package rillwright.cli.report.page.html;

import static org.apache.commons.text.StringEscapeUtils.escapeXml10;

import java.nio.charset.StandardCharsets;
import java.util.List;
import rillwright.cli.report.page.Block;
import rillwright.cli.report.page.Head;
import rillwright.cli.report.page.Line;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.Table;
import rillwright.curves.chart.ChartWriter;
import rillwright.curves.chart.content.Chart;

/**
 * A page as one HTML file: tables with captions and headed rows and columns, pictures as SVG in it.
 * Its own rules (Content Security Policy) forbid it to fetch or run anything; of style only its own
 * counts.
 */
public final class HtmlPage {
  private final StringBuilder html = new StringBuilder();

  private HtmlPage() {}

  /**
   * The file's text.
   *
   * @param page to be written
   * @param command that it answers, shown above the title
   */
  public static String of(Page page, String command) {
    HtmlPage printed = new HtmlPage();
    printed.begin(page.title(), command);
    page.blocks().forEach(printed::block);
    return printed.html.append("</main>\n</body>\n</html>\n").toString();
  }

  private void begin(String title, String command) {
    PageStyle style = PageStyle.read();
    html.append(
        """
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src '%s'; \
        base-uri 'none'; form-action 'none'">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <meta name="color-scheme" content="light dark">
        <meta name="format-detection" content="telephone=no">
        <title>%s, %s</title>
        <style>%s</style>
        </head>
        <body>
        <main>
        <p class="command">rillwright %s</p>
        """
            .formatted(
                style.hash(),
                escapeXml10(title),
                escapeXml10(command),
                style.text(),
                escapeXml10(command)));
  }

  private void block(Block block) {
    html.append("<section>\n");
    if (block.head() instanceof Head.Title title) {
      element("h1", title.text());
    } else if (block.head() instanceof Head.Heading heading) {
      element("h2", heading.text());
    } else if (block.head() instanceof Table table) {
      HtmlTable.print(table, html);
    } else if (block.head() instanceof Head.Sample sample) {
      element("pre", String.join("\n", sample.lines()));
    } else if (block.head() instanceof Head.Picture picture) {
      picture(picture.chart());
    }
    lines(block.lines());
    html.append("</section>\n");
  }

  private void element(String name, String text) {
    html.append("<%s>%s</%s>\n".formatted(name, escapeXml10(text), name));
  }

  /** Marked lines that follow each other are a list. */
  private void lines(List<Line> lines) {
    boolean inList = false;
    for (Line line : lines) {
      boolean marked = !line.mark().isEmpty();
      if (marked != inList) {
        html.append(marked ? "<ul>\n" : "</ul>\n");
        inList = marked;
      }
      if (marked) {
        marked(line.mark().strip(), line.text());
      } else {
        element("p", line.text());
      }
    }
    html.append(inList ? "</ul>\n" : "");
  }

  private void marked(String mark, String text) {
    html.append(mark.equals("!") ? "<li class=\"care\">" : "<li>")
        .append("<span class=\"mark\">%s</span> ".formatted(escapeXml10(mark)))
        .append(escapeXml10(text))
        .append("</li>\n");
  }

  /** The picture without what makes a file of it. */
  private void picture(Chart chart) {
    String file = new String(ChartWriter.svg(chart), StandardCharsets.UTF_8);
    html.append("<figure>\n").append(file.substring(file.indexOf("<svg"))).append("</figure>\n");
  }
}
