package rillwright.cli.hardening;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.study.jobsheet.AddingUp;

/** Materials of drawn projects; {@code -Drillwright.projects=1000} tries that many. */
class MaterialsAddUpTest {
  private static final int PROJECTS = Integer.getInteger("rillwright.projects", 40);

  @TempDir private Path folder;

  @Test
  void everyRunAndPieceOfADrawnProjectIsOnItsList() throws IOException {
    for (long seed = 0; seed < PROJECTS; seed++) {
      String file = Scratch.file(folder, ProjectTree.yaml(RandomProject.of(seed)));
      AddingUp.check(ProjectReader.read(Path.of(file), List.of()), "seed " + seed);
    }
  }
}
