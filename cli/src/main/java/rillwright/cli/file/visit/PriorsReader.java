package rillwright.cli.file.visit;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import rillwright.cli.file.change.FormerNames;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Ledger;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Range;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.file.tree.SourceText;
import rillwright.cli.file.tree.TreeReader;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;
import rillwright.solver.study.diagnosis.cause.Cause;
import rillwright.solver.study.diagnosis.cause.CauseId;
import rillwright.solver.study.diagnosis.cause.Sign;
import rillwright.solver.study.diagnosis.cause.SignTable;
import rillwright.solver.study.diagnosis.cause.SizeRange;
import rillwright.solver.study.diagnosis.cause.kind.CauseTable;

/** Reads an edited table of causes and signs, in the structure in which it is printed. */
public final class PriorsReader {
  /** What the answer is, and what was changed for it, stands in it too and is passed over. */
  private static final List<String> SECTIONS = List.of("kind", "changed", "causes", "signs");

  private static final List<String> FIELDS =
      List.of("cause", "at", "part", "quantity", "from", "to", "log", "prior");
  private static final Range FACTOR =
      Range.between(1e-6, 1e6, "must be greater than 0 and not more than a million");

  private final CauseTable standard;
  private final Ledger ledger;
  private final Map<CauseId, Cause> edited = new LinkedHashMap<>();

  private PriorsReader(CauseTable standard, Ledger ledger) {
    this.standard = standard;
    this.ledger = ledger;
  }

  /**
   * Edited causes and signs.
   *
   * @param causes of the job, with their priors
   * @param signs what signs do; kept if the file says nothing of signs
   */
  public record Priors(CauseTable causes, SignTable signs) {}

  /**
   * What a file says about the causes of a job.
   *
   * @throws rillwright.cli.file.fault.InvalidInput with all that is wrong with it
   */
  public static Priors read(Path file, CauseTable standard) {
    MapNode tree = FormerNames.renewedIn(TreeReader.read(SourceText.read(file)));
    PriorsReader reader = new PriorsReader(standard, new Ledger(file.toString()));
    Fields root = Fields.of(tree, "", reader.ledger, SECTIONS);
    for (Fields row : root.listRows("causes", FIELDS)) {
      reader.row(row);
    }
    Map<CauseId, Cause> edited = reader.edited;
    SignTable signs = reader.signs(root);
    reader.requireAll(root);
    reader.ledger.faults().throwIfAny();
    return new Priors(new CauseTable(List.copyOf(edited.values())), signs);
  }

  private void row(Fields row) {
    Optional<String> name = row.requireText("cause", "pump worn");
    if (name.isEmpty()) {
      return;
    }
    Optional<String> at = isNothing(row, "at") ? Optional.empty() : row.findText("at");
    OptionalInt part =
        isNothing(row, "part") ? OptionalInt.empty() : OptionalInt.of(row.count("part"));
    CauseId id = new CauseId(name.get(), at, part);
    Optional<Cause> known =
        standard.causes().stream().filter(cause -> cause.id().equals(id)).findFirst();
    if (known.isEmpty()) {
      unknown(row, id);
      return;
    }
    double prior = row.require("prior", Measure.NUMBER, Range.NOT_NEGATIVE, "0.1");
    Cause cause = known.get().withPrior(prior).withSizes(sizes(row, known.get()));
    if (edited.put(id, cause) != null) {
      row.fault("this cause is there twice; keep one of them");
    }
  }

  private static boolean isNothing(Fields fields, String field) {
    Optional<Node> node = fields.findNode(field);
    return node.isEmpty() || (node.get() instanceof Scalar scalar && scalar.isNothing());
  }

  private void unknown(Fields row, CauseId id) {
    List<String> names =
        standard.causes().stream().map(cause -> cause.id().cause()).distinct().toList();
    if (!names.contains(id.cause())) {
      row.fault(
          "cause",
          PlainText.quoted(id.cause())
              + " is no cause of this job"
              + Choices.hint(id.cause(), names));
      return;
    }
    List<String> places =
        standard.causes().stream()
            .map(Cause::id)
            .filter(known -> known.cause().equals(id.cause()))
            .map(PriorsReader::place)
            .toList();
    row.fault(
        PlainText.quoted(id.cause())
            + " cannot sit at "
            + place(id)
            + " in this job; it can at "
            + Choices.listed(places));
  }

  private static String place(CauseId id) {
    return id.at().map(PlainText::quoted).orElse("no place")
        + (id.part().isPresent() ? " part " + id.part().getAsInt() : "");
  }

  private static Optional<SizeRange> sizes(Fields row, Cause known) {
    if (known.sizes().isEmpty()) {
      return Optional.empty();
    }
    Range possible =
        Range.between(
            known.quantity().least(),
            known.quantity().greatest(),
            "must be from " + known.quantity().least() + " to " + known.quantity().greatest());
    SizeRange usual = known.sizes().get();
    double from = row.findOr("from", Measure.NUMBER, possible, usual.from());
    double to = row.findOr("to", Measure.NUMBER, possible, usual.to());
    boolean log = row.isYes("log", usual.log());
    if (!row.areSound()) {
      return known.sizes();
    }
    if (!(from < to)) {
      row.fault("to", "must be greater than \"from\"");
      return known.sizes();
    }
    if (log && from <= 0) {
      row.fault("from", "must be greater than 0 where sizes are alike by their logarithms");
      return known.sizes();
    }
    return Optional.of(new SizeRange(from, to, log));
  }

  private void requireAll(Fields root) {
    List<String> missing =
        standard.causes().stream()
            .map(Cause::id)
            .filter(id -> !edited.containsKey(id))
            .map(id -> id.cause() + (id.at().isPresent() ? " at " + place(id) : ""))
            .toList();
    if (ledger.faults().size() == 0 && !missing.isEmpty()) {
      root.fault(
          "causes",
          "these are missing: "
              + Choices.listed(missing)
              + "; to rule a cause out keep its row and write \"prior: 0\"");
    }
    boolean noneLeft = edited.values().stream().allMatch(cause -> cause.prior() == 0);
    if (ledger.faults().size() == 0 && noneLeft) {
      root.fault("causes", "every prior is 0; one at least must be greater");
    }
  }

  private SignTable signs(Fields root) {
    if (!root.has("signs")) {
      return SignTable.commonPractice();
    }
    Map<Sign, Map<String, Double>> factors = new EnumMap<>(Sign.class);
    List<String> names =
        standard.causes().stream().map(cause -> cause.id().cause()).distinct().toList();
    root.findFields("signs", Sign.names())
        .ifPresent(
            signs -> {
              for (Sign sign : Sign.values()) {
                signs
                    .findFields(sign.words(), names)
                    .ifPresent(row -> factors.put(sign, factors(row, names)));
              }
            });
    return new SignTable(factors);
  }

  private static Map<String, Double> factors(Fields row, List<String> names) {
    Map<String, Double> factors = new LinkedHashMap<>();
    for (String name : names) {
      OptionalDouble factor = row.find(name, Measure.NUMBER, FACTOR);
      factor.ifPresent(value -> factors.put(name, value));
    }
    return factors;
  }
}
