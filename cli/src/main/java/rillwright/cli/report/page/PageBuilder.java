package rillwright.cli.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Gathers a page from top to bottom. */
public final class PageBuilder {
  /** The blocks before the last one, of which the head and the lines so far are apart. */
  private final List<Block> blocks = new ArrayList<>();

  private final List<Line> lines = new ArrayList<>();
  private Head head;

  /** A page with a title. */
  public PageBuilder(String title) {
    this.head = new Head.Title(title);
  }

  /** A heading. */
  public void heading(String heading) {
    begin(new Head.Heading(heading));
  }

  /** A heading that begins a new sheet of paper. */
  public void newSheet(String heading) {
    begin(new Head.NewSheet(heading));
  }

  /** Something that stands at the head of a block. */
  public void show(Head head) {
    begin(head);
  }

  /** Some space before what follows. */
  public void space() {
    begin(new Head.Space());
  }

  /** Lines as they are written in a file or at a prompt; paragraphs that follow explain them. */
  public void sample(List<String> lines) {
    begin(new Head.Sample(lines));
  }

  /** A table; paragraphs that follow are its notes. */
  public void table(TableBuilder table) {
    begin(table.build());
  }

  /** A table, unless it has no rows. */
  public void tableOfAny(TableBuilder table) {
    if (!table.isEmpty()) {
      table(table);
    }
  }

  /** A paragraph. */
  public void paragraph(String paragraph) {
    marked("", paragraph);
  }

  /**
   * A paragraph that names commands or options.
   *
   * @param live what the live page says instead; empty to say nothing there
   */
  public void paragraph(String paragraph, String live) {
    add(new Line("", paragraph, live));
  }

  /** A paragraph with a mark before its first line. */
  public void marked(String mark, String paragraph) {
    add(new Line(mark, paragraph));
  }

  private void add(Line line) {
    lines.add(line);
  }

  private void begin(Head next) {
    blocks.add(new Block(head, lines));
    lines.clear();
    head = next;
  }

  /** What was gathered. */
  public Page build() {
    List<Block> all = new ArrayList<>(blocks);
    all.add(new Block(head, lines));
    return new Page(all, Paper.SHEET, Optional.empty());
  }
}
