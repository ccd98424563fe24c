package rillwright.cli.packaging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rillwright.cli.Main;
import rillwright.cli.command.Rillwright;

class ShellPapersTest {
  @TempDir private Path folder;

  @Test
  void haveEveryCommandThatTheHelpShows() throws Exception {
    Path manual = folder.resolve("manual");
    ShellPapers.main(new String[] {folder.toString(), manual.toString(), "1.0"});
    String page = Files.readString(manual.resolve("rillwright.adoc"));
    assertTrue(page.contains(":mansource: rillwright 1.0\n"), page);
    String bash = Files.readString(folder.resolve("rillwright.bash"));
    List<String> fish = Files.readAllLines(folder.resolve("rillwright.fish"));
    for (String command : Rillwright.listShown(Main.commandLine().getCommandSpec())) {
      assertTrue(Files.exists(manual.resolve("rillwright-" + command + ".adoc")), command);
      assertTrue(bash.contains("_picocli_rillwright_" + command), command);
      assertTrue(
          fish.stream().anyMatch(it -> it.contains("-n __fish_use_subcommand -a " + command + " ")),
          command);
    }
    assertTrue(
        fish.contains(
            "complete -c rillwright -n '__fish_seen_subcommand_from balance' -l strict -d 'Ends"
                + " with exit status 1 if the falls cannot all get their target or a chamber is"
                + " drawn down to its pump\\'s intake.'"),
        fish.toString());
    assertEquals(List.of(), fish.stream().filter(it -> it.contains("weak-trial")).toList());
    assertTrue(bash.contains("_option_args=(\"crew\" \"customer\" \"lid\")"), bash);
    assertTrue(
        fish.stream().anyMatch(it -> it.contains("solve' -l format -x -a 'text html json'")),
        fish.toString());
  }
}
