package rillwright.cli.file.field;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.Quantity;
import rillwright.cli.file.quantity.Range;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.wording.Choices;
import rillwright.curves.sheet.fact.Price;
import rillwright.curves.wording.PlainText;

/**
 * The fields of one map. What is wrong goes to the ledger, and a stand-in that is valid comes back,
 * so that reading goes on and finds everything.
 */
public final class Fields {
  private final MapNode map;
  private final String what;
  private final Optional<String> bareField;
  private final Ledger ledger;
  private final List<String> known;
  private final int faultsBefore;

  private Fields(
      MapNode map,
      String what,
      Optional<String> bareField,
      Ledger ledger,
      Collection<String> known) {
    this.map = map;
    this.what = what;
    this.bareField = bareField;
    this.ledger = ledger;
    this.known = List.copyOf(known);
    this.faultsBefore = ledger.faults().size();
  }

  /**
   * The fields of a map; unknown ones are faults.
   *
   * @param what whose fields they are, for messages: {@code point "pond"}
   * @param known names of the fields that it may have
   */
  public static Fields of(MapNode map, String what, Ledger ledger, Collection<String> known) {
    Fields fields = new Fields(map, what, Optional.empty(), ledger, known);
    fields.refuseUnknown();
    return fields;
  }

  /**
   * The one field that a bare value stands for.
   *
   * @param field its name
   */
  public static Fields ofBare(
      Scalar value, String field, String what, Ledger ledger, Collection<String> known) {
    Entry entry = new Entry(field, value.place(), value);
    MapNode map = new MapNode(List.of(entry), value.place());
    return new Fields(map, what, Optional.of(field), ledger, known);
  }

  private void refuseUnknown() {
    for (Entry entry : map.entries()) {
      if (!known.contains(entry.key())) {
        ledger.fault(
            entry.keyPlace(),
            (what.isEmpty() ? "" : what + ": ")
                + "there is no field "
                + PlainText.quoted(entry.key()),
            () -> Choices.hint(entry.key(), known));
      }
    }
  }

  /** Where the map begins. */
  public Place place() {
    return map.place();
  }

  /** Whose fields these are. */
  public String what() {
    return what;
  }

  /** Where all is noted. */
  public Ledger ledger() {
    return ledger;
  }

  /** The name of a field, for messages: {@code point "pond": level}. */
  public String nameOf(String field) {
    boolean isBare = bareField.filter(field::equals).isPresent();
    return what.isEmpty() ? field : isBare ? what : what + ": " + field;
  }

  /** Whether nothing wrong was noted since these fields were opened. */
  public boolean areSound() {
    return ledger.faults().size() == faultsBefore;
  }

  /** Whether a field is written, be it right or wrong. */
  public boolean has(String field) {
    return map.find(field).isPresent();
  }

  /** Notes that a field is wrong. */
  public void fault(String field, String message) {
    ledger.fault(placeOf(field), nameOf(field) + ": " + message);
  }

  /** Notes that a field names what is not known; what might have been meant is added. */
  public void unknown(String field, String message, String written, Collection<String> known) {
    ledger.fault(
        placeOf(field), nameOf(field) + ": " + message, () -> Choices.hint(written, known));
  }

  private Place placeOf(String field) {
    return map.find(field).map(entry -> entry.value().place()).orElse(map.place());
  }

  /** Notes that the whole is wrong. */
  public void fault(String message) {
    ledger.fault(map.place(), (what.isEmpty() ? "" : what + ": ") + message);
  }

  private void faultAt(Node node, String field, String message) {
    ledger.fault(node.place(), nameOf(field) + ": " + message);
  }

  private void missing(String field, String example) {
    fault("\"" + field + "\" is missing; write for example \"" + field + ": " + example + "\"");
  }

  /** What belongs to a field. */
  public Optional<Node> findNode(String field) {
    return map.findNode(field);
  }

  /** The single value of a field; empty, with the fault noted, if there is another thing. */
  private Optional<Scalar> findScalar(String field, String expected) {
    Optional<Node> node = findNode(field);
    if (node.isEmpty()) {
      return Optional.empty();
    }
    if (node.get() instanceof Scalar scalar && !scalar.isNothing()) {
      return Optional.of(scalar);
    }
    String found = node.get() instanceof Scalar ? "" : ", found " + node.get().words();
    String wrong = found.isEmpty() ? "a value is missing here; expected " : "expected ";
    faultAt(node.get(), field, wrong + expected + found);
    return Optional.empty();
  }

  /** The quantity of a field; empty if the field is not there. A stand-in if it is wrong. */
  public Optional<Quantity> findQuantity(String field, Measure measure, Range range) {
    Optional<Scalar> scalar = findScalar(field, measure.words());
    return has(field)
        ? scalar
            .map(it -> valueOf(field, it).quantity(measure, range))
            .or(() -> Optional.of(Quantity.exactly(range.standIn())))
        : Optional.empty();
  }

  private Value valueOf(String field, Scalar scalar) {
    return new Value(nameOf(field), scalar, ledger);
  }

  /** Which of some values a field is that leaves it open, from 0. */
  public int oneOf(String field, Quantity.Choice choice) {
    return valueOf(field, (Scalar) findNode(field).orElseThrow()).oneOf(choice);
  }

  /** The middle of a field's quantity, in base units; empty if the field is not there. */
  public OptionalDouble find(String field, Measure measure, Range range) {
    return findQuantity(field, measure, range).stream().mapToDouble(Quantity::middle).findFirst();
  }

  /** As without the last, where "catalogue" stands for what is catalogued, if anything is. */
  public OptionalDouble find(
      String field, Measure measure, Range range, Optional<Quantity> catalogued) {
    return findNode(field).filter(Value::isCatalogue).isEmpty()
        ? find(field, measure, range)
        : OptionalDouble.of(
            valueOf(field, (Scalar) findNode(field).get()).of(catalogued, measure, range));
  }

  /** The middle of a field's quantity, in base units, or what is usual without the field. */
  public double findOr(String field, Measure measure, Range range, double usual) {
    return find(field, measure, range).orElse(usual);
  }

  /**
   * The middle of a field's quantity, in base units; a fault if the field is missing.
   *
   * @param example what could be written: {@code 38 ft}
   */
  public double require(String field, Measure measure, Range range, String example) {
    if (!has(field)) {
      missing(field, example);
    }
    return find(field, measure, range).orElse(range.standIn());
  }

  /** The text of a field; empty if the field is not there or wrong. */
  public Optional<String> findText(String field) {
    Optional<String> text = findScalar(field, "a text").map(Scalar::text);
    if (text.isPresent() && text.get().isBlank()) {
      fault(field, "expected a text, found empty quotes");
      return Optional.empty();
    }
    return text;
  }

  /** The text of a field; empty, with the fault noted, if it is missing or wrong. */
  public Optional<String> requireText(String field, String example) {
    if (!has(field)) {
      missing(field, example);
    }
    return findText(field);
  }

  /** The word of a field out of a list; empty if the field is not there or wrong. */
  public Optional<String> findWord(String field, List<String> words) {
    Optional<String> word = findText(field);
    if (word.isPresent() && !words.contains(word.get())) {
      unknown(field, PlainText.quoted(word.get()) + " is not known", word.get(), words);
      return Optional.empty();
    }
    return word;
  }

  /** The count of a field, 1 or more, or 1 without the field. */
  public int count(String field) {
    Quantity quantity =
        findQuantity(field, Measure.COUNT, Range.between(1, 1000, "must be from 1 to 1000"))
            .orElse(Quantity.exactly(1));
    double count = quantity.middle();
    if (count != Math.rint(count) || !quantity.isExact()) {
      fault(field, "a count is a whole number");
      return 1;
    }
    return (int) count;
  }

  /** The yes or no of a field, or what is usual without the field. */
  public boolean isYes(String field, boolean usual) {
    return findScalar(field, "yes or no")
        .map(scalar -> valueOf(field, scalar).isYes())
        .orElse(usual);
  }

  /** The price of a field, for a unit or, if none, a piece; empty if it is not there or wrong. */
  public Optional<Price> findPrice(String field, List<String> units) {
    return findScalar(field, "a price").flatMap(scalar -> valueOf(field, scalar).price(units));
  }

  private Nesting nesting(String field) {
    return new Nesting(nameOf(field), findNode(field), ledger);
  }

  /** The fields below a field; empty if it is not there or, with the fault noted, no map. */
  public Optional<Fields> findFields(String field, Collection<String> fieldsBelow) {
    return findMap(field).map(below -> Fields.of(below, nameOf(field), ledger, fieldsBelow));
  }

  /**
   * The fields below a field; empty if it is not there or, with the fault noted, no map.
   *
   * @param example what could be written: {@code {depth: 3 in}}
   */
  public Optional<Fields> findFields(String field, Collection<String> fieldsBelow, String example) {
    return nesting(field)
        .map(", for example \"" + field + ": " + example + "\"")
        .map(below -> Fields.of(below, nameOf(field), ledger, fieldsBelow));
  }

  /** The map below a field; empty if it is not there or, with the fault noted, no map. */
  public Optional<MapNode> findMap(String field) {
    return nesting(field).map("");
  }

  /** The items of a list; none if the field is not there or, with the fault noted, no list. */
  public List<Node> listItems(String field) {
    return nesting(field).items();
  }

  /** The rows of a list of maps; other items are faults. */
  public List<Fields> listRows(String field, Collection<String> fieldsBelow) {
    return nesting(field).rows(fieldsBelow);
  }
}
