package rillwright.cli.report.check;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.file.job.JobPapers;
import rillwright.cli.file.job.Photo;
import rillwright.cli.file.job.Remark;
import rillwright.curves.wording.PlainText;

/** Which notes and photographs a file has for the job sheet. */
final class JobNotes {
  private static final double BYTES_PER_KB = 1000;

  private JobNotes() {}

  /** Sentences, one for each point or line that has some. */
  static List<String> in(JobPapers papers) {
    List<String> notes = new ArrayList<>();
    papers.points().forEach(remark -> notes.add("point " + of(remark)));
    papers.lines().forEach(remark -> notes.add("line " + of(remark)));
    return notes;
  }

  private static String of(Remark remark) {
    List<String> all = new ArrayList<>();
    remark.notes().forEach(note -> all.add("note " + PlainText.quoted(note)));
    remark.photos().forEach(photo -> all.add(of(photo)));
    return PlainText.quoted(remark.at()) + ": for the job sheet: " + String.join(", ", all);
  }

  private static String of(Photo photo) {
    return "photograph "
        + PlainText.quoted(photo.path())
        + " ("
        + photo.format()
        + ", "
        + Math.max(1, Math.round(photo.bytes() / BYTES_PER_KB))
        + " kB)";
  }
}
