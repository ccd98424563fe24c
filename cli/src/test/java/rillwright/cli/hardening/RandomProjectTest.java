package rillwright.cli.hardening;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.command.Run;

/** The projects that seeds draw are valid, so what they try lies behind the reader. */
class RandomProjectTest {
  private static final int PROJECTS = 200;

  @TempDir private Path folder;

  @Test
  void areValid() throws IOException {
    for (long seed = 0; seed < PROJECTS; seed++) {
      Map<String, Object> tree = RandomProject.of(seed);
      Path file = Files.writeString(folder.resolve("drawn.yaml"), ProjectTree.yaml(tree));
      Run check = OrderlyRun.of(folder, List.of("check", file.toString()));
      assertEquals(0, check.status(), "seed " + seed + ": " + check.err());
    }
  }

  @Test
  void areTheSameInYamlAndJson() throws IOException {
    for (long seed = 0; seed < PROJECTS; seed++) {
      Map<String, Object> tree = RandomProject.of(seed);
      Path yaml = Files.writeString(folder.resolve("drawn.yaml"), ProjectTree.yaml(tree));
      Path json = Files.writeString(folder.resolve("drawn.json"), ProjectTree.json(tree));
      assertEquals(
          Run.of("check", yaml.toString()).out(),
          Run.of("check", json.toString()).out(),
          "seed " + seed);
    }
  }
}
