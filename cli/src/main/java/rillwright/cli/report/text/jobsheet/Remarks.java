package rillwright.cli.report.text.jobsheet;

import java.util.List;
import java.util.function.Function;
import rillwright.cli.file.job.Photo;
import rillwright.cli.file.job.Remark;
import rillwright.cli.report.page.Head;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.study.jobsheet.SheetAnswer;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.Point;

/** Notes and photographs at the places to which they belong. */
final class Remarks {
  private final SheetAnswer answer;
  private final Function<Photo, String> base64;
  private final PageBuilder page;

  Remarks(SheetAnswer answer, Function<Photo, String> base64, PageBuilder page) {
    this.answer = answer;
    this.base64 = base64;
    this.page = page;
  }

  /** Those of points of some kinds. */
  void at(List<Class<? extends Point>> kinds) {
    notes(of(kinds));
    photographs(of(kinds));
  }

  /** The photographs of points of some kinds, without the notes, which are for the crew. */
  void photographsAt(List<Class<? extends Point>> kinds) {
    photographs(of(kinds));
  }

  /** Those of lines. */
  void atLines() {
    notes(answer.papers().lines());
    photographs(answer.papers().lines());
  }

  private List<Remark> of(List<Class<? extends Point>> kinds) {
    return answer.network().points().stream()
        .filter(point -> kinds.stream().anyMatch(kind -> kind.isInstance(point)))
        .flatMap(point -> answer.papers().findAtPoint(point.name().value()).stream())
        .toList();
  }

  private void notes(List<Remark> remarks) {
    if (remarks.stream().anyMatch(remark -> !remark.notes().isEmpty())) {
      page.space();
    }
    for (Remark remark : remarks) {
      String at = PlainText.quoted(remark.at());
      remark.notes().forEach(note -> page.marked("- ", at + ": " + note));
    }
  }

  private void photographs(List<Remark> remarks) {
    for (Remark remark : remarks) {
      for (Photo photo : remark.photos()) {
        page.show(
            new Head.Photograph(
                photo.format().mediaType(), base64.apply(photo), PlainText.quoted(remark.at())));
      }
    }
  }
}
