package rillwright.cli.report.page.html;

import static org.apache.commons.text.StringEscapeUtils.escapeXml10;

import java.nio.charset.StandardCharsets;
import java.util.List;
import rillwright.cli.report.page.Block;
import rillwright.cli.report.page.Handle;
import rillwright.cli.report.page.Head;
import rillwright.cli.report.page.Line;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.Paper;
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

  /** What the names of elements end with, so that none is twice on a page. */
  private final String ending;

  private int pictures;

  private HtmlPage(String ending) {
    this.ending = ending;
  }

  /**
   * The file's text.
   *
   * @param page to be written
   * @param command that it answers, shown above the title
   */
  public static String of(Page page, String command) {
    HtmlPage printed = new HtmlPage("");
    printed.begin(page, command);
    page.blocks().forEach(printed::block);
    return printed.html.append("</main>\n</body>\n</html>\n").toString();
  }

  /**
   * What stands below the title, without what makes a file of it: for the live page.
   *
   * @param page to be written
   * @param within the name of the piece of a page in which it stands: names of elements end with it
   */
  public static String below(Page page, String within) {
    HtmlPage printed = new HtmlPage("-" + within);
    List<Block> blocks = page.live().blocks();
    printed.lines(blocks.get(0).lines());
    blocks.stream().skip(1).forEach(printed::block);
    return printed.html.toString();
  }

  /** The style of pages on the screen and on paper. */
  public static String style() {
    return PageStyle.read(Paper.SHEET).text();
  }

  private void begin(Page page, String command) {
    String title = page.title();
    String called = page.called().orElse("rillwright " + command);
    PageStyle style = PageStyle.read(page.paper());
    boolean hasPhotographs =
        page.blocks().stream().anyMatch(block -> block.head() instanceof Head.Photograph);
    html.append(
        """
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src '%s'; \
        %sbase-uri 'none'; form-action 'none'">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <meta name="color-scheme" content="light dark">
        <meta name="format-detection" content="telephone=no">
        <title>%s, %s</title>
        <style>%s</style>
        </head>
        <body>
        <main>
        <p class="command">%s</p>
        """
            .formatted(
                style.hash(),
                hasPhotographs ? "img-src data:; " : "",
                escapeXml10(title),
                escapeXml10(page.called().orElse(command)),
                style.text(),
                escapeXml10(called)));
  }

  private void block(Block block) {
    html.append(
        block.head() instanceof Head.NewSheet ? "<section class=\"new-sheet\">\n" : "<section>\n");
    if (block.head() instanceof Head.Title title) {
      element("h1", title.text());
    } else if (block.head() instanceof Head.Heading heading) {
      element("h2", heading.text());
    } else if (block.head() instanceof Head.NewSheet sheet) {
      element("h2", sheet.text());
    } else if (block.head() instanceof Head.Facts facts) {
      facts(facts);
    } else if (block.head() instanceof Head.Handles handles) {
      handles(handles);
    } else if (block.head() instanceof Head.Photograph photograph) {
      photograph(photograph);
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

  private void facts(Head.Facts facts) {
    html.append("<dl>\n");
    for (Head.Fact fact : facts.all()) {
      html.append(
          "<div><dt>%s</dt><dd%s>%s</dd></div>\n"
              .formatted(
                  escapeXml10(fact.name()),
                  fact.value().isEmpty() ? " class=\"write\"" : "",
                  escapeXml10(fact.value())));
    }
    html.append("</dl>\n");
  }

  private void handles(Head.Handles handles) {
    html.append("<div class=\"handles\">\n");
    for (Handle handle : handles.all()) {
      html.append("<div class=\"handle\">\n").append(HandleDrawing.of(handle));
      html.append(
          "<p><strong>%s</strong> %s</p>\n</div>\n"
              .formatted(escapeXml10(handle.valve()), escapeXml10(handle.words())));
    }
    html.append("</div>\n");
  }

  private void photograph(Head.Photograph photograph) {
    html.append(
        "<figure class=\"photograph\">\n<img src=\"data:%s;base64,%s\" alt=\"%s\">\n"
            .formatted(
                photograph.mediaType(), photograph.base64(), escapeXml10(photograph.shows())));
    html.append(
        "<figcaption>%s</figcaption>\n</figure>\n".formatted(escapeXml10(photograph.shows())));
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
    String svg = file.substring(file.indexOf("<svg"));
    if (!ending.isEmpty()) {
      pictures++;
      String own = ending + "-" + pictures;
      svg =
          svg.replace("\"title description\"", "\"title" + own + " description" + own + "\"")
              .replace("id=\"title\"", "id=\"title" + own + "\"")
              .replace("id=\"description\"", "id=\"description" + own + "\"")
              .replaceAll("(id=\"|url\\(#)(genericDefs|clipPath\\d+)", "$1$2" + own);
    }
    html.append(ending.isEmpty() ? "<figure>\n" : "<figure tabindex=\"0\">\n");
    html.append(svg).append("</figure>\n");
  }
}
