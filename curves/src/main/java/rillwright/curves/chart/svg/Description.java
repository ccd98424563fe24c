package rillwright.curves.chart.svg;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rillwright.curves.chart.content.CurveSeries;
import rillwright.curves.chart.content.FlowMark;
import rillwright.curves.chart.content.HeadMark;
import rillwright.curves.chart.content.OperatingChart;
import rillwright.curves.chart.content.OperatingPoint;
import rillwright.curves.chart.content.OperatingPoint.Valves;
import rillwright.curves.chart.content.PowerSeries;
import rillwright.curves.chart.content.PumpCurveSeries;
import rillwright.curves.wording.PlainText;

/**
 * A chart in words, for those who hear it read.
 *
 * @param title of the chart, never empty
 * @param text what it shows
 */
public record Description(String title, String text) {
  private static final String NO_TITLE = "Pump curve and system curve";

  public static Description of(OperatingChart chart) {
    List<String> sentences = new ArrayList<>();
    sentences.add(chart.caption());
    sentences.add(
        "Head in %s against flow in %s"
            .formatted(chart.headUnit().symbol(), chart.flowUnit().symbol()));
    sentences.add(listed("Pump curves", chart.pumpCurves().stream().map(PumpCurveSeries::name)));
    sentences.add(listed("System curves", chart.systemCurves().stream().map(CurveSeries::name)));
    sentences.add(listed("Power curve", chart.power().stream().map(PowerSeries::name)));
    for (OperatingPoint point : chart.operatingPoints()) {
      sentences.add(
          listed(
              point.valves() == Valves.THROTTLED ? "Throttled point" : "Operating point",
              point.labelLines().stream()));
    }
    sentences.add(chart.flowLimit().map(FlowMark::label).orElse(""));
    sentences.add(chart.staticHead().map(HeadMark::label).orElse(""));
    return of(chart.title(), sentences.stream());
  }

  /** A title and sentences, full stops put where they are missing. */
  public static Description of(String written, Stream<String> sentences) {
    String title = PlainText.line(written);
    String text =
        sentences
            .map(PlainText::line)
            .filter(sentence -> !sentence.isEmpty())
            .map(sentence -> sentence.endsWith(".") ? sentence : sentence + ".")
            .collect(Collectors.joining(" "));
    return new Description(title.isEmpty() ? NO_TITLE : title, text);
  }

  private static String listed(String what, Stream<String> names) {
    String list = names.filter(name -> !name.isBlank()).collect(Collectors.joining(", "));
    return list.isEmpty() ? "" : what + ": " + list;
  }
}
