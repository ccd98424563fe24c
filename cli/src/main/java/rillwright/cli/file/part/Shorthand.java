package rillwright.cli.file.part;

import java.util.Map;
import java.util.Optional;

/** Which field of a part a bare value stands for: {@code run: 38 ft} is its length. */
public final class Shorthand {
  private static final Map<String, String> FIELDS =
      Map.of("run", "length", "pump", "model", "high point", "elevation");

  private Shorthand() {}

  /** The field that a bare value of a kind of part stands for; empty if it needs fields. */
  public static Optional<String> fieldOf(String kind) {
    return Optional.ofNullable(FIELDS.get(kind));
  }
}
