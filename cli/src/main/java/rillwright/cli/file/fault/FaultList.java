package rillwright.cli.file.fault;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rillwright.curves.wording.PlainText;

/**
 * Collects faults while an input is read, to tell them all at once in the order of their places.
 */
public final class FaultList {
  private static final int MOST = 100;

  private final String mainFile;
  private final Set<Fault> faults = new LinkedHashSet<>();

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

  /** Notes a fault. */
  public void add(Fault fault) {
    faults.add(fault);
  }

  /** How many are noted so far. */
  public int size() {
    return faults.size();
  }

  /** Refuses the input if anything is wrong; of very many faults the first hundred are told. */
  public void throwIfAny() {
    if (faults.isEmpty()) {
      return;
    }
    List<String> files =
        Stream.concat(Stream.of(mainFile), faults.stream().map(Fault::file)).distinct().toList();
    List<Fault> told = new ArrayList<>(faults);
    told.sort(
        Comparator.comparingInt((Fault fault) -> files.indexOf(fault.file()))
            .thenComparingInt(Fault::line)
            .thenComparingInt(Fault::column));
    if (told.size() > MOST) {
      Fault last = told.get(MOST);
      String left = "and " + (told.size() - MOST) + " more faults from here on";
      told = new ArrayList<>(told.subList(0, MOST));
      told.add(new Fault(last.file(), last.line(), last.column(), left));
    }
    throw new InvalidInput(told);
  }
}
