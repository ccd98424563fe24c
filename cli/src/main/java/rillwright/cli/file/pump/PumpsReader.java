package rillwright.cli.file.pump;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Ledger;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.wording.PlainText;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;

/** Reads the section {@code pumps}. */
public final class PumpsReader {
  /** What stands in a line where no pump is decided yet. */
  public static final String TO_BE_CHOSEN = "to be chosen";

  private static final List<String> FACTS =
      List.of(
          "maker",
          "model",
          "kind",
          "price",
          "min submergence",
          "variable speed",
          "solids",
          "source",
          "note");

  private final SheetSource source;
  private final Measure head;
  private final Ledger ledger;

  /**
   * A reader.
   *
   * @param source where sheets in files of their own are found
   * @param head how a head may be written
   */
  public PumpsReader(SheetSource source, Measure head, Ledger ledger) {
    this.source = source;
    this.head = head;
    this.ledger = ledger;
  }

  /** The pumps of a project; none without the section. */
  public PumpTable read(Fields root) {
    List<Entry> entries = root.findMap("pumps").map(MapNode::entries).orElse(List.of());
    List<String> names = new ArrayList<>();
    Map<String, PumpSheet> sheets = new LinkedHashMap<>();
    for (Entry entry : entries) {
      names.add(entry.key());
      String what = "pump " + PlainText.quoted(entry.key());
      if (entry.key().equals(TO_BE_CHOSEN) || entry.key().isBlank()) {
        ledger.fault(entry.keyPlace(), what + ": give the pump another name");
      }
      sheet(entry, what).ifPresent(sheet -> sheets.put(entry.key(), sheet));
    }
    return new PumpTable(names, sheets);
  }

  private Optional<PumpSheet> sheet(Entry entry, String what) {
    if (entry.value() instanceof MapNode map) {
      List<String> known = new ArrayList<>(List.of("points"));
      known.addAll(FACTS);
      return inline(Fields.of(map, what, ledger, known));
    }
    if (entry.value() instanceof Scalar path && !path.isNothing()) {
      try {
        return Optional.of(source.read(path.text()));
      } catch (InvalidInput e) {
        e.faults()
            .forEach(
                fault -> {
                  if (fault.line() == 0) {
                    ledger.fault(path.place(), what + ": " + fault.file() + ": " + fault.message());
                  } else {
                    ledger.faults().add(fault);
                  }
                });
        return Optional.empty();
      }
    }
    ledger.fault(
        entry.value().place(),
        what
            + ": the path of its data sheet or {points: [...]} belongs here, not "
            + entry.value().words());
    return Optional.empty();
  }

  private Optional<PumpSheet> inline(Fields fields) {
    List<PumpPoint> points = new ArrayList<>();
    List<Fields> rows = fields.listRows("points", List.of("flow", "head", "power"));
    for (Fields row : rows) {
      double flow = row.require("flow", Measure.FLOW, Range.NOT_NEGATIVE, "1000 gph");
      double headM = row.require("head", head, Range.NOT_NEGATIVE, "29.5 ft");
      OptionalDouble power = row.find("power", Measure.POWER, Range.NOT_NEGATIVE);
      boolean first = points.isEmpty();
      if (row.areSound() && !first && flow <= points.get(points.size() - 1).flowM3PerS()) {
        row.fault("flow", "each flow must be greater than the one before");
      }
      points.add(new PumpPoint(flow, headM, power));
    }
    if (rows.size() < 2 && fields.areSound()) {
      fields.fault("points", "a pump needs two points or more, each with a flow and a head");
    }
    Map<String, String> facts = new LinkedHashMap<>();
    FACTS.forEach(name -> fields.findText(name).ifPresent(text -> facts.put(name, text)));
    fields.findPrice("price", List.of());
    if (!fields.areSound()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new PumpSheet(new PumpCurve(points), facts));
    } catch (IllegalArgumentException e) {
      fields.fault("points", e.getMessage());
      return Optional.empty();
    }
  }
}
