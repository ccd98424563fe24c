package rillwright.cli.command.argument;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Option;
import rillwright.cli.output.InputFiles;
import rillwright.cli.output.OutputFile;
import rillwright.cli.report.page.Page;
import rillwright.curves.chart.content.Chart;

/** In which form a command answers that writes a new project file too. */
public final class NewProjectArguments extends Output {
  @Option(
      names = "--to",
      paramLabel = "OUTPUT",
      description = "Writes a new project file with what was learnt, comments kept.")
  private Optional<Path> to = Optional.empty();

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      converter = Format.OfAnswers.class,
      description = "Output format: text (default), html or json.")
  private Format format = Format.TEXT;

  @Override
  Optional<Path> answerTo() {
    return Optional.empty();
  }

  /** The new project file. */
  public Optional<Path> project() {
    return to;
  }

  @Override
  public void check(InputFiles inputs) {
    file().ifPresent(file -> file.check(inputs));
  }

  private Optional<OutputFile> file() {
    return to.map(path -> new OutputFile(path, "new project file"));
  }

  /** Hands over the answer in the form asked for. */
  public void print(
      Supplier<String> json, Supplier<Page> page, Supplier<Optional<? extends Chart>> picture) {
    if (format == Format.JSON) {
      print(json.get());
      return;
    }
    Page answer = page.get();
    print(format == Format.HTML ? picture.get().map(answer::with).orElse(answer) : answer, format);
  }

  /** Writes the new project file, where one is asked for. */
  public void write(Supplier<String> project) {
    file()
        .ifPresent(
            file -> {
              file.write(project.get().getBytes(StandardCharsets.UTF_8));
              if (format == Format.TEXT) {
                written(file);
              }
            });
  }
}
