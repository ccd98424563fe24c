package rillwright.cli.report.page;

import java.util.List;
import rillwright.curves.chart.content.Chart;
import rillwright.curves.wording.PlainText;

/** What stands at the head of a block. */
public sealed interface Head
    permits Head.Title, Head.Heading, Head.Space, Head.Sample, Head.Picture, Table {
  /** The title of the page. */
  record Title(String text) implements Head {
    public Title {
      text = PlainText.harmless(text);
    }
  }

  /** A heading. */
  record Heading(String text) implements Head {
    public Heading {
      text = PlainText.harmless(text);
    }
  }

  /** Nothing but some space: lines that stand by themselves. */
  record Space() implements Head {}

  /**
   * Lines as they are written in a file or at a prompt.
   *
   * @param lines of it; copied
   */
  record Sample(List<String> lines) implements Head {
    public Sample {
      lines = lines.stream().map(PlainText::harmless).toList();
    }
  }

  /** A picture. */
  record Picture(Chart chart) implements Head {}
}
