package rillwright.cli.command.help;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rillwright.cli.command.argument.Destination;
import rillwright.cli.command.argument.Format;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.output.InputFiles;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.Nearest;
import rillwright.curves.wording.PlainText;

/** Explains how files are written and answers are read. */
@Command(
    name = "help",
    description = "Explains a topic: how files are written and how answers are read.",
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright help                               lists the topics",
      "  rillwright help readings                      every field of a reading",
      "  rillwright help file --format html --to file.html",
      "  rillwright help solve                         help with a command, as solve --help"
    })
public final class HelpCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..1",
      paramLabel = "TOPIC",
      description = "A topic or a command; without one the topics are listed.")
  private Optional<String> word = Optional.empty();

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      converter = Format.OfPages.class,
      description = "Output format: text (default) or html.")
  private Format format = Format.TEXT;

  @Mixin private Destination destination;

  @Override
  public Integer call() {
    destination.check(new InputFiles(List.of()));
    Optional<Topic> topic = word.flatMap(Topic::find);
    Optional<CommandLine> command =
        word.map(it -> spec.commandLine().getParent().getSubcommands().get(it));
    if (word.isEmpty()) {
      destination.print(TopicPage.list(), format);
    } else if (topic.isPresent()) {
      destination.print(TopicPage.of(topic.get()), format);
    } else if (command.isPresent()) {
      destination.print(command.get().getUsageMessage());
    } else {
      throw new ParameterException(
          spec.commandLine(),
          "no topic or command " + PlainText.quoted(word.get()) + hint(word.get()));
    }
    return ExitStatus.DONE;
  }

  private String hint(String written) {
    Map<String, Topic> fields = TopicPage.fields();
    boolean isField =
        fields.containsKey(written)
            && Topic.words().stream().noneMatch(topic -> topic.startsWith(written));
    if (!isField && !Choices.meant(written, allWords()).isEmpty()) {
      return Choices.hint(written, allWords());
    }
    return Nearest.to(written, fields.keySet()).stream()
        .findFirst()
        .map(
            field ->
                "; \"rillwright help %s\" explains %s"
                    .formatted(fields.get(field).word(), PlainText.quoted(field)))
        .orElse("; choose a command or one of " + String.join(", ", Topic.words()));
  }

  private List<String> allWords() {
    List<String> all = new ArrayList<>(Topic.words());
    all.addAll(spec.commandLine().getParent().getSubcommands().keySet());
    return all;
  }
}
