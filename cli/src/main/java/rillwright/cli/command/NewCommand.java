package rillwright.cli.command;

import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rillwright.cli.command.argument.ShowArguments;
import rillwright.cli.command.argument.StandardOptions;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.command.talk.LineEditor;
import rillwright.cli.command.talk.PlainLines;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.interview.Answers;
import rillwright.cli.interview.AnswersFile;
import rillwright.cli.interview.Conversation;
import rillwright.cli.interview.Conversation.Ending;
import rillwright.cli.interview.Dialogue;
import rillwright.cli.interview.Draft;
import rillwright.cli.interview.Interview;
import rillwright.cli.interview.NextStep;
import rillwright.cli.interview.Questions;
import rillwright.cli.output.NewFile;
import rillwright.cli.report.page.terminal.Screen;
import rillwright.curves.wording.PlainText;

/** Asks the questions of a job and writes a first project. */
@Command(
    name = "new",
    description = {
      "Asks about the job and writes a first project file, with notes.",
      "Each answer is checked at once; Enter takes what is suggested. Leave with \"quit\": the",
      "answers are kept beside the file, and the same command takes them up again."
    },
    footerHeading = "%nExamples:%n")
public final class NewCommand implements Callable<Integer> {
  private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "The project to write, a new .yaml file.")
  private Path path;

  @Mixin private ShowArguments units;

  @Option(
      names = "--answers",
      paramLabel = "FILE",
      description = "Takes the answers from this file (YAML) and asks nothing.")
  private Optional<Path> answersFile = Optional.empty();

  @Mixin
  @SuppressWarnings("UnusedVariable") // read by picocli
  private StandardOptions standard;

  /** The form of a file of answers stands in the help: it is that of the questions. */
  @Spec
  void setSpec(CommandSpec spec) {
    this.spec = spec;
    spec.usageMessage().footer(footer());
  }

  private static String[] footer() {
    return ("""
      rillwright new pond.yaml
      rillwright new pond.yaml --show metric
      rillwright new pond.yaml --answers answers.yaml

    A file of answers has any of these lines; what is left out is as suggested here.
    """
            + AnswersFile.form().indent(2).replace("%", "%%"))
        .split("\n");
  }

  @Override
  public Integer call() {
    NewFile file = new NewFile(path);
    file.check();
    Interview interview = new Interview(path);
    Answers given =
        units
            .show()
            .map(show -> Answers.NONE.with(Questions.UNITS, ShowArguments.word(show)))
            .orElse(Answers.NONE);
    Optional<Answers> answers =
        answersFile.isPresent()
            ? Optional.of(AnswersFile.checked(answersFile.get(), given, interview))
            : held(file, interview, given);
    answers.ifPresent(all -> write(file, all));
    return ExitStatus.DONE;
  }

  /** What was answered; empty if the one who was asked has left. */
  private Optional<Answers> held(NewFile file, Interview interview, Answers given) {
    if (Screen.isLive()) {
      Optional<LineEditor> editor = LineEditor.ofTerminal();
      if (editor.isPresent()) {
        try (LineEditor terminal = editor.get()) {
          return held(file, interview, given, terminal);
        }
      }
    }
    return held(
        file,
        interview,
        given,
        new PlainLines(new InputStreamReader(System.in, StandardCharsets.UTF_8), out()));
  }

  private Optional<Answers> held(
      NewFile file, Interview interview, Answers given, Dialogue dialogue) {
    Optional<Answers> offered = file.offered();
    if (offered.isPresent()) {
      dialogue.say("The answers of an earlier start, in " + file.kept() + ", are suggested again.");
    }
    Conversation talk =
        new Conversation(
            interview,
            dialogue,
            given,
            offered.orElse(Answers.NONE),
            answers -> file.keep(answers));
    Ending ending = talk.hold();
    if (ending == Ending.ANSWERED) {
      return Optional.of(talk.answers());
    }
    String kept =
        file.hasKept()
            ? "the answers are kept in " + file.kept() + "; the same command takes them up again"
            : "nothing was answered";
    if (ending == Ending.BROKEN_OFF) {
      throw new InvalidInput(
          Place.whole(path.toString()),
          "not written: the input ended before all was answered; " + kept);
    }
    dialogue.say("Left: " + path + " is not written; " + kept + ".");
    return Optional.empty();
  }

  private PrintWriter out() {
    return spec.commandLine().getOut();
  }

  private void write(NewFile file, Answers answers) {
    List<Path> written = file.write(Draft.of(answers, path));
    if (answersFile.isEmpty()) {
      file.forget();
    }
    PrintWriter out = out();
    out.println();
    out.println(
        "Written: "
            + PlainText.harmless(
                written.stream().map(Path::toString).collect(Collectors.joining(", ")))
            + (written.size() > 1 ? " (with which editors complete and check it)" : ""));
    out.println("Next:");
    NextStep.after(answers).stream()
        .filter(next -> Rillwright.has(next.command()))
        .forEach(
            next -> {
              out.println(PlainText.harmless("  rillwright " + next.line(path)));
              out.println("      " + next.words());
            });
    out.flush();
  }
}
