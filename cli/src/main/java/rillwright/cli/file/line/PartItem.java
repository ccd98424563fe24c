package rillwright.cli.file.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Ledger;
import rillwright.cli.file.part.PartReader;
import rillwright.cli.file.part.PartReaders;
import rillwright.cli.file.part.PartStep;
import rillwright.cli.file.part.Shorthand;
import rillwright.cli.file.part.Surroundings;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.QuantityReader;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;
import rillwright.solver.network.Part;

/**
 * A part as written, of a known kind.
 *
 * @param reader of its kind
 * @param what which part it is, for messages: {@code line "supply": valve 2}
 * @param place where it is written
 * @param value what is said about it
 */
record PartItem(PartReader reader, String what, Place place, Node value) {

  /** The parts of a line; those of no known kind are noted as faults. */
  static List<PartItem> listOf(Fields line, PartReaders readers) {
    List<PartItem> items = new ArrayList<>();
    List<Entry> entries = new ArrayList<>();
    for (Node node : line.listItems("parts")) {
      find(line, node, readers).ifPresent(entries::add);
    }
    List<String> steps = PartStep.stepsOf(entries.stream().map(Entry::key).toList());
    for (int i = 0; i < entries.size(); i++) {
      Entry entry = entries.get(i);
      items.add(
          new PartItem(
              readers.find(entry.key()).orElseThrow(),
              line.what() + ": " + steps.get(i),
              placeOf(entry),
              entry.value()));
    }
    return items;
  }

  /** Where it is said what this part is: in the file, or in a change on the command line. */
  private static Place placeOf(Entry part) {
    Node said = part.value();
    Optional<String> bare = Shorthand.fieldOf(part.key());
    if (bare.isPresent() && said instanceof MapNode map) {
      said = map.findNode(bare.get()).orElse(said);
    }
    return said.place().isWhole() ? said.place() : part.keyPlace();
  }

  private static Optional<Entry> find(Fields line, Node node, PartReaders readers) {
    Ledger ledger = line.ledger();
    if (!(node instanceof MapNode map) || map.entries().isEmpty()) {
      String word = node instanceof Scalar scalar ? scalar.text() : "";
      ledger.fault(
          node.place(),
          line.what()
              + ": expected the kind of a part and its fields, for example \"- run: 38 ft\", found "
              + node.words()
              + (word.isEmpty() || readers.find(word).isPresent() ? "" : hint(word, readers)));
      return Optional.empty();
    }
    Entry first = map.entries().get(0);
    if (readers.find(first.key()).isEmpty()) {
      ledger.fault(
          first.keyPlace(),
          line.what()
              + ": there is no kind of part "
              + PlainText.quoted(first.key())
              + hint(first.key(), readers));
      return Optional.empty();
    }
    if (map.entries().size() > 1) {
      Entry second = map.entries().get(1);
      ledger.fault(
          second.keyPlace(),
          line.what()
              + ": "
              + PlainText.quoted(second.key())
              + " stands beside \""
              + first.key()
              + "\"; begin each part with \"- \" and put its fields in braces or indent them more");
    }
    return Optional.of(first);
  }

  /** What may have been meant by a kind that is not known: the type of a part for one. */
  private static String hint(String kind, PartReaders readers) {
    return readers
        .typed(kind)
        .map(example -> "; write " + PlainText.quoted(example))
        .orElseGet(() -> Choices.hint(kind, readers.kinds()));
  }

  /** The material that it names itself. */
  Optional<String> material() {
    return value.findText("material");
  }

  /** Reads it; empty, with the fault noted, if it has no fields. */
  Optional<Part> read(Surroundings around, Ledger ledger) {
    if (value instanceof MapNode map) {
      return Optional.of(reader.read(Fields.of(map, what, ledger, reader.fields()), around));
    }
    Optional<String> bare = Shorthand.fieldOf(reader.kind());
    if (bare.isPresent() && value instanceof Scalar scalar) {
      return Optional.of(
          reader.read(Fields.ofBare(scalar, bare.get(), what, ledger, reader.fields()), around));
    }
    ledger.fault(
        value.place(),
        what
            + ": expected fields ("
            + Choices.listed(reader.fields())
            + "), found "
            + value.words()
            + example());
    return Optional.empty();
  }

  /** How a bare type or a bare number of a part with types is written. */
  private String example() {
    if (reader.types().isEmpty() || !(value instanceof Scalar scalar) || scalar.isNothing()) {
      return "";
    }
    String text = scalar.text();
    boolean isNumber = QuantityReader.fits(text, Measure.NUMBER);
    String right =
        isNumber
            ? reader.kind() + ": {k: " + text + "}"
            : reader.example(
                reader
                    .typeOf(text)
                    .or(() -> Choices.meant(text, reader.types()).stream().findFirst())
                    .orElse(text));
    return "; write " + PlainText.quoted(right);
  }
}
