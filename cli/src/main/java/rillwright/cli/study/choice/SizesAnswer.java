package rillwright.cli.study.choice;

import java.util.List;
import java.util.Optional;
import rillwright.cli.study.Answer;
import rillwright.cli.study.condition.JudgingConditions;
import rillwright.solver.study.pipechoice.RankedPipes;
import rillwright.solver.study.pipechoice.SizedPipe;

/** What trying sizes of pipe tells, pumped or not. */
public interface SizesAnswer<P extends SizedPipe> extends Answer {
  /** The sizes, ranked. */
  RankedPipes<P> choice();

  /** Of all prices; empty if none is known. */
  Optional<String> currency();

  /** Pipe that has no price. */
  List<String> unpriced();

  /** Fittings that have none while others have. */
  List<String> uncounted();

  /** They judge the sizes; empty to judge by the project as it stands. */
  Optional<JudgingConditions> conditions();
}
