package rillwright.cli.report.text.weak;

import rillwright.cli.report.units.Shown;
import rillwright.cli.report.weak.Misfit;
import rillwright.cli.report.weak.ReadingWords;
import rillwright.cli.study.weak.WeakAnswer;

/** What to read again where no cause fits. */
final class LeastFitting {
  private LeastFitting() {}

  /**
   * "Read again what fits least, gauge G1 (43 psi read, by B 8 psi); check the drawing against what
   * stands there", without a full stop.
   */
  static String readAgain(WeakAnswer answer) {
    ReadingWords words = new ReadingWords(Shown.of(answer));
    return new Misfit(answer)
            .least()
            .map(
                least ->
                    "Read again what fits least, "
                        + words.name(least.reading().what())
                        + " ("
                        + words.value(least.reading().what(), least.reading().value())
                        + " read, by "
                        + least.by().letter()
                        + " "
                        + words.value(least.reading().what(), least.predictedByIt())
                        + "); check")
            .orElse("Check")
        + " the drawing against what stands there";
  }
}
