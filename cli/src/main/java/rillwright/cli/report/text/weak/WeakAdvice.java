package rillwright.cli.report.text.weak;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.report.weak.CausePlace;
import rillwright.cli.report.weak.CauseWords;
import rillwright.cli.report.weak.Chance;
import rillwright.cli.report.weak.Instrument;
import rillwright.cli.report.weak.Misfit;
import rillwright.cli.report.weak.ReadingWords;
import rillwright.cli.report.weak.SizePhrase;
import rillwright.cli.study.weak.WeakAnswer;
import rillwright.solver.network.Chamber;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.inference.Explanation;
import rillwright.solver.study.diagnosis.inference.NextReading;
import rillwright.solver.study.diagnosis.reading.Measurands;
import rillwright.solver.study.diagnosis.reading.Reading;
import rillwright.solver.study.diagnosis.reading.When;

/** The answer in a few sentences. */
final class WeakAdvice {
  /** A chamber within this of its intake is down at it, m. */
  private static final double AT_INTAKE_M = 0.01;

  /** A cause less likely than this is no answer yet. */
  private static final double STANDS_OUT = 0.3;

  /** A cause so likely is looked at before any further reading. */
  private static final double SETTLED = 0.8;

  private final WeakAnswer answer;
  private final ShownUnits units;
  private final ReadingWords words;

  WeakAdvice(WeakAnswer answer) {
    this.answer = answer;
    this.units = Shown.of(answer);
    this.words = new ReadingWords(units);
  }

  void print(PageBuilder page) {
    page.space();
    if (answer.diagnosis().readings().isEmpty()) {
      page.paragraph("There is no reading yet, so this is only general experience with such jobs.");
    }
    Explanation first = answer.diagnosis().causes().get(0);
    boolean pairs = answer.diagnosis().pairsLead();
    if (answer.slight()) {
      page.marked(
          "! ",
          "No fault that takes a tenth off a fall or an outlet fits these readings, so slight"
              + " faults count too.");
    }
    page.paragraph(pairs ? PairsText.headline(answer) : mostLikely(first));
    if (!pairs) {
      answer.diagnosis().separatedBy().flatMap(this::distinguished).ifPresent(page::paragraph);
    }
    Misfit misfit = new Misfit(answer);
    beyondReach(misfit).forEach(sentence -> page.marked("! ", sentence));
    if (!pairs) {
      doesNotFit(first, misfit).forEach(sentence -> page.marked("! ", sentence));
    }
    if (!answer.diagnosis().isExplained()) {
      page.marked(
          "! ",
          answer.diagnosis().pairs().isEmpty()
              ? "No single fault fits all readings, and no pair of faults does."
              : "No single fault fits all readings; pairs that do are listed below.");
    }
  }

  private String mostLikely(Explanation first) {
    CauseId id = first.cause().id();
    CauseWords cause = CauseWords.of(id.cause());
    boolean standsOut = first.probability() >= STANDS_OUT;
    String sentence =
        (standsOut ? "Most likely " : "No cause stands out yet. The most likely is that ")
            + cause.statement()
            + (id.at().isPresent() ? " (" + CausePlace.words(id, answer.scope().job()) + ")" : "")
            + ", "
            + Chance.about(first.probability());
    List<String> clauses = new ArrayList<>();
    SizePhrase.of(first, answer).ifPresent(phrase -> clauses.add("it " + phrase));
    starved(id).ifPresent(clauses::add);
    String because = clauses.isEmpty() ? "" : ": " + String.join(", ", clauses);
    boolean isSettled =
        first.probability() >= SETTLED || answer.diagnosis().separatedBy().isEmpty();
    String then =
        !standsOut
            ? " Take more readings before anything is taken apart."
            : isSettled
                ? " Look there first."
                : " Take the next reading before anything is opened.";
    return sentence + because + "." + (id.at().isPresent() ? then : "");
  }

  /** "the chamber is down at the pump's intake", where a cause pulls it down. */
  private Optional<String> starved(CauseId cause) {
    for (var point : answer.scope().job().network().points()) {
      if (point instanceof Chamber chamber) {
        OptionalDouble level =
            answer.predicted(new Measurands.Level(chamber.name(), new When.Running()), cause);
        if (level.isPresent() && level.getAsDouble() < chamber.intakeM() + AT_INTAKE_M) {
          return Optional.of("\"" + chamber.name() + "\" is down at the pump's intake");
        }
      }
    }
    return Optional.empty();
  }

  private Optional<String> distinguished(NextReading next) {
    List<NextReading.Expected> members =
        next.predicted().stream().filter(expected -> expected.value().isPresent()).toList();
    if (members.size() < 2) {
      return Optional.empty();
    }
    NextReading.Expected one = members.get(0);
    NextReading.Expected other = members.get(1);
    double apart = 0;
    for (NextReading.Expected member : members) {
      double distance = Math.abs(member.value().getAsDouble() - one.value().getAsDouble());
      if (distance > 1.5 * apart) {
        apart = distance;
        other = member;
      }
    }
    double seen = next.what().usualTolerance().halfWidthAt(one.value().getAsDouble());
    if (apart < seen) {
      return Optional.empty();
    }
    return Optional.of(
        "Next reading: "
            + words.name(next.what())
            + ". It separates "
            + shown(next, one)
            + " from "
            + shown(next, other)
            + ".");
  }

  private String shown(NextReading next, NextReading.Expected expected) {
    return CauseWords.of(expected.cause().id().cause()).noun()
        + " ("
        + words.value(next.what(), expected.value().getAsDouble())
        + ")";
  }

  private List<String> beyondReach(Misfit misfit) {
    List<String> sentences = new ArrayList<>();
    for (Reading reading : answer.diagnosis().readings()) {
      OptionalDouble bound = misfit.boundPassed(reading);
      if (bound.isPresent()) {
        boolean above = reading.value() > bound.getAsDouble();
        sentences.add(
            words.opening(reading.what())
                + ": "
                + words.value(reading.what(), reading.value())
                + " is "
                + (above ? "more" : "less")
                + " than any fault in this job can cause ("
                + words.value(reading.what(), bound.getAsDouble())
                + " at "
                + (above ? "most" : "least")
                + "). Look at the unit, "
                + reading.what().tell(new Instrument())
                + " and the place.");
      }
    }
    return sentences;
  }

  private List<String> doesNotFit(Explanation first, Misfit misfit) {
    List<String> sentences = new ArrayList<>();
    for (int i = 0; i < first.predicted().size(); i++) {
      Reading reading = answer.diagnosis().readings().get(i);
      OptionalDouble predicted = first.predicted().get(i);
      if (predicted.isPresent()
          && misfit.boundPassed(reading).isEmpty()
          && !answer.scope().fits(reading, predicted.getAsDouble())) {
        sentences.add(
            words.opening(reading.what())
                + " does not fit either: expected "
                + words.value(reading.what(), predicted.getAsDouble())
                + ", and "
                + words.value(reading.what(), reading.value())
                + " was read. Read it again.");
      }
    }
    return sentences;
  }
}
