package rillwright.cli.file.stream;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Ledger;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.PointName;

/** Reads how large the boxes behind falls are. */
public final class BoxesReader {
  private BoxesReader() {}

  /** Water surface of the box of each fall that says it, m². */
  public static Map<PointName, Double> read(Fields root, Ledger ledger) {
    Map<PointName, Double> areas = new LinkedHashMap<>();
    for (Entry entry : root.findMap("points").map(MapNode::entries).orElse(List.of())) {
      if (entry.value() instanceof MapNode map && map.find("box area").isPresent()) {
        String what = "point " + PlainText.quoted(entry.key());
        OptionalDouble area =
            Fields.of(map, what, ledger, map.keys()).find("box area", Measure.AREA, Range.POSITIVE);
        area.ifPresent(a -> areas.put(new PointName(entry.key()), a));
      }
    }
    return areas;
  }
}
