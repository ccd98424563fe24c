package rillwright.curves.chart.content;

/** What a picture shows. */
public sealed interface Chart
    permits OperatingChart,
        BandChart,
        OddsChart,
        PanelChart,
        CausesChart,
        SectionChart,
        SketchChart {
  /** One line, shown as plain text. */
  String title();

  /** A sentence below it; may be empty. */
  String caption();
}
