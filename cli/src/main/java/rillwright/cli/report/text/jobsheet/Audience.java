package rillwright.cli.report.text.jobsheet;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** For whom a job sheet is. */
public enum Audience {
  /** Who dig, glue, set and measure. */
  CREW,
  /** Who pays, looks and cares. */
  CUSTOMER,
  /** Who opens the pump's lid or the valve box in five years. */
  LID;

  /** The word that an option takes. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The one that a word means. */
  public static Optional<Audience> find(String word) {
    return Stream.of(values()).filter(it -> it.word().equals(word)).findFirst();
  }
}
