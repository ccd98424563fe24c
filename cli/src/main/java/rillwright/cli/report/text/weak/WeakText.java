package rillwright.cli.report.text.weak;

import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.study.weak.WeakAnswer;

/** Why a fall is weak, for people. */
public final class WeakText {
  private WeakText() {}

  /** The page. */
  public static Page of(WeakAnswer answer) {
    PageBuilder page = ChangedWords.page(answer.title(), answer.changes());
    new WeakAdvice(answer).print(page);
    ReadTable.print(answer, page);
    PondText.print(answer, page);
    NextTable next = NextTable.of(answer);
    int letters = Math.max(ReadTable.lettersUsed(answer), next.lettersUsed());
    PairsText.print(answer, page);
    CausesTable.print(answer, letters, page);
    next.print(page);
    Remedies.print(answer, page);
    return page.build();
  }
}
