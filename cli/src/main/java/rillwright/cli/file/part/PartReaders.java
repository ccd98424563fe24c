package rillwright.cli.file.part;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.file.pump.PumpTable;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.tree.MapNode;

/** The readers of all kinds of parts, for one file. */
public final class PartReaders {
  private final Map<String, PartReader> byKind = new LinkedHashMap<>();
  private final List<?> byWater;
  private final List<?> byWaterAndPumps;

  /**
   * The readers for one file.
   *
   * @param densityKgPerM3 of the water, by which a pressure is a head
   * @param pumps the file's pumps
   */
  public PartReaders(Catalogue catalogue, double densityKgPerM3, PumpTable pumps) {
    this.byWater = List.of(densityKgPerM3);
    this.byWaterAndPumps = List.of(densityKgPerM3, pumps);
    Measure head = Measure.headIn(densityKgPerM3);
    PipeReader pipes = new PipeReader(catalogue);
    StandingBore bores = new StandingBore(pipes);
    for (PartReader reader :
        List.of(
            new RunReader(pipes),
            new FittingReader(catalogue, bores),
            new ValveReader(catalogue, bores),
            new CheckValveReader(catalogue, bores, head),
            new SkimmerReader(),
            new FilterReader(head),
            new PumpReader(pumps, bores),
            new GaugeReader(bores),
            new HighPointReader(),
            new LossReader(bores, head))) {
      byKind.put(reader.kind(), reader);
    }
  }

  /** What the parts of a line are read by: the water, and the pumps where one may be among them. */
  public List<?> around(MapNode line) {
    boolean isBare =
        line.listItems("parts").stream()
            .allMatch(part -> part instanceof MapNode map && map.find("pump").isEmpty());
    return isBare ? byWater : byWaterAndPumps;
  }

  /** The reader of a kind; empty if there is no such kind. */
  public Optional<PartReader> find(String kind) {
    return Optional.ofNullable(byKind.get(kind));
  }

  /** How a part would be written whose type was given for its kind; empty if no type is that. */
  public Optional<String> typed(String word) {
    return byKind.values().stream()
        .flatMap(reader -> reader.typeOf(word).stream().map(reader::example))
        .findFirst();
  }

  /** The words for all kinds. */
  public List<String> kinds() {
    return List.copyOf(byKind.keySet());
  }
}
