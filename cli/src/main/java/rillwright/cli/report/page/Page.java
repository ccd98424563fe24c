package rillwright.cli.report.page;

import java.util.List;

/**
 * What a command tells people, from top to bottom.
 *
 * @param blocks of the page
 */
public record Page(List<Block> blocks) {
  public Page {
    blocks = List.copyOf(blocks);
  }
}
