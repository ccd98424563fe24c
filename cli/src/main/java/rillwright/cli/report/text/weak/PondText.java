package rillwright.cli.report.text.weak;

import java.util.Optional;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.weak.PondLoss;
import rillwright.cli.study.weak.PondLoss.Fall;
import rillwright.cli.study.weak.WeakAnswer;
import rillwright.curves.wording.PlainText;

/** Where a pond's water is lost, by how fast it falls. */
final class PondText {
  private final PondLoss loss;
  private final boolean isPumped;
  private final ShownUnits units;

  private PondText(PondLoss loss, boolean isPumped, ShownUnits units) {
    this.loss = loss;
    this.isPumped = isPumped;
    this.units = units;
  }

  static void print(WeakAnswer answer, PageBuilder page) {
    answer
        .pondLoss()
        .map(loss -> new PondText(loss, answer.isPumped(), Shown.of(answer)))
        .ifPresent(text -> page.paragraph(text.sentences()));
  }

  private String sentences() {
    String pond = PlainText.quoted(loss.pond().value());
    Optional<Fall> own = loss.ofThePond();
    Optional<Fall> way = loss.onTheWay();
    String begin =
        "Of what "
            + pond
            + " falls, "
            + units.fineDepth(86_400 * loss.evaporationMPerS())
            + " per day evaporates. ";
    if (own.isEmpty()) {
      Fall together = loss.together().orElseThrow();
      return begin
          + (together.isMore()
              ? "While it runs "
                  + rate(together)
                  + " more is lost, in the pond or on the way"
                  + (isPumped ? "; its fall with the pump off says on which side." : ".")
              : "While it runs no more is lost than its reading can show.");
    }
    String still =
        own.get().isMore()
            ? "With the pump off the pond itself loses " + rate(own.get()) + "."
            : "With the pump off no more is lost than its reading can show.";
    return begin
        + still
        + way.map(
                fall ->
                    fall.isMore()
                        ? " While it runs "
                            + rate(fall)
                            + " more is lost downstream of the pump: in the line, at a fall or in"
                            + " the stream, splash and what evaporates there included."
                        : " While it runs no more is lost than the two readings can show.")
            .orElse("");
  }

  /** "12 mm per hour (0.24 m3/h)". */
  private String rate(Fall fall) {
    return units.fineDepth(3600 * fall.mPerS()) + " per hour (" + units.flow(fall.m3PerS()) + ")";
  }
}
