package rillwright.cli.file.outline;

import java.util.List;
import java.util.Optional;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Ledger;
import rillwright.cli.file.point.PointTable;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.wording.Choices;
import rillwright.cli.wording.PlainText;

/** Checks the section {@code streams}. */
public final class StreamOutline {
  private static final List<String> REACH =
      List.of("length", "drop", "width", "bank", "bed", "gravel", "liner edge");
  private static final List<String> STEP = List.of("height", "width", "lip", "weir");
  private static final List<String> POOL = List.of("area", "depth", "crest width", "lip", "weir");

  private final PointTable points;
  private final Catalogue catalogue;
  private final Ledger ledger;

  /** A check against the file's points and the catalogue's beds. */
  public StreamOutline(PointTable points, Catalogue catalogue, Ledger ledger) {
    this.points = points;
    this.catalogue = catalogue;
    this.ledger = ledger;
  }

  /** Notes what is wrong with the streams of a project. */
  public void check(Fields root) {
    for (Entry entry : root.findMap("streams").map(MapNode::entries).orElse(List.of())) {
      String what = "stream " + PlainText.quoted(entry.key());
      if (entry.value() instanceof MapNode map) {
        stream(Fields.of(map, what, ledger, List.of("from", "to", "reaches")));
      } else {
        ledger.fault(
            entry.value().place(),
            what + ": fields belong here (from, to, reaches), not " + entry.value().words());
      }
    }
  }

  private void stream(Fields stream) {
    PointNames.require(stream, "from", points);
    PointNames.require(stream, "to", points);
    List<Node> items = stream.listItems("reaches");
    if (items.isEmpty() && stream.areSound()) {
      stream.fault("reaches", "a list of reaches, steps and pools belongs here");
    }
    int number = 0;
    for (Node item : items) {
      number++;
      String what = stream.what() + ": reach " + number;
      if (item instanceof MapNode map) {
        reach(map, what);
      } else {
        ledger.fault(item.place(), what + ": fields belong here, not " + item.words());
      }
    }
  }

  private void reach(MapNode map, String what) {
    if (map.find("step").isPresent()) {
      Fields.of(map, what, ledger, List.of("step")).findFields("step", STEP).ifPresent(this::step);
    } else if (map.find("pool").isPresent()) {
      Fields.of(map, what, ledger, List.of("pool")).findFields("pool", POOL).ifPresent(this::pool);
    } else {
      openReach(Fields.of(map, what, ledger, REACH));
    }
  }

  private void step(Fields step) {
    step.require("height", Measure.LENGTH, Range.POSITIVE, "1.5 ft");
    step.require("width", Measure.LENGTH, Range.POSITIVE, "24 in");
    lip(step);
  }

  private void pool(Fields pool) {
    pool.require("area", Measure.AREA, Range.POSITIVE, "18 ft2");
    pool.require("depth", Measure.LENGTH, Range.POSITIVE, "14 in");
    pool.require("crest width", Measure.LENGTH, Range.POSITIVE, "24 in");
    lip(pool);
  }

  private void lip(Fields fields) {
    fields.findWord("lip", catalogue.lips());
    fields.findMap("weir");
  }

  private void openReach(Fields reach) {
    reach.require("length", Measure.LENGTH, Range.POSITIVE, "44 ft");
    reach.require("drop", Measure.LENGTH, Range.NOT_NEGATIVE, "2.3 ft");
    reach.require("width", Measure.LENGTH, Range.POSITIVE, "24 in");
    reach.find("bank", Measure.NUMBER, Range.NOT_NEGATIVE);
    reach.find("liner edge", Measure.LENGTH, Range.NOT_NEGATIVE);
    bed(reach);
    reach
        .findFields("gravel", List.of("depth", "voids", "drains"))
        .ifPresent(
            gravel -> {
              gravel.require("depth", Measure.LENGTH, Range.NOT_NEGATIVE, "3 in");
              gravel.find("voids", Measure.SHARE, Range.SHARE);
              gravel.find("drains", Measure.SHARE, Range.SHARE);
            });
  }

  private void bed(Fields reach) {
    Optional<Node> bed = reach.findNode("bed");
    if (bed.isPresent() && bed.get() instanceof Scalar) {
      Optional<String> name = reach.findText("bed");
      if (name.isPresent() && catalogue.findBed(name.get()).isEmpty()) {
        reach.fault(
            "bed",
            PlainText.quoted(name.get())
                + " is not in the catalogue"
                + Choices.hint(name.get(), catalogue.beds()));
      }
      return;
    }
    if (bed.isEmpty()) {
      reach.fault(
          "its bed is missing; write for example \"bed: cobble\" or \"bed: {stone: 60 mm}\"");
      return;
    }
    reach
        .findFields("bed", List.of("stone", "n"))
        .ifPresent(
            given -> {
              if (given.has("stone") == given.has("n")) {
                given.fault("give either the size of its stones or its n");
              }
              given.find("stone", Measure.LENGTH, Range.POSITIVE);
              given.find("n", Measure.NUMBER, Range.POSITIVE);
            });
  }
}
