package rillwright.cli.report.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.weak.CausePlace;
import rillwright.cli.report.weak.Chance;
import rillwright.cli.report.weak.Letters;
import rillwright.cli.report.weak.ReadingWords;
import rillwright.cli.study.weak.WeakAnswer;
import rillwright.curves.chart.content.CausesChart;
import rillwright.curves.chart.content.CausesChart.Band;
import rillwright.curves.chart.content.CausesChart.CauseBar;
import rillwright.curves.chart.content.CausesChart.Mark;
import rillwright.curves.chart.content.CausesChart.Strip;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.inference.Explanation;
import rillwright.solver.study.diagnosis.inference.NextReading;
import rillwright.solver.study.diagnosis.pair.PairExplanation;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Reading;

/** The picture of a weak fall: probabilities, and predictions against readings. */
public final class CausesPicture {
  private static final int MOST_CAUSES = 7;
  private static final int MOST_MARKS = 4;
  private static final int MOST_STRIPS = 7;
  private static final int FEWEST_NAMED = 2;
  private static final double WORTH_SHOWING = 0.005;

  private final WeakAnswer answer;
  private final ReadingWords words;

  private CausesPicture(WeakAnswer answer) {
    this.answer = answer;
    this.words = new ReadingWords(Shown.of(answer));
  }

  /** What is to be drawn. */
  public static CausesChart of(WeakAnswer answer) {
    return new CausesPicture(answer).chart();
  }

  private CausesChart chart() {
    if (answer.diagnosis().pairsLead()) {
      return new CausesChart(answer.title(), caption(), pairBars(), strips());
    }
    List<CauseBar> bars = new ArrayList<>();
    for (Explanation cause : shown()) {
      CauseId id = cause.cause().id();
      String place = CausePlace.shortly(id);
      bars.add(
          new CauseBar(
              bars.size() < lettered() ? Letters.of(bars.size()) : "",
              id.cause() + (place.isEmpty() ? "" : ", " + place),
              cause.probability(),
              Chance.words(cause.probability())));
    }
    return new CausesChart(answer.title(), caption(), bars, strips());
  }

  /** Bars of the pairs, and what is left for all else. */
  private List<CauseBar> pairBars() {
    List<CauseBar> bars = new ArrayList<>();
    double left = 1;
    List<PairExplanation> pairs = answer.diagnosis().pairs();
    for (PairExplanation pair : pairs.subList(0, Math.min(MOST_CAUSES, pairs.size()))) {
      bars.add(
          new CauseBar(
              Letters.ofPair(bars.size()),
              pair.one().cause().id().cause() + " and " + pair.other().cause().id().cause(),
              pair.probability(),
              Chance.words(pair.probability())));
      left -= pair.probability();
    }
    bars.add(new CauseBar("", "one fault, or another pair", left, Chance.words(left)));
    return bars;
  }

  private List<Explanation> shown() {
    return answer.diagnosis().causes().stream().limit(MOST_CAUSES).toList();
  }

  /**
   * How many causes have a letter: those that are likely at all, as far as there is room, and one
   * or two that are named, for "none of these" has no marks.
   */
  private int lettered() {
    int likely =
        (int)
            shown().stream()
                .limit(MOST_MARKS)
                .filter(cause -> cause.probability() >= WORTH_SHOWING)
                .count();
    boolean noneLeads = shown().get(0).cause().isUnnamed();
    int named = Math.min(noneLeads ? 1 + FEWEST_NAMED : 1, shown().size());
    return Math.max(likely, named);
  }

  private String caption() {
    int readings = answer.diagnosis().readings().size();
    if (readings == 0) {
      return "Why it is weak, before anything is read";
    }
    String left = readings > MOST_STRIPS ? ", the first " + MOST_STRIPS + " of them shown" : "";
    return "Why it is weak, by " + (readings == 1 ? "one reading" : readings + " readings") + left;
  }

  private List<Strip> strips() {
    List<Reading> readings = answer.diagnosis().readings();
    if (readings.isEmpty()) {
      return answer.diagnosis().next().stream()
          .limit(MOST_STRIPS)
          .map(NextReading::what)
          .map(what -> strip(what, Optional.empty()))
          .toList();
    }
    return readings.stream()
        .limit(MOST_STRIPS)
        .map(reading -> strip(reading.what(), Optional.of(band(reading))))
        .toList();
  }

  private Band band(Reading reading) {
    return new Band(
        reading.value(),
        reading.tolerance().halfWidthAt(reading.value()),
        words.value(reading.what(), reading.value()));
  }

  private Strip strip(Measurand what, Optional<Band> read) {
    List<Mark> marks = new ArrayList<>();
    List<PairExplanation> pairs = answer.diagnosis().pairs();
    if (answer.diagnosis().pairsLead()) {
      for (int i = 0; i < Math.min(MOST_MARKS, pairs.size()); i++) {
        mark(what, Letters.ofPair(i), answer.predicted(what, i)).ifPresent(marks::add);
      }
      return new Strip(
          words.opening(what), read, mark(what, "", answer.scope().asBuilt(what)), marks);
    }
    List<Explanation> causes = shown();
    for (int i = 0; i < lettered(); i++) {
      String letter = Letters.of(i);
      mark(what, letter, answer.predicted(what, causes.get(i).cause().id())).ifPresent(marks::add);
    }
    return new Strip(
        words.opening(what), read, mark(what, "", answer.scope().asBuilt(what)), marks);
  }

  private Optional<Mark> mark(Measurand what, String letter, OptionalDouble value) {
    return value.isPresent()
        ? Optional.of(new Mark(letter, value.getAsDouble(), words.value(what, value.getAsDouble())))
        : Optional.empty();
  }
}
