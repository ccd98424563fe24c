package rillwright.curves.chart.content;

import java.util.List;
import java.util.Optional;

/**
 * Causes: how likely each is, and what each predicts against what was read.
 *
 * @param title one line, shown as plain text
 * @param caption a sentence below it; may be empty
 * @param causes the likeliest first; one or more
 * @param strips what was read, in the order of reading; may be empty
 */
public record CausesChart(String title, String caption, List<CauseBar> causes, List<Strip> strips)
    implements Chart {
  public CausesChart {
    causes = List.copyOf(causes);
    strips = List.copyOf(strips);
    if (causes.isEmpty()) {
      throw new IllegalArgumentException("a chart of causes needs a cause");
    }
  }

  /**
   * A cause.
   *
   * @param letter that stands for it
   * @param name of it and its place
   * @param probability 0 to 1
   * @param label the probability in words
   */
  public record CauseBar(String letter, String name, double probability, String label) {
    public CauseBar {
      Finite.check("probability", probability);
    }
  }

  /**
   * A reading: what it showed, and what it would have been.
   *
   * @param name what was read
   * @param read what it showed and how closely; empty if it is still to be read
   * @param asBuilt what it would be with nothing wrong; empty if nothing tells it
   * @param marks what it would be by causes
   */
  public record Strip(String name, Optional<Band> read, Optional<Mark> asBuilt, List<Mark> marks) {
    public Strip {
      marks = List.copyOf(marks);
    }
  }

  /**
   * A value with its interval.
   *
   * @param value in the middle
   * @param halfWidth of the interval
   * @param label the value in words
   */
  public record Band(double value, double halfWidth, String label) {
    public Band {
      Finite.check("reading", value);
      Finite.check("interval", halfWidth);
    }
  }

  /**
   * A value.
   *
   * @param letter of the cause; empty for the job as built
   * @param value in the unit of its reading
   * @param label the value in words
   */
  public record Mark(String letter, double value, String label) {
    public Mark {
      Finite.check("prediction", value);
    }
  }
}
