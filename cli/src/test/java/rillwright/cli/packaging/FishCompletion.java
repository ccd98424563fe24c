package rillwright.cli.packaging;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/**
 * Completion for the shell fish, which picocli does not write: a line for each command and option,
 * as {@code complete} takes them.
 */
final class FishCompletion {
  private FishCompletion() {}

  static String of(CommandSpec program) {
    List<String> commands =
        program.subcommands().values().stream()
            .map(command -> command.getCommandSpec())
            .filter(command -> !command.usageMessage().hidden())
            .distinct()
            .flatMap(command -> lines(program.name(), command).stream())
            .toList();
    return String.join("\n", commands) + "\n";
  }

  private static List<String> lines(String program, CommandSpec command) {
    String first =
        "complete -c "
            + program
            + " -n __fish_use_subcommand -a "
            + command.name()
            + " -d "
            + quoted(command.usageMessage().description());
    List<String> options =
        command.options().stream()
            .filter(option -> !option.hidden())
            .sorted(Comparator.comparing(OptionSpec::longestName))
            .map(option -> line(program, command.name(), option))
            .toList();
    return Stream.concat(Stream.of(first), options.stream()).toList();
  }

  private static String line(String program, String command, OptionSpec option) {
    boolean takesAValue = option.arity().max() > 0;
    return "complete -c "
        + program
        + " -n '__fish_seen_subcommand_from "
        + command
        + "' -l "
        + option.longestName().replaceFirst("^--", "")
        + (takesAValue ? values(option) : "")
        + " -d "
        + quoted(option.description());
  }

  /** That a value follows, and what it may be where that is known. */
  private static String values(OptionSpec option) {
    if (option.completionCandidates() == null) {
      return " -r";
    }
    List<String> values = new ArrayList<>();
    String said = String.join(" ", option.description());
    for (String value : option.completionCandidates()) {
      String written = value.toLowerCase(Locale.ROOT);
      if (said.contains(written)) {
        values.add(written);
      }
    }
    return " -x -a '" + String.join(" ", values) + "'";
  }

  private static String quoted(String[] description) {
    String first = Arrays.stream(description).limit(1).collect(Collectors.joining());
    return "'" + first.replace("%n", " ").replace("\\", "\\\\").replace("'", "\\'") + "'";
  }
}
