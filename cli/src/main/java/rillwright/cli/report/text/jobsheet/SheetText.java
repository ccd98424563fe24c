package rillwright.cli.report.text.jobsheet;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rillwright.cli.file.job.Photo;
import rillwright.cli.report.check.CheckNotes;
import rillwright.cli.report.mend.FirstWords;
import rillwright.cli.report.page.Head;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.PageBuilder;
import rillwright.cli.report.page.Paper;
import rillwright.cli.report.picture.OperatingPicture;
import rillwright.cli.report.picture.OperatingPicture.Power;
import rillwright.cli.report.picture.section.SectionPicture;
import rillwright.cli.report.picture.section.SectionPicture.ShutOff;
import rillwright.cli.report.text.Cautions;
import rillwright.cli.report.text.RunningCost;
import rillwright.cli.report.text.duty.DutyText;
import rillwright.cli.report.text.mend.MendText;
import rillwright.cli.report.text.solve.FallsTable;
import rillwright.cli.report.text.solve.PumpsTable;
import rillwright.cli.report.text.stream.StreamText;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.jobsheet.SheetAnswer;
import rillwright.cli.study.jobsheet.SheetAnswer.AsSet;
import rillwright.cli.study.mend.MendAnswer;
import rillwright.cli.study.mend.site.Need;
import rillwright.solver.network.Basin;
import rillwright.solver.network.Chamber;
import rillwright.solver.network.Fall;
import rillwright.solver.network.Outlet;
import rillwright.solver.network.Tee;

/** The job sheet: all of it, or what some people need. */
public final class SheetText {
  private static final int MOST_REMEDIES = 3;

  private static final String VALVES_SET =
      "All figures of this sheet are with the valves set as under SET IN THIS ORDER";

  private final SheetAnswer answer;
  private final ShownUnits units;
  private final PageBuilder page;
  private final Remarks remarks;

  private SheetText(SheetAnswer answer, Function<Photo, String> base64) {
    this.answer = answer;
    this.units = Shown.of(answer);
    this.page = SheetHead.begin(answer);
    this.remarks = new Remarks(answer, base64, page);
  }

  /**
   * The page.
   *
   * @param audience for whom; everybody if empty
   * @param base64 what is in a photograph
   */
  public static Page of(
      SheetAnswer answer, Optional<Audience> audience, Function<Photo, String> base64) {
    if (audience.isEmpty()) {
      return new SheetText(answer, base64).whole();
    }
    return switch (audience.get()) {
      case CREW -> new SheetText(answer, base64).crew();
      case CUSTOMER -> CustomerSheet.of(answer, base64);
      case LID -> LidCards.of(answer);
    };
  }

  private Page whole() {
    inNeed().flatMap(FirstWords::of).ifPresent(this::first);
    falls(inNeed().isPresent());
    pumps();
    section();
    answer.asSet().flatMap(AsSet::settings).ifPresent(it -> ValveBlocks.print(it, page));
    answer.asSet().flatMap(AsSet::stream).ifPresent(stream -> StreamText.water(stream, page));
    remarks.at(List.of(Basin.class, Chamber.class));
    answer.asSet().ifPresent(set -> FindingsList.print(set, page));
    inNeed().ifPresent(mend -> MendText.best(mend, MOST_REMEDIES, page));
    pipe();
    MaterialsTable.print(answer.materials(), units, page);
    answer.asSet().ifPresent(set -> RunningCost.print(set.solved().takes(), units, page));
    assumed();
    cautions();
    answer.asSet().ifPresent(set -> CardTable.print(set, page));
    return page.build().as(Paper.SHEET, "Job sheet");
  }

  /** Remedies, where more is in need than a pump far from its best efficiency. */
  private Optional<MendAnswer> inNeed() {
    return answer
        .asSet()
        .map(AsSet::mend)
        .filter(mend -> !mend.needs().stream().allMatch(Need::isOfEfficiency));
  }

  private Page crew() {
    falls(false);
    answer.asSet().flatMap(AsSet::settings).ifPresent(it -> ValveBlocks.print(it, page));
    pipe();
    remarks.at(List.of(Basin.class, Chamber.class));
    section();
    answer.asSet().ifPresent(set -> FindingsList.forCrew(set, page));
    MaterialsTable.print(answer.materials(), units, page);
    cautions();
    answer.asSet().ifPresent(set -> CardTable.print(set, page));
    return page.build().as(Paper.SHEET, "Crew sheet");
  }

  private void falls(boolean remedies) {
    answer
        .asSet()
        .flatMap(AsSet::settings)
        .filter(set -> !set.settings().listThrottled().isEmpty())
        .ifPresent(
            set ->
                first(
                    VALVES_SET
                        + (remedies
                            ? ", but those of remedies, which begin with the valves as written in"
                                + " the file."
                            : ".")));
    answer.asSet().ifPresent(set -> FallsTable.print(set.solved(), page));
    answer.duty().ifPresent(duty -> DutyText.duty(duty, page));
    remarks.at(List.of(Fall.class, Outlet.class));
  }

  private void section() {
    SectionPicture.leaves(SectionPicture.of(answer.section(), ShutOff.LEFT_OUT))
        .forEach(leaf -> page.show(new Head.Picture(leaf)));
  }

  private void first(String words) {
    page.space();
    page.paragraph(words);
  }

  private void pumps() {
    answer.asSet().ifPresent(set -> PumpsTable.print(set.solved(), page));
    answer
        .curves()
        .forEach(
            curves -> page.show(new Head.Picture(OperatingPicture.of(curves, Power.LEFT_OUT))));
  }

  private void pipe() {
    LevelsTable.print(answer, page);
    PipeTable.print(answer, page);
    remarks.atLines();
    remarks.at(List.of(Tee.class));
  }

  private void cautions() {
    page.heading("SAFETY");
    Cautions.of(answer.checked().project()).forEach(caution -> page.marked("- ", caution));
  }

  private void assumed() {
    List<String> notes = CheckNotes.assumed(answer.checked());
    if (!notes.isEmpty()) {
      page.heading("ASSUMPTIONS");
      notes.forEach(note -> page.marked("- ", SheetHead.sentence(without(note))));
    }
  }

  /** A note without what to write into the file, which a crew does not see. */
  private static String without(String note) {
    return note.replaceFirst("[;,] (give|say) \".*$", "")
        .replaceFirst("; \"solve\" gives the depth$", "")
        .replaceFirst("^where \"running\" does not say otherwise, ", "")
        .replaceFirst(" \\(\"[a-z]+\"\\)", "");
  }
}
