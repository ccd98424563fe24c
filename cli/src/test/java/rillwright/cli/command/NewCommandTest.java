package rillwright.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.schema.PublishedSchema;

class NewCommandTest {
  @TempDir private Path folder;

  private Path file() {
    return folder.resolve("pond.yaml");
  }

  private String answers(String text) throws IOException {
    return Files.writeString(folder.resolve("answers.yaml"), text).toString();
  }

  private Run run(String answers) throws IOException {
    return Run.of("new", file().toString(), "--answers", answers(answers));
  }

  private void assertNothingWritten() throws IOException {
    assertFalse(Files.exists(file()));
    try (Stream<Path> all = Files.list(folder)) {
      assertEquals(
          "answers.yaml", all.map(it -> "" + it.getFileName()).collect(Collectors.joining()));
    }
  }

  @Test
  void writesAProjectAndItsSchemaAndSaysWhatToRunNext() throws IOException {
    Run run = run("job: stream\nlift: 6 ft\n");
    assertEquals("", run.err());
    assertEquals(0, run.status());
    String text = Files.readString(file());
    assertTrue(text.startsWith("# yaml-language-server: $schema=project.schema.json\n"), text);
    assertTrue(text.contains("crest: 6 ft"), text);
    assertEquals(
        PublishedSchema.PROJECT.text(), Files.readString(folder.resolve("project.schema.json")));
    for (String next : new String[] {"check", "solve", "duty", "stream"}) {
      assertTrue(run.out().contains("  rillwright " + next + " " + file()), run.out());
    }
    assertEquals(0, Run.of("stream", file().toString()).status());
  }

  @Test
  void theFormInItsHelpIsAFileOfAnswers() throws IOException {
    String help = Run.of("new", "--help").out();
    String form =
        help.substring(help.indexOf("  units: us"))
            .lines()
            .filter(line -> !line.contains("# job:"))
            .map(String::strip)
            .collect(Collectors.joining("\n"));
    Run run = run(form);
    assertEquals("", run.err());
    assertEquals(0, run.status());
  }

  @Test
  void whatIsWrongHasLineColumnAndWhatWouldBeRight() throws IOException {
    run("units: us\nlitf: 3 ft\n")
        .assertRefused("answers.yaml:2:1: ", "did you mean \"lift\" or \"lip\"?");
    run("lift: 38\nlip: stoen\nbed: cobble\n")
        .assertRefused(
            "answers.yaml:1:7: lift: ",
            "has no unit",
            "answers.yaml:2:6: lip: ",
            "did you mean \"stone\"?",
            "answers.yaml:3:6: bed: this is not asked for such a job");
    run("job: [fall]\n").assertRefused("answers.yaml:1:6: job: expected an answer");
    run("job:\n").assertRefused("answers.yaml:1:", "expected an answer, found nothing");
    run("lift: 3 ft\nlift: 4 ft\n").assertRefused("answers.yaml:2:1: ", "here twice");
    run("").assertRefused("the file is empty");
    assertNothingWritten();
  }

  @Test
  void anExistingFileStaysAsItIs() throws IOException {
    Files.writeString(file(), "mine");
    run("job: fall\n").assertRefused("pond.yaml: this exists already");
    assertEquals("mine", Files.readString(file()));
  }

  @Test
  void aSchemaOfTheUsersStaysAsItIs() throws IOException {
    Path schema = Files.writeString(folder.resolve("project.schema.json"), "{}");
    Run run = run("job: fall\n");
    assertEquals(0, run.status());
    assertEquals("{}", Files.readString(schema));
    assertFalse(run.out().contains("schema"), run.out());
  }

  @Test
  void aNameThatIsNoProjectsIsRefused() throws IOException {
    String answers = answers("job: fall\n");
    Run.of("new", folder.resolve("pond.json").toString(), "--answers", answers)
        .assertRefused("ends in .yaml");
    Run.of("new", folder.resolve("no/pond.yaml").toString(), "--answers", answers)
        .assertRefused("there is no such folder");
    Run.of("new", file().toString(), "--answers", folder.resolve("none.yaml").toString())
        .assertRefused("none.yaml: there is no such file");
    assertNothingWritten();
  }

  @Test
  void theUnitsMayBeGivenOnTheCommandLine() throws IOException {
    Run run =
        Run.of(
            "new",
            file().toString(),
            "--show",
            "metric",
            "--answers",
            answers("job: reservoir\npump: none yet\n"));
    assertEquals(0, run.status(), run.err());
    assertTrue(Files.readString(file()).contains("show: metric"));
    assertTrue(run.out().contains("rillwright pumps"), run.out());
    assertFalse(run.out().contains("rillwright solve"), run.out());
  }
}
