package rillwright.cli.report.page;

import java.util.List;
import rillwright.curves.chart.content.Chart;
import rillwright.curves.wording.PlainText;

/** What stands at the head of a block. */
public sealed interface Head
    permits Head.Title,
        Head.Heading,
        Head.NewSheet,
        Head.Space,
        Head.Sample,
        Head.Picture,
        Head.Photograph,
        Head.Handles,
        Head.Facts,
        Table {
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

  /** A heading that begins a new sheet of paper. */
  record NewSheet(String text) implements Head {
    public NewSheet {
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

  /**
   * A photograph.
   *
   * @param mediaType of its data: {@code image/jpeg}
   * @param base64 its data
   * @param shows what it shows
   */
  record Photograph(String mediaType, String base64, String shows) implements Head {
    public Photograph {
      shows = PlainText.harmless(shows);
    }
  }

  /** Handles of valves, side by side. */
  record Handles(List<Handle> all) implements Head {
    public Handles {
      all = List.copyOf(all);
    }
  }

  /** Short facts, each under its name; one without a value is to be written in. */
  record Facts(List<Fact> all) implements Head {
    public Facts {
      all = List.copyOf(all);
    }
  }

  /** A fact: what it is, and its value. */
  record Fact(String name, String value) {
    public Fact {
      name = PlainText.harmless(name);
      value = PlainText.harmless(value);
    }
  }
}
