package rillwright.cli.command.page;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rillwright.cli.command.argument.StandardOptions;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.command.output.NoAnswer;
import rillwright.cli.output.NewFile;
import rillwright.cli.page.Pages;
import rillwright.cli.page.web.WebServer;

/** The project as a live page in the browser of this machine. */
@Command(
    name = "page",
    description = {
      "Opens the project as a live page in this machine's browser.",
      "Drag a pipe size, a valve or a pump's speed and see the falls follow; touch the drawing to",
      "change what is built; save when done. The page answers on this machine only, at an",
      "address drawn at random, until this command is ended (Ctrl-C)."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright page pond.yaml",
      "  rillwright page                 a new job, by a form",
      "  rillwright page pond.yaml --print-address    prints the address, opens no browser",
      "",
      "Unsaved changes are kept in a draft beside the file (pond.yaml.draft) and offered again."
          + " Saving",
      "keeps the version before beside it (pond.yaml.previous)."
    })
public final class PageCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FILE",
      arity = "0..1",
      description =
          "The project file, YAML or JSON. Without it, or where it is not there yet, the page asks"
              + " about a new job and writes it.")
  private Optional<Path> file = Optional.empty();

  @Option(
      names = "--print-address",
      description = "Prints the page's address on the first line and opens no browser.")
  private boolean printAddress;

  @Mixin
  @SuppressWarnings("UnusedVariable") // read by picocli
  private StandardOptions standard;

  @Override
  public Integer call() throws InterruptedException {
    PrintWriter out = spec.commandLine().getOut();
    PrintWriter err = spec.commandLine().getErr();
    Consumer<RuntimeException> defects =
        defect -> {
          defect.printStackTrace(err);
          err.flush();
        };
    Pages answers = Pages.of(file, Path.of("").toAbsolutePath(), defects);
    file.filter(it -> !Files.exists(it)).ifPresent(it -> new NewFile(it).check());
    try (WebServer server = WebServer.open(answers, defects)) {
      out.println(server.address());
      out.flush();
      if (!printAddress) {
        out.println("Open this address in a browser of this machine. Ctrl-C ends the page.");
        out.flush();
        BrowserOpening.open(server.address());
      }
      new CountDownLatch(1).await();
    } catch (IOException e) {
      throw new NoAnswer("the page cannot be served: this machine gives no port");
    }
    return ExitStatus.DONE;
  }
}
