package rillwright.cli.file.size;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.PipeSize;
import rillwright.cli.file.Project;
import rillwright.cli.file.change.Address;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.field.Limits;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.NotAQuantity;
import rillwright.cli.file.quantity.QuantityReader;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Run;
import rillwright.solver.study.pipechoice.PipeOption.Size;

/**
 * The sizes that a line can have: catalogue sizes of its material where its pipe, or else its runs,
 * name one; inside diameters where its pipe is given by that.
 */
public final class LineSizes {
  private final Project project;
  private final LineName line;
  private final Optional<Node> pipe;

  /**
   * The sizes of a line.
   *
   * @throws InvalidInput if no line has that name
   */
  public LineSizes(Project project, String name) {
    List<String> names =
        project.network().lines().stream().map(known -> known.name().value()).toList();
    if (!names.contains(name)) {
      throw new InvalidInput(
          project.places().whole(),
          "there is no line " + PlainText.quoted(name) + Choices.hint(name, names));
    }
    this.project = project;
    this.line = new LineName(name);
    this.pipe = lineNode().flatMap(node -> find(node, "pipe"));
  }

  private Optional<Node> lineNode() {
    return find(project.tree(), "lines").flatMap(lines -> find(lines, line.value()));
  }

  /**
   * One size.
   *
   * @param written on the command line
   * @throws InvalidInput if the line cannot have it
   */
  public SizeOption read(String written, Place place) {
    Optional<String> material = pipe.flatMap(node -> node.findText("material"));
    if (material.isPresent()) {
      return catalogued(material.get(), written, place, List.of("pipe"));
    }
    if (pipe.flatMap(node -> node.findText("inside")).isPresent()) {
      return option(
          new Size(written, length(written, place)), List.of(change("pipe", "inside", written)));
    }
    List<String> runs = new ArrayList<>();
    Optional<String> ofRuns = Optional.empty();
    int count = 0;
    for (Node item : lineNode().map(LineSizes::items).orElse(List.of())) {
      Optional<Node> run = find(item, "run");
      count += run.isPresent() ? 1 : 0;
      if (run.flatMap(node -> node.findText("size")).isPresent()) {
        runs.add("run " + count);
        ofRuns = ofRuns.or(() -> run.flatMap(node -> node.findText("material")));
      }
    }
    if (ofRuns.isPresent()) {
      return catalogued(ofRuns.get(), written, place, runs);
    }
    throw new InvalidInput(
        project.places().ofLine(line),
        "line "
            + PlainText.quoted(line.value())
            + ": its pipe names no material, so a size has no meaning; write for example \"pipe:"
            + " {material: flexible PVC, size: 2 in}\"");
  }

  /**
   * The next sizes up by bore, in the same material and sold by the same measure; none where the
   * line's pipe is given by its inside diameter.
   *
   * @param most how many
   */
  public List<SizeOption> larger(int most) {
    Optional<PipeSize> now = widest();
    if (now.isEmpty()) {
      return List.of();
    }
    Catalogue catalogue = Catalogue.standard();
    String material = now.get().material();
    return catalogue.sizesOf(material).stream()
        .map(size -> catalogue.findPipe(material, size).orElseThrow())
        .filter(pipe -> pipe.isMetric() == now.get().isMetric())
        .filter(pipe -> pipe.insideM() > now.get().insideM())
        .sorted(Comparator.comparingDouble(PipeSize::insideM))
        .limit(most)
        .map(pipe -> read(pipe.size(), Place.whole(pipe.size())))
        .toList();
  }

  private Optional<PipeSize> widest() {
    return project.network().line(line).placed(Run.class).stream()
        .map(run -> Catalogue.standard().findPipeOfLabel(run.part().label()))
        .flatMap(Optional::stream)
        .max(Comparator.comparingDouble(PipeSize::insideM));
  }

  private SizeOption catalogued(String material, String written, Place place, List<String> steps) {
    Catalogue catalogue = Catalogue.standard();
    PipeSize found =
        catalogue
            .findPipe(material, written)
            .orElseThrow(
                () ->
                    new InvalidInput(
                        place,
                        PlainText.quoted(written)
                            + " is not a size of "
                            + PlainText.harmless(material)
                            + ", the material of line "
                            + PlainText.quoted(line.value())
                            + Choices.hint(
                                written,
                                catalogue.sizesOf(material),
                                catalogue.sizesAround(material, written))));
    return option(
        new Size(found.size(), found.insideM()),
        steps.stream().map(step -> change(step, "size", found.size())).toList());
  }

  private SizeOption option(Size size, List<String> changes) {
    return new SizeOption(Map.of(line, size), changes);
  }

  private static double length(String written, Place place) {
    try {
      return QuantityReader.read(written, Measure.SMALL_LENGTH, Limits.BORE).middle();
    } catch (NotAQuantity e) {
      throw new InvalidInput(place, "an inside diameter: " + e.getMessage());
    }
  }

  private String change(String step, String field, String value) {
    return new Address(List.of("lines", line.value(), step, field)).text() + "=" + value;
  }

  private static List<Node> items(Node lineNode) {
    return lineNode instanceof MapNode map ? map.listItems("parts") : List.of();
  }

  private static Optional<Node> find(Node node, String key) {
    return node instanceof MapNode map ? map.findNode(key) : Optional.empty();
  }
}
