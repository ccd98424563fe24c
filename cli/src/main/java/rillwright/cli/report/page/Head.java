package rillwright.cli.report.page;

import rillwright.curves.chart.content.Chart;
import rillwright.curves.wording.PlainText;

/** What stands at the head of a block. */
public sealed interface Head permits Head.Title, Head.Heading, Head.Space, Head.Picture, Table {
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

  /** A picture. */
  record Picture(Chart chart) implements Head {}
}
