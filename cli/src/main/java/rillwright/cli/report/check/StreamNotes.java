package rillwright.cli.report.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.cli.file.Project;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.report.units.ShownUnits;
import rillwright.curves.wording.PlainText;
import rillwright.solver.law.channel.BedLaw;
import rillwright.solver.law.channel.Manning;
import rillwright.solver.law.channel.StoneBed;
import rillwright.solver.network.Basin;
import rillwright.solver.stream.Gravel;
import rillwright.solver.stream.Pool;
import rillwright.solver.stream.Reach;
import rillwright.solver.stream.Stream;
import rillwright.solver.stream.StreamItem;
import rillwright.solver.stream.WaterLoss;

/** By what the beds of streams are computed, and what was taken where a stream is silent. */
final class StreamNotes {
  private final Project project;
  private final ShownUnits units;
  private final List<String> notes = new ArrayList<>();

  private StreamNotes(Project project, ShownUnits units) {
    this.project = project;
    this.units = units;
  }

  /** Sentences; none without streams and evaporation. */
  static List<String> in(Project project, ShownUnits units) {
    StreamNotes found = new StreamNotes(project, units);
    project.streams().streams().forEach(found::stream);
    project.streams().loss().ifPresent(found::loss);
    project.network().points(Basin.class).forEach(found::stone);
    return found.notes;
  }

  /** One sentence for all items of which the same is so. */
  private void stream(Stream stream) {
    Map<String, List<Integer>> sentences = new LinkedHashMap<>();
    List<StreamItem> items = stream.items();
    for (int i = 0; i < items.size(); i++) {
      for (String sentence : sentences(items.get(i), written(stream.name(), i))) {
        sentences.computeIfAbsent(sentence, any -> new ArrayList<>()).add(i + 1);
      }
    }
    sentences.forEach(
        (sentence, numbers) ->
            notes.add(
                "stream " + PlainText.quoted(stream.name()) + ": " + places(numbers) + sentence));
  }

  private static String places(List<Integer> numbers) {
    List<String> words = numbers.stream().map(number -> Integer.toString(number)).toList();
    return (words.size() == 1 ? "reach " : "reaches ") + String.join(", ", words) + ": ";
  }

  private List<String> sentences(StreamItem item, MapNode written) {
    List<String> sentences = new ArrayList<>();
    if (item instanceof Reach reach) {
      sentences.add(bed(reach.bed(), written));
      if (written.find("bank").isEmpty()) {
        sentences.add(
            "the banks are taken as vertical; write \"bank\", run over rise, in the file");
      }
      written.findMap("gravel").ifPresent(gravel -> gravel(gravel, sentences));
    }
    if (item instanceof Pool) {
      Optional<MapNode> pool = written.findMap("pool");
      if (pool.isPresent()
          && pool.get().find("lip").isEmpty()
          && pool.get().find("weir").isEmpty()) {
        sentences.add("the pool's crest is taken as stone; say \"lip: metal\" if it is not");
      }
    }
    return sentences;
  }

  private String bed(BedLaw law, MapNode written) {
    String name = written.findText("bed").map(bed -> " " + PlainText.quoted(bed)).orElse("");
    return "the bed" + name + " is computed by " + lawWords(law);
  }

  private String lawWords(BedLaw law) {
    if (law instanceof StoneBed stones) {
      return "the stone-size formula, D84 " + units.fineDepth(stones.d84M());
    }
    return "Manning's n of " + units.number(((Manning) law).n());
  }

  private void gravel(MapNode gravel, List<String> sentences) {
    if (gravel.find("voids").isEmpty()) {
      sentences.add(
          "of the gravel "
              + units.share(Gravel.USUAL_VOIDS)
              + " is taken as voids (common practice, no source); write \"voids\" in the file");
    }
    if (gravel.find("drains").isEmpty()) {
      sentences.add(
          "of the water in the gravel "
              + units.share(Gravel.USUALLY_DRAINS)
              + " is taken to drain when the pump stops (common practice, no source); write"
              + " \"drains\" in the file");
    }
  }

  private void loss(WaterLoss loss) {
    Optional<MapNode> written = project.tree().findMap("evaporation");
    boolean byWeather = written.flatMap(fields -> fields.find("air")).isPresent();
    boolean splash = written.flatMap(fields -> fields.find("splash")).isPresent();
    notes.add(
        "evaporation is taken from all open water, the streams' too"
            + (byWeather
                ? ": "
                    + units.fineDepth(loss.evaporationMPerDay())
                    + " a day by the weather, with the water as warm as the file says"
                : "")
            + (splash ? "" : "; nothing is taken for splash, write \"splash\" in the file"));
  }

  /** How much of a basin full of stone is water, and from what of it water evaporates. */
  private void stone(Basin basin) {
    Optional<MapNode> written =
        project.tree().findMap("points").flatMap(points -> points.findMap(basin.name().value()));
    boolean open = basin.evaporatesM2().isEmpty() && project.streams().loss().isPresent();
    written
        .flatMap(fields -> fields.find("voids"))
        .ifPresent(
            voids ->
                notes.add(
                    PlainText.quoted(basin.name().value())
                        + ": "
                        + ((Scalar) voids.value()).text()
                        + " of its volume is water, at every level"
                        + (open
                            ? ", and as much of its area evaporates; write \"evaporates\", 0 where"
                                + " it is covered"
                            : "")));
  }

  /** What the file says about an item of a stream. */
  private MapNode written(String stream, int index) {
    MapNode fields =
        project.tree().findMap("streams").flatMap(streams -> streams.findMap(stream)).orElseThrow();
    return (MapNode) fields.listItems("reaches").get(index);
  }
}
