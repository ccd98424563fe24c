package rillwright.cli.file.fault;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import rillwright.curves.wording.PlainText;

/**
 * Collects faults while an input is read, to tell them all at once in the order of their places.
 */
public final class FaultList {
  private static final int MOST = 100;

  private final String mainFile;

  /** With what might have been meant, which is looked for only when a fault is shown. */
  private final Map<Fault, Supplier<String>> faults = new LinkedHashMap<>();

  /**
   * No faults yet.
   *
   * @param mainFile whose faults to tell first, before those of files that it names
   */
  public FaultList(String mainFile) {
    this.mainFile = PlainText.harmless(mainFile);
  }

  /** Notes a fault. */
  public void add(Place place, String message) {
    add(Fault.at(place, message));
  }

  /**
   * Notes a fault.
   *
   * @param hint what to add to the message if it is shown: a search for what might have been meant
   */
  public void add(Place place, String message, Supplier<String> hint) {
    faults.putIfAbsent(Fault.at(place, message), hint);
  }

  /** Notes a fault. */
  public void add(Fault fault) {
    faults.putIfAbsent(fault, () -> "");
  }

  /** How many are noted so far. */
  public int size() {
    return faults.size();
  }

  /** Refuses the input if anything is wrong; of very many faults the first hundred are reported. */
  public void throwIfAny() {
    if (faults.isEmpty()) {
      return;
    }
    List<String> files =
        Stream.concat(Stream.of(mainFile), faults.keySet().stream().map(Fault::file))
            .distinct()
            .toList();
    List<Fault> all = new ArrayList<>(faults.keySet());
    all.sort(
        Comparator.comparingInt((Fault fault) -> files.indexOf(fault.file()))
            .thenComparingInt(Fault::line)
            .thenComparingInt(Fault::column));
    List<Fault> shown = new ArrayList<>();
    all.stream().limit(MOST).forEach(fault -> shown.add(withHint(fault)));
    if (all.size() > MOST) {
      Fault last = all.get(MOST);
      String left = "and " + (all.size() - MOST) + " more faults from here on";
      shown.add(new Fault(last.file(), last.line(), last.column(), left));
    }
    throw new InvalidInput(shown);
  }

  private Fault withHint(Fault fault) {
    String hint = faults.get(fault).get();
    return new Fault(fault.file(), fault.line(), fault.column(), fault.message() + hint);
  }
}
