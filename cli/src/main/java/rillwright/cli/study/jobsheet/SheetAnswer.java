package rillwright.cli.study.jobsheet;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.job.JobPapers;
import rillwright.cli.study.Answer;
import rillwright.cli.study.Job;
import rillwright.cli.study.balance.BalanceAnswer;
import rillwright.cli.study.check.Checked;
import rillwright.cli.study.curve.Curves;
import rillwright.cli.study.duty.DutyAnswer;
import rillwright.cli.study.jobsheet.card.CardReading;
import rillwright.cli.study.jobsheet.materials.Materials;
import rillwright.cli.study.mend.MendAnswer;
import rillwright.cli.study.section.Section;
import rillwright.cli.study.solve.Solved;
import rillwright.cli.study.stream.StreamAnswer;
import rillwright.solver.network.Network;

/**
 * What stands on a job sheet.
 *
 * @param checked what the file says
 * @param section along the ways of the water
 * @param materials that it is built of
 * @param curves at each pump, as far as they can be drawn
 * @param duty of a pump that is still to be chosen, where one is and it can be sized
 * @param asSet what is so once it runs; empty where a pump is still to be chosen
 */
public record SheetAnswer(
    Checked checked,
    Section section,
    Materials materials,
    List<Curves> curves,
    Optional<DutyAnswer> duty,
    Optional<AsSet> asSet)
    implements Answer {
  public SheetAnswer {
    curves = List.copyOf(curves);
  }

  /**
   * What is so once it runs, with the valves that are marked adjustable set.
   *
   * @param settings of these valves; empty where none is marked or no fall has a target
   * @param solved what flows where
   * @param mend what would mend it
   * @param stream streams and levels; empty where the file has neither a stream nor evaporation
   * @param card what to read on the day
   */
  public record AsSet(
      Optional<BalanceAnswer> settings,
      Solved solved,
      MendAnswer mend,
      Optional<StreamAnswer> stream,
      List<CardReading> card) {
    public AsSet {
      card = List.copyOf(card);
    }
  }

  @Override
  public Job job() {
    return checked.job();
  }

  /** What the file says of the job besides its water. */
  public JobPapers papers() {
    return checked.project().papers();
  }

  /** Points and lines as the file has them. */
  public Network network() {
    return checked.project().network();
  }

  /** What is built to a level, the highest first. */
  public List<SiteLevel> levels() {
    return SiteLevel.in(network());
  }
}
