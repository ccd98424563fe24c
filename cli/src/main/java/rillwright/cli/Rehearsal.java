package rillwright.cli;

import java.io.FileDescriptor;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.net.URI;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rillwright.cli.page.Pages;
import rillwright.cli.page.web.WebServer;

/**
 * Goes through the short commands on a project, solves some more and asks for the first page of the
 * live page once, unseen, so that the build can archive the classes that they need.
 *
 * @see rillwright.cli.start.QuickStart
 */
public final class Rehearsal {
  private Rehearsal() {}

  /**
   * Runs the commands on a project.
   *
   * @param arguments the project file, then those that are solved
   */
  public static void main(String[] arguments) throws IOException {
    String file = arguments[0];
    List<List<String>> commands = new ArrayList<>();
    Arrays.stream(arguments).forEach(project -> commands.add(List.of("solve", project)));
    commands.addAll(
        List.of(
            List.of("mend", file),
            List.of("solve", file, "--format", "json"),
            List.of("solve", file, "--conditions"),
            List.of("check", file),
            List.of("duty", file),
            List.of("solve", file, "--set", "title=Rehearsal"),
            List.of("solve", "no such file"),
            List.of("solve", "--help"),
            List.of("page", "--help"),
            List.of("catalogue")));
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    for (List<String> command : commands) {
      String[] words = FormerOptions.renewed(command.toArray(String[]::new));
      Main.commandLine(words).setOut(nowhere).setErr(nowhere).execute(words);
    }
    firstPage(Path.of(file));
    StandardOutput out = StandardOutput.to(FileDescriptor.out);
    out.writer().flush();
    out.trouble();
  }

  private static void firstPage(Path file) throws IOException {
    Pages pages = Pages.of(Optional.of(file), Path.of(""), defect -> {});
    try (WebServer server = WebServer.open(pages, defect -> {});
        InputStream page = URI.create(server.address()).toURL().openStream()) {
      page.readAllBytes();
    }
  }
}
