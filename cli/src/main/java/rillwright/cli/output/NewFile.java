package rillwright.cli.output;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.interview.Answers;
import rillwright.cli.interview.AnswersFile;
import rillwright.cli.interview.Draft;
import rillwright.cli.schema.PublishedSchema;

/**
 * A project file that is to be written, and the answers that are kept beside it until it is.
 *
 * @param path where; nothing lies there yet
 */
public record NewFile(Path path) {
  private static final String KEPT =
      "# Answers so far to \"rillwright new\"; it takes them up again.\n";
  private static final String PROJECT = "project";

  /** Refuses a name that is no project's, one that is taken, and a folder that takes no files. */
  public void check() {
    String name = path.toString().toLowerCase(Locale.ROOT);
    if (!name.endsWith(".yaml") && !name.endsWith(".yml")) {
      throw wrong("a new project's name ends in .yaml, for example pond.yaml");
    }
    if (Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
      throw wrong("this exists already and is left as it is; choose another name");
    }
    new OutputFile(path, PROJECT).check(new InputFiles(List.of()));
  }

  private InvalidInput wrong(String message) {
    return new InvalidInput(Place.whole(path.toString()), message);
  }

  /** Where the answers of an unfinished start are kept. */
  public Path kept() {
    return path.resolveSibling(path.getFileName() + ".answers");
  }

  /** Whether there are answers of an unfinished start. */
  public boolean hasKept() {
    return Files.isRegularFile(kept(), LinkOption.NOFOLLOW_LINKS);
  }

  /** Keeps what was answered so far. */
  public void keep(Answers answers) {
    new OutputFile(kept(), "file of answers")
        .write((KEPT + AnswersFile.text(answers)).getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Writes the project, and the schema beside it for editors where none lies there.
   *
   * @return the files that were written
   */
  public List<Path> write(Draft draft) {
    check();
    List<Path> written = new ArrayList<>(List.of(path));
    new OutputFile(path, PROJECT).write(draft.text().getBytes(StandardCharsets.UTF_8));
    Path schema = path.resolveSibling(PublishedSchema.PROJECT.fileName());
    if (!Files.exists(schema, LinkOption.NOFOLLOW_LINKS)) {
      new OutputFile(schema, "schema")
          .write(PublishedSchema.PROJECT.text().getBytes(StandardCharsets.UTF_8));
      written.add(schema);
    }
    return written;
  }

  /** Removes the kept answers; a file that somebody else wrote under that name stays. */
  public void forget() {
    try {
      if (hasKept() && Files.readString(kept()).startsWith(KEPT)) {
        Files.delete(kept());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The earlier answers, to be offered again; empty if there are none. */
  public Optional<Answers> offered() {
    return hasKept() ? Optional.of(AnswersFile.offered(kept())) : Optional.empty();
  }
}
