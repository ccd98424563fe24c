package rillwright.cli.file.field;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import rillwright.cli.file.tree.Entry;

/**
 * What the pieces of a section read as, by name. Of a changed file only those are read that are
 * changed themselves, or of which something around them is.
 *
 * @param <T> what a piece reads as
 */
public final class Pieces<T> {
  private record Piece<T>(
      Entry written, List<?> around, T value, List<String> notes, List<Uncertain> uncertain) {
    /** What is not known exactly is drawn at the very place where it stands, not at one alike. */
    @SuppressWarnings("ReferenceEquality")
    boolean isOf(Entry now, List<?> aroundNow) {
      return (uncertain.isEmpty() ? written.equals(now) : written == now)
          && around.equals(aroundNow);
    }
  }

  private final Map<String, Piece<T>> before;
  private final Map<String, Piece<T>> read = new HashMap<>();

  private Pieces(Map<String, Piece<T>> before) {
    this.before = before;
  }

  /** Where nothing was read before. */
  public Pieces() {
    this(Map.of());
  }

  /** For the same section with changes. */
  public Pieces<T> again() {
    return new Pieces<>(read);
  }

  /**
   * What a piece reads as; what that turns up is noted.
   *
   * @param around what it depends on besides what is written of it
   * @param reading reads it where it is not known
   */
  public T read(Entry written, List<?> around, Ledger ledger, Supplier<T> reading) {
    if (!ledger.isAsWritten()) {
      return reading.get();
    }
    Piece<T> known = before.get(written.key());
    if (known != null && known.isOf(written, around)) {
      known.notes.forEach(ledger::note);
      known.uncertain.forEach(ledger::remember);
      read.put(written.key(), known);
      return known.value;
    }
    int notes = ledger.allNotes().size();
    int uncertain = ledger.allUncertain().size();
    T value = reading.get();
    Piece<T> piece =
        new Piece<>(
            written,
            around,
            value,
            since(notes, ledger.allNotes()),
            since(uncertain, ledger.allUncertain()));
    read.put(written.key(), piece);
    return value;
  }

  private static <S> List<S> since(int first, List<S> all) {
    return List.copyOf(all.subList(first, all.size()));
  }
}
