package rillwright.cli.command.jobsheet;

import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Option;
import rillwright.cli.command.argument.Destination;
import rillwright.cli.command.argument.Format;
import rillwright.cli.output.OutputFile;
import rillwright.cli.report.page.Page;

/** In which form a sheet is written: by the ending of its file, unless the format is given. */
final class SheetArguments extends Destination {
  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      converter = Format.OfAnswers.class,
      description =
          "Output format: html (default of a file), text (default without --to) or json (default"
              + " of a file that ends in .json).")
  private Optional<Format> format = Optional.empty();

  /** Hands over the sheet in its form. */
  public void print(Supplier<String> json, Supplier<Page> page) {
    Format form = format.orElseGet(this::usual);
    if (form == Format.JSON) {
      print(json.get());
    } else {
      print(page.get(), form);
    }
  }

  /** Says that another file is written too, unless that would stand in a program's answer. */
  public void alsoWritten(OutputFile file) {
    if (to().isPresent() || format.orElseGet(this::usual) == Format.TEXT) {
      written(file);
    }
  }

  private Format usual() {
    return to().map(file -> Format.ofFile(file, Format.HTML)).orElse(Format.TEXT);
  }
}
