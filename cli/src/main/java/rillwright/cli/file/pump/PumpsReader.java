package rillwright.cli.file.pump;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Ledger;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Scalar;
import rillwright.curves.sheet.DataSheet;
import rillwright.curves.wording.PlainText;

/** Reads the section {@code pumps}. */
public final class PumpsReader {
  /** What stands in a line where no pump is decided yet. */
  public static final String TO_BE_CHOSEN = "to be chosen";

  private final SheetSource source;
  private final double densityKgPerM3;
  private final InlineSheet inline;
  private final Ledger ledger;

  /**
   * A reader.
   *
   * @param source where sheets in files of their own are found
   * @param densityKgPerM3 of the water
   */
  public PumpsReader(SheetSource source, double densityKgPerM3, Ledger ledger) {
    this.source = source;
    this.densityKgPerM3 = densityKgPerM3;
    this.inline = new InlineSheet(Measure.headIn(densityKgPerM3));
    this.ledger = ledger;
  }

  /** The pumps of a project; none without the section. */
  public PumpTable read(Fields root) {
    List<String> names = new ArrayList<>();
    Map<String, DataSheet> sheets = new LinkedHashMap<>();
    for (Entry entry : root.findMap("pumps").map(MapNode::entries).orElse(List.of())) {
      names.add(entry.key());
      String what = "pump " + PlainText.quoted(entry.key());
      if (entry.key().equals(TO_BE_CHOSEN) || entry.key().isBlank()) {
        ledger.fault(entry.keyPlace(), what + ": give the pump another name");
      }
      Optional<DataSheet> sheet = sheet(entry, what);
      sheet.ifPresent(read -> sheets.put(entry.key(), read));
      if (sheet.filter(DataSheet::reordered).isPresent()) {
        ledger.note(what + ": its points are not in order of flow; they are read in that order.");
      }
    }
    return new PumpTable(names, sheets);
  }

  private Optional<DataSheet> sheet(Entry entry, String what) {
    if (entry.value() instanceof MapNode map) {
      return inline.read(entry.key(), Fields.of(map, what, ledger, InlineSheet.FIELDS));
    }
    if (entry.value() instanceof Scalar path && !path.isNothing()) {
      return fromFile(path, what);
    }
    ledger.fault(
        entry.value().place(),
        what
            + ": expected the path of its data sheet or {points: [...]}, found "
            + entry.value().words());
    return Optional.empty();
  }

  private Optional<DataSheet> fromFile(Scalar path, String what) {
    try {
      DataSheet sheet = source.read(path.text(), densityKgPerM3);
      if (!sheet.passedOver().isEmpty()) {
        ledger.note(
            what
                + ": only flow, head and power are read from its data sheet; passed over: "
                + PlainText.quoted(String.join(", ", sheet.passedOver()))
                + ".");
      }
      return Optional.of(sheet);
    } catch (InvalidInput e) {
      for (Fault fault : e.faults()) {
        if (fault.line() == 0) {
          ledger.fault(path.place(), what + ": " + fault.file() + ": " + fault.message());
        } else {
          ledger.faults().add(fault);
        }
      }
      return Optional.empty();
    }
  }
}
