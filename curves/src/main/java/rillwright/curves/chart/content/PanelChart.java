package rillwright.curves.chart.content;

import java.util.List;

/**
 * Plots under one title, with one legend.
 *
 * @param title one line, shown as plain text
 * @param caption a sentence below it; may be empty
 * @param columns how many plots stand side by side, 1 or more
 * @param panels one or more, row by row
 */
public record PanelChart(String title, String caption, int columns, List<Panel> panels)
    implements Chart {
  public PanelChart {
    panels = List.copyOf(panels);
    if (panels.isEmpty() || columns < 1) {
      throw new IllegalArgumentException("a chart needs a panel and a column");
    }
  }

  /** Names of all curves, each once, in order. */
  public List<String> names() {
    return panels.stream()
        .flatMap(panel -> panel.curves().stream())
        .map(Panel.Curve::name)
        .distinct()
        .toList();
  }
}
