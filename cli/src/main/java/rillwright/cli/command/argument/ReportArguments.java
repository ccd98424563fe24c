package rillwright.cli.command.argument;

import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Option;
import rillwright.cli.report.page.Page;
import rillwright.curves.chart.content.Chart;

/** In which form a command answers, and the answer's way to standard output or a file. */
public class ReportArguments extends Destination {
  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      converter = Format.OfAnswers.class,
      description =
          "Output format: text (default), html or json (defaults of a file that ends in .html or"
              + " .json).")
  private Optional<Format> given = Optional.empty();

  /** Whether another form than text is asked for. */
  public final boolean asksForAForm() {
    return format() != Format.TEXT;
  }

  /** Hands over the answer in the form asked for. */
  public final void print(Supplier<String> json, Supplier<Page> page) {
    print(json, page, Optional::empty);
  }

  /**
   * Hands over the answer in the form asked for.
   *
   * @param json the answer for a program
   * @param page the answer for people
   * @param picture what a form that can show one shows beside it, if there is something to draw
   */
  public void print(
      Supplier<String> json, Supplier<Page> page, Supplier<Optional<? extends Chart>> picture) {
    Format format = format();
    if (format == Format.JSON) {
      print(json.get());
    } else {
      Page answer = page.get();
      print(
          format == Format.HTML ? picture.get().map(answer::with).orElse(answer) : answer, format);
    }
  }

  private Format format() {
    return given.orElseGet(
        () -> to().map(file -> Format.ofFile(file, Format.TEXT)).orElse(Format.TEXT));
  }
}
