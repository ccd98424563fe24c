package rillwright.cli.file.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.file.fault.InvalidInput;

class SourceTextTest {
  @TempDir private Path folder;

  private static String faultOf(Path file) {
    return assertThrows(InvalidInput.class, () -> SourceText.read(file)).getMessage();
  }

  private Path file(byte[] content) throws IOException {
    return Files.write(folder.resolve("pond.yaml"), content);
  }

  @Test
  void aMissingFileIsNamed() {
    Path file = folder.resolve("pound.yaml");
    assertEquals(file + ": there is no such file", faultOf(file));
  }

  @Test
  void aFolderIsNoProject() {
    assertEquals(folder + ": this is a folder; name a file in it", faultOf(folder));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "\n\n", "\uFEFF"})
  void anEmptyFileIsReported(String text) throws IOException {
    Path file = file(text.getBytes(StandardCharsets.UTF_8));
    assertEquals(file + ": the file is empty", faultOf(file));
  }

  @Test
  void aFileOfCommentsOnlyIsEmptyToo() throws IOException {
    Path file = file("# nothing\n".getBytes(StandardCharsets.UTF_8));
    SourceText text = SourceText.read(file);
    InvalidInput shown = assertThrows(InvalidInput.class, () -> TreeReader.read(text));
    assertEquals(file + ": the file is empty", shown.getMessage());
  }

  @Test
  void aBinaryFileIsNoText() throws IOException {
    Path file = file(new byte[] {(byte) 0x89, 'P', 'N', 'G', 0, 1});
    assertEquals(
        file + ": the file is not a text; a project is written in YAML or JSON", faultOf(file));
  }

  @Test
  void aCharacterThatIsNotUtf8IsPointedAt() throws IOException {
    Path file = file("a: 1\r\nb: Bäche\n".getBytes(StandardCharsets.ISO_8859_1));
    assertEquals(
        file + ":2:5: a character here is not UTF-8; save the file as UTF-8", faultOf(file));
  }

  @Test
  void utf16IsNamed() throws IOException {
    Path file = file("\uFEFFa: 1".getBytes(StandardCharsets.UTF_16LE));
    assertEquals(file + ": the file is saved as UTF-16; save it as UTF-8", faultOf(file));
  }

  @Test
  void aHugeFileIsRefusedWithoutReadingIt() throws IOException {
    Path file = folder.resolve("huge.yaml");
    try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
      huge.setLength(1L << 33);
    }
    assertEquals(file + ": the file is larger than 64 MB; no project needs that", faultOf(file));
  }
}
