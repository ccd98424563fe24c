package rillwright.cli.command;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rillwright.cli.command.argument.PictureArguments;
import rillwright.cli.command.argument.ProjectArguments;
import rillwright.cli.command.argument.StandardOptions;
import rillwright.cli.command.output.ExitStatus;
import rillwright.cli.command.output.PictureFile;
import rillwright.cli.file.Project;
import rillwright.cli.report.json.SectionJson;
import rillwright.cli.report.page.terminal.TerminalPage;
import rillwright.cli.report.picture.section.SectionPicture;
import rillwright.cli.report.picture.section.SectionPicture.ShutOff;
import rillwright.cli.report.picture.section.SketchPicture;
import rillwright.cli.report.text.SectionText;
import rillwright.cli.study.section.Section;
import rillwright.cli.study.section.SectionRequest;
import rillwright.curves.chart.content.Chart;

/** The long section along the water's ways, as a picture. */
@Command(
    name = "section",
    description = {
      "Draws a long section along the water's way, levels to scale.",
      "It shows pond, pump, pipes and falls at their levels, the head line while running, water at",
      "rest, and where a pipe is below atmospheric pressure. Distances are not to scale. A project",
      "without a balance is drawn as it is built, without head lines (exit status 3)."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  rillwright section pond.yaml                    writes pond-section.png beside the file",
      "  rillwright section pond.yaml --to section.svg --shut-off",
      "  rillwright section pond.yaml --sketch --to network.png",
      "  rillwright section pond.yaml --condition autumn --to autumn.png",
      "  rillwright section pond.yaml --format json      elevations and heads, for programs"
    })
public final class SectionCommand implements Callable<Integer> {
  @Mixin private ProjectArguments project;

  @Option(
      names = "--condition",
      paramLabel = "NAME",
      description = "Draws the project in this condition of the file, or a usual one.")
  private Optional<String> condition = Optional.empty();

  @Option(
      names = "--shut-off",
      description = "Draws the head against a shut valve too, with the pipes' pressure ratings.")
  private boolean shutOff;

  @Option(
      names = "--sketch",
      description =
          "Draws a sketch of the network instead: points at their heights, lines with size, length"
              + " and flow. A file that gives no elevations but those of open water is always drawn"
              + " so.")
  private boolean sketch;

  @Mixin private PictureArguments picture;

  @Mixin private StandardOptions standard;

  @Spec private CommandSpec spec;

  @Override
  public Integer call() {
    Project read = project.read();
    Optional<PictureFile> file = picture.check(project.file(), "-section", project.inputs(read));
    Section section = project.ask(new SectionRequest(condition), read);
    picture.print(
        file,
        () -> chart(section),
        () -> SectionJson.of(section),
        () -> TerminalPage.of(SectionText.of(section), standard.screen(spec)));
    return section.noBalance().isPresent() ? ExitStatus.NO_BALANCE : ExitStatus.DONE;
  }

  private Chart chart(Section section) {
    return sketch || !section.hasElevations()
        ? SketchPicture.of(section)
        : SectionPicture.of(section, shutOff ? ShutOff.SHOWN : ShutOff.LEFT_OUT);
  }
}
