package rillwright.cli.file.stream;

import java.util.List;
import java.util.Optional;
import rillwright.cli.catalogue.Bed;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Ledger;
import rillwright.cli.file.point.Crest;
import rillwright.cli.file.point.CrestReader;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;
import rillwright.solver.law.channel.BedLaw;
import rillwright.solver.law.channel.ChannelSection;
import rillwright.solver.law.channel.Manning;
import rillwright.solver.law.channel.StoneBed;
import rillwright.solver.stream.Gravel;
import rillwright.solver.stream.Pool;
import rillwright.solver.stream.Reach;
import rillwright.solver.stream.Reach.Band;
import rillwright.solver.stream.Step;
import rillwright.solver.stream.StreamItem;

/** Reads reaches, steps and pools. */
final class StreamItemReader {
  private static final List<String> REACH =
      List.of("length", "drop", "width", "bank", "bed", "gravel", "liner edge");
  private static final List<String> STEP = List.of("height", "width", "lip", "weir");
  private static final List<String> POOL = List.of("area", "depth", "crest width", "lip", "weir");

  private static final Range BANK =
      Range.between(0, 20, "must be 0 to 20: run over rise, 0 a wall, 1 is 45 degrees");

  private static final Range MANNING_N =
      Range.between(
          0.005,
          0.5,
          "must be 0.005 to 0.5; usual are 0.012 for bare liner, 0.03 for a clean bed, 0.04 for"
              + " gravel and cobbles, 0.05 with large boulders");

  private static final Range STONE = Range.between(0.001, 1, "must be 1 mm to 1 m");

  private static final Range VOIDS =
      new Range(0, false, Math.nextDown(1.0), "must be above 0 % and below 100 %");

  private final Catalogue catalogue;
  private final Ledger ledger;
  private final CrestReader crests;

  StreamItemReader(Catalogue catalogue, Ledger ledger) {
    this.catalogue = catalogue;
    this.ledger = ledger;
    this.crests = new CrestReader(catalogue);
  }

  /** What a list's item is; empty, with the fault noted, if it is nothing of the kind. */
  Optional<StreamItem> read(Node item, String what) {
    if (!(item instanceof MapNode map)) {
      ledger.fault(item.place(), what + ": expected fields, found " + item.words());
      return Optional.empty();
    }
    boolean isStep = map.find("step").isPresent();
    boolean isPool = map.find("pool").isPresent();
    boolean isReach = map.keys().stream().anyMatch(REACH::contains);
    if (isStep ? isPool || isReach : isPool && isReach) {
      ledger.fault(
          map.place(),
          what + ": a row says one thing: a step, a pool or a reach; give each a row of its own");
      return Optional.empty();
    }
    if (isStep) {
      return Fields.of(map, what, ledger, List.of("step"))
          .findFields("step", STEP, "{height: 1.4 ft, width: 30 in}")
          .map(this::step);
    }
    if (isPool) {
      return Fields.of(map, what, ledger, List.of("pool"))
          .findFields("pool", POOL, "{area: 18 ft2, depth: 14 in, crest width: 24 in}")
          .map(this::pool);
    }
    return Optional.of(reach(Fields.of(map, what, ledger, REACH)));
  }

  private StreamItem step(Fields step) {
    double height = step.require("height", Measure.LENGTH, Range.POSITIVE, "1.5 ft");
    Crest crest = crests.read(step, "width");
    return new Step(height, crest.widthM() > 0 ? crest.widthM() : 1);
  }

  private StreamItem pool(Fields pool) {
    double area = pool.require("area", Measure.AREA, Range.POSITIVE, "18 ft2");
    double depth = pool.require("depth", Measure.SMALL_LENGTH, Range.POSITIVE, "14 in");
    Crest crest = crests.read(pool, "crest width");
    return new Pool(area, depth, crest.weir(), crest.depthBand());
  }

  private StreamItem reach(Fields reach) {
    double length = reach.require("length", Measure.LENGTH, Range.POSITIVE, "44 ft");
    double drop = reach.require("drop", Measure.LENGTH, Range.NOT_NEGATIVE, "2.3 ft");
    double width = reach.require("width", Measure.SMALL_LENGTH, Range.NOT_NEGATIVE, "24 in");
    double bank = reach.findOr("bank", Measure.BANK, BANK, 0);
    boolean nothing = width + bank == 0;
    if (nothing && reach.areSound()) {
      reach.fault("width", "a bed without width is a vee and needs banks, for example \"bank: 3\"");
    }
    if (reach.areSound() && drop >= length) {
      reach.fault(
          "drop", "it falls as much as it is long, which is a step: write {step: {height, width}}");
    }
    Bedding bedding = bedding(reach);
    return new Reach(
        length,
        drop,
        new ChannelSection(nothing ? 1 : width, bank),
        bedding.law(),
        bedding.band(),
        gravel(reach),
        reach.find("liner edge", Measure.SMALL_LENGTH, Range.NOT_NEGATIVE));
  }

  private static Gravel gravel(Fields reach) {
    return reach
        .findFields("gravel", List.of("depth", "voids", "drains"), "{depth: 3 in}")
        .map(
            gravel ->
                new Gravel(
                    gravel.require("depth", Measure.SMALL_LENGTH, Range.NOT_NEGATIVE, "3 in"),
                    gravel.findOr("voids", Measure.SHARE, VOIDS, Gravel.USUAL_VOIDS),
                    gravel.findOr("drains", Measure.SHARE, Range.SHARE, Gravel.USUALLY_DRAINS)))
        .orElse(Gravel.NONE);
  }

  /** A bed's law and how far it may be off. */
  private record Bedding(BedLaw law, Band band) {
    static Bedding stones(double d84M) {
      return new Bedding(new StoneBed(d84M), Band.STONES);
    }

    static Bedding roughness(double n) {
      return new Bedding(new Manning(n), Band.GIVEN);
    }

    static Bedding of(Bed bed) {
      return bed.manningN().isPresent()
          ? new Bedding(
              new Manning(bed.normal()),
              new Band(bed.least() / bed.normal(), bed.greatest() / bed.normal()))
          : stones(bed.normal());
    }
  }

  private Bedding bedding(Fields reach) {
    Bedding standIn = Bedding.roughness(1);
    Optional<Node> bed = reach.findNode("bed");
    if (bed.isEmpty()) {
      reach.fault(
          "its bed is missing; write for example \"bed: cobble\" or \"bed: {stone: 60 mm}\"");
      return standIn;
    }
    if (bed.get() instanceof Scalar) {
      return reach.findText("bed").flatMap(name -> named(reach, name)).orElse(standIn);
    }
    return reach
        .findFields("bed", List.of("stone", "n"))
        .map(StreamItemReader::given)
        .orElse(standIn);
  }

  private Optional<Bedding> named(Fields reach, String name) {
    Optional<Bed> bed = catalogue.findBed(name);
    if (bed.isEmpty()) {
      reach.fault(
          "bed",
          PlainText.quoted(name)
              + " is not in the catalogue"
              + Choices.hint(name, catalogue.beds(), "beds"));
    }
    return bed.map(Bedding::of);
  }

  private static Bedding given(Fields given) {
    if (given.has("stone") == given.has("n") && given.areSound()) {
      given.fault("give either the size of its stones or its n");
    }
    if (given.has("stone")) {
      return Bedding.stones(given.findOr("stone", Measure.SMALL_LENGTH, STONE, 1));
    }
    return Bedding.roughness(given.findOr("n", Measure.MANNING_N, MANNING_N, 1));
  }
}
