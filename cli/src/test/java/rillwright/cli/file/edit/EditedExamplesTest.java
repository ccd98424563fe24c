package rillwright.cli.file.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.cli.file.Project;
import rillwright.cli.file.ProjectReader;
import rillwright.cli.file.change.AddressBook;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.tree.SourceText;
import rillwright.solver.network.Network;

/** Each value of each example changed in turn: the difference is that value alone. */
class EditedExamplesTest {
  private static final Pattern DIGIT = Pattern.compile("\\d(?!.*\\d)");

  /** One in so many values is read as a project; reading all takes a minute. */
  private static final int FEW = Integer.getInteger("rillwright.one.in", 6);

  static List<Path> examples() throws IOException {
    try (Stream<Path> files = Files.walk(Path.of("../examples"))) {
      return files
          .filter(file -> file.toString().endsWith(".yaml"))
          .filter(file -> read(file).contains("\npoints:"))
          .sorted()
          .toList();
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The value with its last digit, if it has one, become another: 38 ft, 39 ft. */
  private static String another(String value) {
    Matcher digit = DIGIT.matcher(value);
    return digit.find()
        ? value.substring(0, digit.start())
            + (Integer.parseInt(digit.group()) % 9 + 1)
            + value.substring(digit.end())
        : value + " x";
  }

  @ParameterizedTest
  @MethodSource("examples")
  void aChangedValueIsAllThatDiffers(Path file) {
    EditedText text = EditedText.of(SourceText.read(file));
    Map<String, String> values = new AddressBook(text.tree()).textByAddress();
    assertTrue(values.size() > 20, file + " has few values");
    values.forEach(
        (address, value) -> {
          assertSame(text, text.set(address + "=" + value), address);
          String changed = another(value);
          String edited = text.set(address + "=" + changed).text();
          assertOneValueDiffers(text.text(), edited, value, changed, address);
        });
  }

  private static void assertOneValueDiffers(
      String before, String after, String value, String changed, String address) {
    String dug = address.equals("points.reservoir.level") ? ", top: " + value : "";
    int same = 0;
    while (before.charAt(same) == after.charAt(same)) {
      same++;
    }
    int begin = before.charAt(same) == '"' ? same + 1 : before.lastIndexOf(value, same);
    assertTrue(before.startsWith(value, begin), address);
    boolean isQuoted = before.charAt(begin - 1) == '"';
    String rest = before.substring(begin + value.length() + (isQuoted ? 1 : 0));
    String expected =
        before.substring(0, begin - (isQuoted ? 1 : 0))
            + Quoted.asIn(after, begin - (isQuoted ? 1 : 0), changed)
            + (dug.isEmpty() ? rest : rest.replaceFirst("depth: 30 in", "$0" + dug));
    assertEquals(expected, after, address);
  }

  /** A new text as it stands in the edited file: in quotes or without. */
  private static final class Quoted {
    static String asIn(String text, int index, String value) {
      String quoted = "'" + value.replace("'", "''") + "'";
      return text.startsWith(quoted, index) ? quoted : value;
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void theEditedFileIsTheProjectThatSetMakes(Path file) {
    EditedText text = EditedText.of(SourceText.read(file));
    Project project = ProjectReader.read(file, List.of());
    Random random = new Random(file.toString().hashCode());
    new AddressBook(text.tree())
        .textByAddress()
        .forEach(
            (address, value) -> {
              String change = address + "=" + another(value);
              if (random.nextInt(FEW) == 0) {
                String set = said(() -> project.with(List.of(change)));
                String edited = said(() -> ProjectReader.of(text.set(change).text(), file));
                assertEquals(set, edited, change);
              }
            });
  }

  /** What a project says, or that it is none. */
  private static String said(Supplier<Project> reading) {
    try {
      Project project = reading.get();
      Network network = project.network();
      List<String> uncertain =
          project.uncertain().stream().map(it -> it.what() + it.quantity()).toList();
      Object[] all = {
        project.title(),
        network.water(),
        network.points(),
        network.lines(),
        project.running(),
        project.prices(),
        project.papers(),
        project.streams().streams(),
        uncertain
      };
      return Arrays.toString(all).replaceAll("@[0-9a-f]+", "").replace(", ", ",\n");
    } catch (InvalidInput none) {
      return none.faults().size() + " faults";
    }
  }
}
