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
import rillwright.solver.stream.FallBox;

/** Reads how large the boxes of falls are. */
public final class BoxesReader {
  private static final String DEPTH = "box depth";

  private BoxesReader() {}

  /** The box of each fall that says its water surface. */
  public static Map<PointName, FallBox> read(Fields root, Ledger ledger) {
    Map<PointName, FallBox> boxes = new LinkedHashMap<>();
    for (Entry entry : root.findMap("points").map(MapNode::entries).orElse(List.of())) {
      if (entry.value() instanceof MapNode map
          && (map.find("box area").isPresent() || map.find(DEPTH).isPresent())) {
        String what = "point " + PlainText.quoted(entry.key());
        Fields fall = Fields.of(map, what, ledger, map.keys());
        OptionalDouble area = fall.find("box area", Measure.AREA, Range.POSITIVE);
        double depth = fall.findOr(DEPTH, Measure.SMALL_LENGTH, Range.NOT_NEGATIVE, 0);
        if (area.isEmpty() && fall.areSound()) {
          fall.fault(DEPTH, "what a box holds needs its \"box area\" too");
        }
        if (area.isPresent() && fall.areSound()) {
          ledger.note(
              what
                  + ": the box at its crest has "
                  + fall.findText("box area").orElse("")
                  + " of water, "
                  + fall.findText(DEPTH)
                      .map(text -> text + " deep below the crest")
                      .orElse(
                          "and no depth below the crest is counted; write \"box depth\" in the"
                              + " file"));
        }
        area.ifPresent(a -> boxes.put(new PointName(entry.key()), new FallBox(a, depth)));
      }
    }
    return boxes;
  }
}
