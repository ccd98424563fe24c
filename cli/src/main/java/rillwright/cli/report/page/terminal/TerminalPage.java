package rillwright.cli.report.page.terminal;

import java.util.List;
import rillwright.cli.report.page.Block;
import rillwright.cli.report.page.Head;
import rillwright.cli.report.page.Line;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.Table;
import rillwright.cli.report.page.Tone;

/** A page as text, as wide as what it is printed on; pictures are left out. */
public final class TerminalPage {
  static final String INDENT = "  ";

  /** To write in. */
  static final String BLANK = "________";

  private final StringBuilder text = new StringBuilder();
  private final Screen screen;

  private TerminalPage(Screen screen) {
    this.screen = screen;
  }

  /** The text of a page. */
  public static String of(Page page, Screen screen) {
    TerminalPage printed = new TerminalPage(screen);
    page.blocks().forEach(printed::block);
    return printed.text.toString();
  }

  private void block(Block block) {
    if (block.head() instanceof Head.Title title) {
      title(title.text());
    } else if (block.head() instanceof Head.Heading heading) {
      text.append('\n');
      add(heading.text(), Tone.HEADING);
    } else if (block.head() instanceof Head.NewSheet sheet) {
      text.append('\n');
      add(sheet.text(), Tone.HEADING);
    } else if (block.head() instanceof Head.Facts facts) {
      facts.all().forEach(this::fact);
    } else if (block.head() instanceof Head.Handles handles) {
      handles.all().forEach(handle -> line(new Line("", handle.valve() + ": " + handle.words())));
    } else if (block.head() instanceof Head.Photograph photograph) {
      line(new Line("", "Photograph: " + photograph.shows()));
    } else if (block.head() instanceof Table table) {
      text.append('\n');
      new TerminalTable(table, screen).print(text);
    } else if (block.head() instanceof Head.Sample sample) {
      text.append('\n');
      sample.lines().forEach(line -> add((INDENT + INDENT + line).stripTrailing(), Tone.PLAIN));
      text.append(block.lines().isEmpty() ? "" : "\n");
    } else if (block.head() instanceof Head.Space) {
      text.append('\n');
    }
    block.lines().forEach(this::line);
  }

  private void fact(Head.Fact fact) {
    line(new Line("", fact.name() + ": " + (fact.value().isEmpty() ? BLANK : fact.value())));
  }

  private void title(String title) {
    List<String> lines = Wrapping.lines(title, screen.columnsOfProse());
    lines.forEach(line -> add(line, Tone.HEADING));
    int longest = lines.stream().mapToInt(Wrapping::width).max().orElse(0);
    add("=".repeat(Math.max(1, longest)), Tone.HEADING);
  }

  private void line(Line line) {
    int before = Wrapping.width(INDENT + line.mark());
    String start = INDENT + screen.ink().paint(line.mark(), Tone.WARNING);
    for (String piece : Wrapping.lines(line.text(), screen.columnsOfProse() - before)) {
      text.append(start);
      add(piece, Tone.PLAIN);
      start = " ".repeat(before);
    }
  }

  private void add(String line, Tone tone) {
    text.append(screen.ink().paint(line, tone)).append('\n');
  }
}
