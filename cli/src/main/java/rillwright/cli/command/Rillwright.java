package rillwright.cli.command;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rillwright.cli.command.argument.StandardOptions;
import rillwright.cli.command.help.HelpCommand;
import rillwright.cli.command.jobsheet.SheetCommand;
import rillwright.cli.command.page.PageCommand;
import rillwright.cli.command.weak.WeakCommand;
import rillwright.cli.command.weak.WeakTrialCommand;

/** The program as a whole: it has commands and does nothing by itself. */
@Command(
    name = "rillwright",
    description = {
      "Computes pumps, pipes and waterfalls of a pond as one network.",
      "Describe what is built or planned, and see what flows over each fall."
    },
    synopsisSubcommandLabel = "COMMAND FILE",
    footerHeading = "%nTo begin:%n",
    footer = {
      "  rillwright new pond.yaml       asks about the job and writes a first file",
      "  rillwright page pond.yaml      opens it as a live page in the browser",
      "  rillwright check pond.yaml     checks the file and lists what it describes",
      "  rillwright solve pond.yaml     what flows where",
      "  rillwright duty pond.yaml      the flow and head that a pump must make",
      "  rillwright pumps pond.yaml --from FOLDER    which of these pumps meets the targets",
      "  rillwright pipes pond.yaml --line NAME --sizes \"2 in, 3 in\"   flow, power and cost of"
          + " each size",
      "  rillwright chart pond.yaml     pump curve and system curve, as a picture",
      "  rillwright section pond.yaml   levels, pipes and head line along the water's way",
      "  rillwright odds pond.yaml      the chance of each target, given what is not known exactly",
      "  rillwright balance pond.yaml   how to set the valves so that falls share one pump",
      "  rillwright weak pond.yaml      likely causes of a weak fall, and what to measure next",
      "  rillwright asbuilt pond.yaml   what the readings at start-up say of what was not known",
      "  rillwright mend pond.yaml      what would give every fall its target, and for how much",
      "  rillwright stream pond.yaml    stream depths, pond level while running, days to refill",
      "  rillwright sheet pond.yaml --to job.html    the job sheet, to print or open on a phone",
      "  rillwright solve --help        help with one command",
      "  rillwright help                how files are written, by topic",
      "",
      "Exit status: 0 done, 1 a target is missed (with --strict), 2 the input is wrong,",
      "3 the network has no balanced state, 70 a defect in the program."
    },
    versionProvider = Version.class)
public final class Rillwright implements Runnable {
  /** The commands, in the order of the help text: one line each. */
  private static Map<String, Class<?>> commands() {
    Map<String, Class<?>> commands = new LinkedHashMap<>();
    commands.put("new", NewCommand.class);
    commands.put("page", PageCommand.class);
    commands.put("check", CheckCommand.class);
    commands.put("solve", SolveCommand.class);
    commands.put("mend", MendCommand.class);
    commands.put("duty", DutyCommand.class);
    commands.put("chart", ChartCommand.class);
    commands.put("section", SectionCommand.class);
    commands.put("pump", PumpCommand.class);
    commands.put("pumps", PumpsCommand.class);
    commands.put("pipes", PipesCommand.class);
    commands.put("odds", OddsCommand.class);
    commands.put("balance", BalanceCommand.class);
    commands.put("weak", WeakCommand.class);
    commands.put("asbuilt", AsbuiltCommand.class);
    commands.put("weak-trial", WeakTrialCommand.class);
    commands.put("stream", StreamCommand.class);
    commands.put("compare", CompareCommand.class);
    commands.put("sheet", SheetCommand.class);
    commands.put("catalogue", CatalogueCommand.class);
    commands.put("help", HelpCommand.class);
    return commands;
  }

  @Spec private CommandSpec spec;

  @Option(names = "--version", versionHelp = true, description = "Shows the version and exits.")
  @SuppressWarnings("UnusedVariable") // set and read by picocli
  private boolean version;

  @Mixin
  @SuppressWarnings("UnusedVariable") // set and read by picocli
  private StandardOptions standard;

  /**
   * The command line with the one command that stands first among the arguments; with all of them
   * where no command does.
   */
  public static CommandLine withCommandsFor(String[] arguments) {
    Class<?> asked = arguments.length == 0 ? null : commands().get(arguments[0]);
    boolean one = asked != null && asked != HelpCommand.class;
    Collection<Class<?>> needed = one ? List.of(asked) : commands().values();
    CommandLine commandLine = new CommandLine(new Rillwright());
    for (Class<?> command : needed) { // a method reference keeps picocli out of the archive
      commandLine.addSubcommand(command);
    }
    return commandLine;
  }

  /** Whether there is such a command. */
  static boolean has(String command) {
    return commands().containsKey(command);
  }

  /** Without a command. */
  @Override
  public void run() {
    throw new CommandLine.ParameterException(
        spec.commandLine(), "missing command; choose one of " + String.join(", ", listShown(spec)));
  }

  /** Names of the commands that the help text shows. */
  public static List<String> listShown(CommandSpec program) {
    return program.subcommands().entrySet().stream()
        .filter(command -> !command.getValue().getCommandSpec().usageMessage().hidden())
        .map(Map.Entry::getKey)
        .toList();
  }
}
