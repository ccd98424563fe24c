package rillwright.cli.command;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.page.CsvPage;
import rillwright.cli.catalogue.page.JsonPage;
import rillwright.cli.catalogue.page.Selection;
import rillwright.cli.catalogue.page.Suggestion;
import rillwright.cli.catalogue.page.TablePage;
import rillwright.cli.command.argument.Destination;
import rillwright.cli.command.argument.Format;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.output.InputFiles;

/** What pipe sizes, fittings, valves, lips and beds the program knows, with sources. */
@Command(
    name = "catalogue",
    description = {
      "Lists the pipe sizes, fittings, valves, lips and beds that a project file may name.",
      "Each entry has its numbers and their source."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright catalogue                            everything",
      "  rillwright catalogue pipes                      one section",
      "  rillwright catalogue pipes flexible PVC         the sizes of a material",
      "  rillwright catalogue elbow                      every entry with this name",
      "  rillwright catalogue beds --format json         for programs, in SI units",
      "",
      "A project file can override any of these numbers: k: on a fitting or valve,",
      "inside: and roughness: on a pipe. \"k: catalogue\" and \"roughness: catalogue\" stand",
      "for the range: odds draws from it. They are for computing flow; what pressure",
      "a pipe may carry and where it may be laid is for its maker and the local code to say."
    })
public final class CatalogueCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "WHAT",
      description =
          "A section (pipes, fittings, ends, valves, check valves, devices, skimmers, lips, beds),"
              + " a name, or a section and a name.")
  private List<String> words = List.of();

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      converter = Format.OfTables.class,
      description = "Output format: text (default), html, json (SI), or csv (SI, one section).")
  private Format format = Format.TEXT;

  @Mixin private Destination destination;

  @Override
  public Integer call() {
    destination.check(new InputFiles(List.of()));
    Selection selection = selection(Catalogue.standard());
    switch (format) {
      case JSON -> destination.print(JsonPage.of(selection));
      case CSV -> destination.print(csv(selection));
      default -> destination.print(TablePage.of(selection), format);
    }
    return ExitStatus.DONE;
  }

  private Selection selection(Catalogue catalogue) {
    if (words.isEmpty()) {
      return Selection.all(catalogue);
    }
    String asked = String.join(" ", words);
    return Selection.find(asked, catalogue)
        .orElseThrow(() -> wrong(Suggestion.sentence(asked, catalogue)));
  }

  private String csv(Selection selection) {
    if (selection.names().size() > 1) {
      throw wrong("csv holds one table; ask for one of " + String.join(", ", selection.names()));
    }
    return CsvPage.of(selection);
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
