package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChartCommandTest {
  private static final String PROJECT = Run.resource("solve/demo-10.yaml").toString();

  @TempDir private Path folder;

  private Run draw(Path picture, String... more) {
    String[] arguments = new String[more.length + 4];
    arguments[0] = "chart";
    arguments[1] = PROJECT;
    arguments[2] = "--to";
    arguments[3] = picture.toString();
    System.arraycopy(more, 0, arguments, 4, more.length);
    return Run.of(arguments);
  }

  @Test
  void aPictureHasTheRightsOfOtherNewFilesAndLeavesNothingBesideIt() throws IOException {
    Assumptions.assumeTrue(
        folder.getFileSystem().supportedFileAttributeViews().contains("posix"), "no such rights");
    Path other = Files.writeString(folder.resolve("other.txt"), "x");
    Path picture = folder.resolve("curves.svg");
    assertEquals(0, draw(picture).status());
    assertEquals(
        PosixFilePermissions.toString(Files.getPosixFilePermissions(other)),
        PosixFilePermissions.toString(Files.getPosixFilePermissions(picture)));
    try (var files = Files.list(folder)) {
      assertEquals(2, files.count());
    }
  }

  @Test
  void aFolderThatTakesNoFilesIsReportedByTheNameThatWasGiven() {
    Path strange = Path.of("/proc/curves.svg");
    Assumptions.assumeTrue(Files.isDirectory(strange.getParent()), "no such folder here");
    Run run = draw(strange);
    assertEquals(2, run.status());
    assertTrue(
        run.err()
            .startsWith("/proc/curves.svg: the picture cannot be written there: no permission"),
        run.err());
    assertFalse(run.err().contains("/."), run.err());
  }

  @Test
  void asJsonItDrawsThePictureThatIsAskedFor() {
    Path picture = folder.resolve("curves.png");
    Run run = draw(picture, "--format", "json");
    assertEquals(0, run.status(), run.err());
    assertTrue(run.out().startsWith("{"), run.out());
    assertTrue(Files.exists(picture));
  }

  @Test
  void aFolderIsNoPicture() throws IOException {
    Path taken = Files.createDirectory(folder.resolve("curves.svg"));
    Run run = draw(taken);
    assertEquals(2, run.status());
    assertTrue(run.err().contains("this is a folder"), run.err());
    assertTrue(Files.isDirectory(taken));
  }
}
