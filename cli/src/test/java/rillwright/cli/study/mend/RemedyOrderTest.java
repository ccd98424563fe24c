package rillwright.cli.study.mend;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.study.jobsheet.SheetRequest;
import rillwright.cli.study.mend.change.Offered;
import rillwright.cli.study.mend.site.Need;

/** Which remedy comes first, and that the job sheet has the same. */
class RemedyOrderTest {
  private static final MendRequest USUAL = new MendRequest(Offered.NOTHING, List.of(), 10);

  private static Project example(String name) {
    return ProjectReader.read(Path.of("..", "examples").resolve(name), List.of());
  }

  /** Pipe first, though no more has a price: who asks for a fall asks for that fall. */
  @Test
  void whatAltersAFallComesAfterWhatDoesNot() {
    List<Boolean> alters =
        USUAL.answer(example("twin-falls/ball-valves.yaml")).mendingAll().stream()
            .map(remedy -> remedy.candidate().altersLook())
            .toList();
    assertEquals(alters.stream().sorted().toList(), alters);
    assertTrue(alters.contains(true) && alters.contains(false), alters.toString());
  }

  /** Its valve is set there, and what would mend it is that of the file all the same. */
  @Test
  void theJobSheetHasTheRemediesOfMend() {
    Project dry = example("long-stream/dry.yaml");
    assertEquals(sets(USUAL.answer(dry)), sets(ofSheet(dry)));
  }

  @Test
  void whatTheValvesOfTheSheetGiveIsNoLongerInNeed() {
    assertTrue(
        ofSheet(example("twin-falls/job.yaml")).needs().stream().allMatch(Need::isOfEfficiency));
  }

  private static MendAnswer ofSheet(Project project) {
    return new SheetRequest(10).answer(project).asSet().orElseThrow().mend();
  }

  private static List<List<String>> sets(MendAnswer answer) {
    return answer.mendingAll().stream().map(remedy -> remedy.candidate().set()).toList();
  }
}
