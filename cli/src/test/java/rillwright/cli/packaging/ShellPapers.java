package rillwright.cli.packaging;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.regex.Pattern;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.codegen.docgen.manpage.ManPageGenerator;
import rillwright.cli.Main;

/**
 * Writes completions for bash, zsh and fish, and the sources of the manual pages, all made from the
 * commands. The build of packages runs it.
 */
public final class ShellPapers {
  private ShellPapers() {}

  /**
   * Writes them.
   *
   * @param arguments the folder, then the folder of the manual pages' sources, then the version
   *     that they are of
   */
  public static void main(String[] arguments) throws IOException {
    CommandLine program = Main.commandLine();
    program.getCommandSpec().versionProvider(null).version("rillwright " + arguments[2]);
    Path folder = Files.createDirectories(Path.of(arguments[0]));
    String bash = asTheyAreTyped(AutoComplete.bash(program.getCommandName(), program));
    write(folder.resolve("rillwright.bash"), bash);
    write(
        folder.resolve("_rillwright"),
        "#compdef rillwright\nautoload -U +X bashcompinit && bashcompinit\n"
            + "(( $+functions[compopt] )) || compopt() { : } # bash has it, zsh does not\n"
            + bash);
    write(folder.resolve("rillwright.fish"), FishCompletion.of(program.getCommandSpec()));
    Path manual = Files.createDirectories(Path.of(arguments[1]));
    ManPageGenerator.generateManPage(
        manual.toFile(), null, new boolean[0], true, program.getCommandSpec());
  }

  /** The words that an option takes in small letters, as the program does. */
  private static String asTheyAreTyped(String bash) {
    return Pattern.compile("_option_args=\\(.*\\)")
        .matcher(bash)
        .replaceAll(words -> words.group().toLowerCase(Locale.ROOT));
  }

  private static void write(Path file, String text) throws IOException {
    Files.writeString(file, text, StandardCharsets.UTF_8);
  }
}
