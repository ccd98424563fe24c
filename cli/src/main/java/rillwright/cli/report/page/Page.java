package rillwright.cli.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.curves.chart.content.Chart;

/**
 * What a command tells people, from top to bottom.
 *
 * @param blocks of the page, the first of them with its title
 * @param paper on which it is printed
 * @param called what it is called over its title; the command that it answers if empty
 */
public record Page(List<Block> blocks, Paper paper, Optional<String> called) {
  public Page {
    blocks = List.copyOf(blocks);
    if (blocks.isEmpty() || !(blocks.get(0).head() instanceof Head.Title)) {
      throw new IllegalArgumentException("a page begins with its title");
    }
  }

  /** Its title. */
  public String title() {
    return ((Head.Title) blocks.get(0).head()).text();
  }

  /** This page with a picture after its tables, before what there is to say under headings. */
  public Page with(Chart picture) {
    int place = 0;
    while (place < blocks.size() && !(blocks.get(place).head() instanceof Head.Heading)) {
      place++;
    }
    List<Block> more = new ArrayList<>(blocks);
    more.add(place, new Block(new Head.Picture(picture), List.of()));
    return new Page(more, paper, called);
  }

  /** This page as the live page shows it. */
  public Page live() {
    List<Block> live = new ArrayList<>();
    for (Block block : blocks) {
      List<Line> lines =
          block.lines().stream()
              .filter(line -> !line.live().isEmpty())
              .map(line -> new Line(line.mark(), line.live()))
              .toList();
      live.add(new Block(block.head(), lines));
    }
    return new Page(live, paper, called);
  }

  /** This page on other paper, under another name. */
  public Page as(Paper other, String name) {
    return new Page(blocks, other, Optional.of(name));
  }
}
