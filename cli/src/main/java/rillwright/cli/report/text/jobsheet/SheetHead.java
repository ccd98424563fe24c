package rillwright.cli.report.text.jobsheet;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rillwright.cli.file.job.JobDetails;
import rillwright.cli.report.page.Head;
import rillwright.cli.report.page.Head.Fact;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.text.ChangedWords;
import rillwright.cli.study.jobsheet.SheetAnswer;

/** What a sheet begins with: the job, for whom and where, and what it is good for. */
final class SheetHead {
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  private SheetHead() {}

  static PageBuilder begin(SheetAnswer answer) {
    PageBuilder page = ChangedWords.page(answer.title(), answer.changes());
    page.show(new Head.Facts(facts(answer.papers().details())));
    return page;
  }

  /** A date is to be written in where the file has none. */
  static List<Fact> facts(JobDetails job) {
    List<Fact> facts = new ArrayList<>();
    job.firm().ifPresent(firm -> facts.add(new Fact("Firm", firm)));
    job.customer().ifPresent(customer -> facts.add(new Fact("Customer", customer)));
    job.address().ifPresent(address -> facts.add(new Fact("Site", address)));
    facts.add(new Fact("Date", job.date().map(DATE::format).orElse("")));
    return facts;
  }

  /** "Firm A, 14 May 2026. ": who drew a picture and when, as far as the file says. */
  static String from(JobDetails job) {
    String from =
        Stream.of(job.firm(), job.date().map(DATE::format))
            .flatMap(Optional::stream)
            .collect(Collectors.joining(", "));
    return from.isEmpty() ? "" : sentence(from) + " ";
  }

  /** A note as a sentence of its own. */
  static String sentence(String note) {
    String begun = Character.toUpperCase(note.charAt(0)) + note.substring(1);
    return begun.endsWith(".") ? begun : begun + ".";
  }
}
