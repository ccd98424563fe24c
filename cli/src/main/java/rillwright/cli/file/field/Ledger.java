package rillwright.cli.file.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import rillwright.cli.file.fault.FaultList;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.quantity.Measure;
import rillwright.cli.file.quantity.MetricExamples;
import rillwright.cli.file.tree.Scalar;

/** What reading a project turns up besides its contents. */
public final class Ledger {
  private final FaultList faults;
  private final DrawnValues drawn;
  private final List<String> notes = new ArrayList<>();
  private final List<Uncertain> uncertain = new ArrayList<>();
  private Optional<String> currency = Optional.empty();
  private boolean metric;

  /**
   * An empty ledger.
   *
   * @param file the project file as the user named it
   */
  public Ledger(String file) {
    this(file, DrawnValues.NONE);
  }

  /**
   * An empty ledger for a reading with other values than those written.
   *
   * @param file the project file as the user named it
   * @param drawn what to take in place of some values
   */
  public Ledger(String file, DrawnValues drawn) {
    this.faults = new FaultList(file);
    this.drawn = drawn;
  }

  /** What to take in place of a value; empty to take what is written. */
  OptionalDouble drawnFor(Scalar written) {
    return drawn.findFor(written);
  }

  /** From here on examples of what could be written are in metric units. */
  public void showMetric() {
    metric = true;
  }

  /** A measure with the units first that the file is shown in. */
  Measure shown(Measure measure) {
    return metric ? measure.metricFirst() : measure;
  }

  private String said(String message) {
    return metric ? MetricExamples.in(message) : message;
  }

  /** Notes something wrong. */
  public void fault(Place place, String message) {
    faults.add(place, said(message));
  }

  /**
   * Notes something wrong.
   *
   * @param hint what to add to the message if it is shown: a search for what might have been meant
   */
  void fault(Place place, String message, Supplier<String> hint) {
    faults.add(place, said(message), hint);
  }

  /** All that is wrong. */
  public FaultList faults() {
    return faults;
  }

  /** Notes something that is right but should be known. */
  public void note(String sentence) {
    notes.add(sentence);
  }

  /** What should be known, each once. */
  public List<String> notes() {
    return notes.stream().distinct().toList();
  }

  List<String> allNotes() {
    return notes;
  }

  void remember(Uncertain quantity) {
    uncertain.add(quantity);
  }

  List<Uncertain> allUncertain() {
    return uncertain;
  }

  /** Whether no other value is taken than what is written. */
  boolean isAsWritten() {
    return drawn == DrawnValues.NONE;
  }

  /** The quantities that are not known exactly. */
  public List<Uncertain> uncertain() {
    return List.copyOf(uncertain);
  }

  /** Takes note of a currency; whether it is that of the prices before. */
  boolean agreesOn(String code) {
    currency = currency.or(() -> Optional.of(code));
    return currency.equals(Optional.of(code));
  }

  /** The currency of the file's prices; empty if it has none. */
  public Optional<String> currency() {
    return currency;
  }
}
