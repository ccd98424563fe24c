package rillwright.cli.command.argument;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import rillwright.cli.output.InputFiles;
import rillwright.cli.output.OutputFile;
import rillwright.cli.report.page.Page;
import rillwright.cli.report.page.html.HtmlPage;
import rillwright.cli.report.page.terminal.Screen;
import rillwright.cli.report.page.terminal.TerminalPage;
import rillwright.curves.wording.PlainText;

/** Where an answer goes: standard output, or a file where a kind of it names one. */
abstract class Output {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  @Mixin private StandardOptions standard;

  /** The file to which the answer goes, if it is not standard output. */
  abstract Optional<Path> answerTo();

  /**
   * Refuses what cannot or must not be written, before anything is computed.
   *
   * @param inputs what must not be written over
   */
  public void check(InputFiles inputs) {
    file().ifPresent(file -> file.check(inputs));
    answerTo().ifPresent(Format::requireWritten);
  }

  private Optional<OutputFile> file() {
    return answerTo().map(path -> new OutputFile(path, "answer"));
  }

  /** Hands over a page, as HTML or as text. */
  public final void print(Page page, Format format) {
    Screen screen = answerTo().isPresent() ? Screen.PAPER : standard.screen(command);
    print(
        format == Format.HTML ? HtmlPage.of(page, command.name()) : TerminalPage.of(page, screen));
  }

  /** Hands over an answer. */
  public final void print(String answer) {
    PrintWriter out = command.commandLine().getOut();
    file()
        .ifPresentOrElse(
            file -> {
              file.write(answer.getBytes(StandardCharsets.UTF_8));
              written(file);
            },
            () -> out.print(answer));
    out.flush();
  }

  /** Says that a file is written. */
  public final void written(OutputFile file) {
    PrintWriter out = command.commandLine().getOut();
    out.println("Written: " + PlainText.harmless(file.path().toString()));
    out.flush();
  }
}
