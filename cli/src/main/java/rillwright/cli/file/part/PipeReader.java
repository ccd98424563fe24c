package rillwright.cli.file.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.Material;
import rillwright.cli.catalogue.PipeSize;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Limits;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Quantity;
import rillwright.cli.file.quantity.Range;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;
import rillwright.solver.law.Bore;
import rillwright.solver.network.Friction;
import rillwright.solver.network.PipeWall;

/** Reads what a line's {@code pipe}, or a part itself, says about bore and wall. */
public final class PipeReader {
  /** Fields that say a bore. */
  static final List<String> BORE_FIELDS = List.of("material", "size", "inside");

  /** Fields that say a bore or a wall. */
  public static final List<String> FIELDS =
      List.of("material", "size", "inside", "roughness", "hazen c", "factor", "deposit");

  private static final Range ROUGHNESS = Range.between(0, 1, "must be 0 to 1 m");
  private static final Range HAZEN_C = Range.between(1, 1000, "must be 1 to 1000");
  private static final Range FACTOR =
      new Range(0, false, 10, "must be greater than 0 and not more than 10");

  /** What to go on with after a fault was reported. */
  private static final Friction STAND_IN = new Friction.Roughness(0);

  /** Between the least and the greatest of sizes of which one is there. */
  private static final Pattern SEVERAL = Pattern.compile("\\.\\.");

  private final Catalogue catalogue;

  /** A reader. */
  public PipeReader(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  /**
   * What fields say about a pipe.
   *
   * @param materialAround the material of the pipe around, where a size is given without one
   */
  public PipeSpec read(Fields fields, Optional<String> materialAround) {
    Optional<String> material = material(fields);
    boolean misspelt = fields.has("material") && material.isEmpty();
    PipeSpec bored = bored(fields, misspelt ? material : material.or(() -> materialAround));
    Optional<Friction> friction =
        explicitFriction(fields, material.or(() -> materialAround))
            .or(() -> material.flatMap(this::catalogueFriction))
            .or(() -> misspelt ? Optional.of(STAND_IN) : Optional.empty());
    OptionalDouble deposit = fields.find("deposit", Measure.SMALL_LENGTH, Range.NOT_NEGATIVE);
    PipeSpec pipe =
        new PipeSpec(bored.clean(), friction, material, bored.label(), bored.wall(), deposit);
    requireOpen(fields, pipe);
    return pipe;
  }

  /** Notes a fault where the deposit leaves no bore. */
  static void requireOpen(Fields fields, PipeSpec pipe) {
    if (pipe.isBlocked()) {
      fields.fault(
          "deposit", "the deposit leaves no bore; it is what is missing of the inside diameter");
    }
  }

  /** The bore that fields say; empty if they say none. */
  Optional<Bore> bore(Fields fields, Optional<String> materialAround) {
    return bored(fields, material(fields).or(() -> materialAround)).bore();
  }

  private Optional<String> material(Fields fields) {
    Optional<String> material = fields.findText("material");
    if (material.isPresent() && catalogue.findMaterial(material.get()).isEmpty()) {
      fields.fault(
          "material",
          PlainText.quoted(material.get())
              + " is not in the catalogue"
              + Choices.hint(material.get(), catalogue.materials(), "pipes"));
      return Optional.empty();
    }
    return material;
  }

  /** Bore and label only. */
  private PipeSpec bored(Fields fields, Optional<String> material) {
    if (fields.has("size") && fields.has("inside")) {
      fields.fault("inside", "give either a size or an inside diameter, not both");
    }
    OptionalDouble inside = fields.find("inside", Measure.SMALL_LENGTH, Limits.BORE);
    Optional<String> size = fields.findText("size");
    if (inside.isPresent()) {
      String label = fields.findText("inside").map(text -> text + " bore").orElse("");
      return ofBore(inside.getAsDouble(), label);
    }
    if (size.isEmpty()) {
      return PipeSpec.NOTHING;
    }
    if (material.isEmpty()) {
      if (!fields.has("material")) {
        fields.fault("size", "a size needs a material, for example \"material: flexible PVC\"");
      }
      return ofBore(1, "");
    }
    return findPipe(fields, material.get(), size.get())
        .map(pipe -> ofBore(pipe.insideM(), pipe.label(), pipe.pressure()))
        .orElseGet(() -> unknownSize(fields, material.get(), size.get()));
  }

  /** The pipe of a size, or of the one that is drawn of several: {@code 1-1/2 in .. 3 in}. */
  private Optional<PipeSize> findPipe(Fields fields, String material, String size) {
    String[] ends = SEVERAL.split(size, 2);
    if (ends.length < 2) {
      return catalogue.findPipe(material, size);
    }
    Optional<PipeSize> least = catalogue.findPipe(material, ends[0].strip());
    Optional<PipeSize> greatest = catalogue.findPipe(material, ends[1].strip());
    if (least.isEmpty() || greatest.isEmpty()) {
      return Optional.empty();
    }
    List<PipeSize> between =
        catalogue.sizesOf(material).stream()
            .flatMap(name -> catalogue.findPipe(material, name).stream())
            .filter(pipe -> pipe.isMetric() == least.get().isMetric())
            .filter(
                pipe ->
                    pipe.insideM() >= least.get().insideM()
                        && pipe.insideM() <= greatest.get().insideM())
            .sorted(Comparator.comparingDouble(PipeSize::insideM))
            .toList();
    if (between.size() < 2) {
      return between.stream().findFirst();
    }
    int drawn =
        fields.oneOf(
            "size",
            new Quantity.Choice(
                between.stream().map(PipeSize::size).toList(),
                between.stream().map(PipeSize::insideM).toList()));
    return Optional.of(between.get(drawn));
  }

  private PipeSpec unknownSize(Fields fields, String material, String size) {
    fields.fault(
        "size",
        PlainText.quoted(size)
            + " is not a size of "
            + PlainText.harmless(material)
            + " in the catalogue"
            + Choices.hint(
                size, catalogue.sizesOf(material), catalogue.sizesAround(material, size)));
    return ofBore(1, "");
  }

  private static PipeSpec ofBore(double diameterM, String label) {
    return ofBore(diameterM, label, Optional.empty());
  }

  private static PipeSpec ofBore(double diameterM, String label, Optional<PipeWall> wall) {
    return new PipeSpec(
        Optional.of(new Bore(diameterM)),
        Optional.empty(),
        Optional.empty(),
        Optional.of(label),
        wall,
        OptionalDouble.empty());
  }

  private static Quantity roughness(Material material) {
    return Quantity.between(
        material.leastRoughnessM(), material.roughnessM(), material.greatestRoughnessM());
  }

  private Optional<Friction> catalogueFriction(String material) {
    return catalogue
        .findMaterial(material)
        .map(known -> new Friction.Roughness(known.roughnessM()));
  }

  private Optional<Friction> explicitFriction(Fields fields, Optional<String> material) {
    List<Friction> found = new ArrayList<>();
    fields
        .find(
            "roughness",
            Measure.FINE_LENGTH,
            ROUGHNESS,
            material.flatMap(catalogue::findMaterial).map(PipeReader::roughness))
        .ifPresent(roughness -> found.add(new Friction.Roughness(roughness)));
    fields
        .find("hazen c", Measure.NUMBER, HAZEN_C)
        .ifPresent(c -> found.add(new Friction.HazenC(c)));
    fields
        .find("factor", Measure.NUMBER, FACTOR)
        .ifPresent(factor -> found.add(new Friction.DarcyFactor(factor)));
    if (found.size() > 1) {
      fields.fault("give only one of roughness, hazen c and factor");
    }
    return found.stream().findFirst();
  }
}
