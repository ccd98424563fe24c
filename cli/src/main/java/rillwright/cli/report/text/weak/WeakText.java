package rillwright.cli.report.text.weak;

import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.report.text.Ink;
import rillwright.cli.report.text.Page;
import rillwright.cli.report.weak.WeakAnswer;

/** Why a fall is weak, for people. */
public final class WeakText {
  private WeakText() {}

  /** The page. */
  public static String of(WeakAnswer answer, Ink ink) {
    Page page = new Page(ink);
    page.title(answer.title());
    ChangedWords.print(answer.changes(), page);
    new WeakAdvice(answer).print(page);
    ReadTable.print(answer, page);
    NextTable next = NextTable.of(answer);
    int letters = Math.max(ReadTable.lettersUsed(answer), next.lettersUsed());
    CausesTable.print(answer, letters, page);
    next.print(page);
    Remedies.print(answer, page);
    return page.toString();
  }
}
