package rillwright.cli.report.page;

import java.util.List;

/**
 * A piece of a page: what stands at its head, and the lines that belong to it.
 *
 * @param head of it
 * @param lines below
 */
public record Block(Head head, List<Line> lines) {
  public Block {
    lines = List.copyOf(lines);
  }
}
