package rillwright.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;
import rillwright.cli.command.Rillwright;
import rillwright.cli.wording.Choices;
import rillwright.cli.wording.FileNames;
import rillwright.curves.wording.PlainText;

/** What is wrong with the arguments of the program, in the words of one who uses it. */
final class ArgumentWords {
  private static final String SHOW = "--show";
  private static final List<String> PROJECT_ENDINGS = List.of(".yaml", ".yml", ".json");

  private final CommandSpec command;
  private final List<String> arguments;

  private ArgumentWords(CommandSpec command, List<String> arguments) {
    this.command = command;
    this.arguments = arguments;
  }

  /**
   * One sentence without a full stop.
   *
   * @param wrong what the reader of arguments met
   * @param arguments all of them, as they were given
   */
  static String of(ParameterException wrong, String[] arguments) {
    ArgumentWords words =
        new ArgumentWords(wrong.getCommandLine().getCommandSpec(), List.of(arguments));
    if (wrong instanceof UnmatchedArgumentException unmatched) {
      return words.unmatched(unmatched.getUnmatched());
    }
    if (wrong instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
      return words.missing(missing.getMissing().get(0));
    }
    if (wrong instanceof OverwrittenOptionException twice) {
      return nameOf(twice.getOverwritten()) + " is given twice; give it once";
    }
    if (wrong.getArgSpec() != null && wrong.getCause() instanceof TypeConversionException no) {
      return nameOf(wrong.getArgSpec()) + ": " + notConverted(wrong, no);
    }
    return wrong.getMessage();
  }

  private boolean isWholeProgram() {
    return command.parent() == null;
  }

  private String unmatched(List<String> words) {
    for (String word : words) {
      if (word.startsWith("-")) {
        return "there is no option "
            + PlainText.quoted(word)
            + (isWholeProgram() ? "" : " of " + command.name())
            + (word.equals(SHOW) && command.optionsMap().containsKey("--set")
                ? "; units stand in the file: \"show: us\" or \"show: metric\", or add --set"
                    + " show=metric"
                : Choices.hint(word, command.optionsMap().keySet()));
      }
    }
    String word = words.get(0);
    if (!isWholeProgram()) {
      return PlainText.quoted(word) + " is one argument too many; " + usage();
    }
    List<String> commands = Rillwright.listShown(command);
    if (isProject(word)) {
      return "give the command before "
          + PlainText.quoted(word)
          + ", for example \"rillwright check "
          + word
          + "\"; choose "
          + String.join(", ", commands);
    }
    return "there is no command " + PlainText.quoted(word) + Choices.hint(word, commands);
  }

  private static boolean isProject(String word) {
    String lower = word.toLowerCase(Locale.ROOT);
    return PROJECT_ENDINGS.stream().anyMatch(lower::endsWith);
  }

  /** "write rillwright check FILE", with what it must have. */
  private String usage() {
    StringBuilder usage = new StringBuilder("write \"").append(command.qualifiedName());
    command.positionalParameters().forEach(what -> usage.append(' ').append(what.paramLabel()));
    command.options().stream()
        .filter(ArgSpec::required)
        .forEach(it -> usage.append(' ').append(nameOf(it)).append(' ').append(it.paramLabel()));
    return usage.append('"').toString();
  }

  private String missing(ArgSpec what) {
    String name = nameOf(what);
    if (what instanceof OptionSpec && arguments.contains(name)) {
      return name + " needs a value after it: " + name + " " + what.paramLabel();
    }
    return name + " is missing; " + usage();
  }

  private static String nameOf(ArgSpec what) {
    return what instanceof OptionSpec option ? option.longestName() : what.paramLabel();
  }

  private static String notConverted(ParameterException wrong, TypeConversionException no) {
    Class<?> type = wrong.getArgSpec().auxiliaryTypes()[0];
    if (type == Path.class) {
      return PlainText.quoted(wrong.getValue()) + ": " + FileNames.whyNot(wrong.getValue());
    }
    if (type == boolean.class) {
      return "it takes no value, not " + PlainText.quoted(wrong.getValue()) + "; write it alone";
    }
    if (type == int.class || type == long.class) {
      return PlainText.quoted(wrong.getValue()) + " is not a whole number";
    }
    return type == double.class || type == Double.class
        ? PlainText.quoted(wrong.getValue()) + " is not a number"
        : no.getMessage();
  }
}
