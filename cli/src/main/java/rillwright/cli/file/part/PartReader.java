package rillwright.cli.file.part;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import rillwright.cli.file.field.Fields;
import rillwright.cli.wording.TradeNames;
import rillwright.solver.network.Part;

/** Reads parts of one kind. */
public interface PartReader {

  /** The word for the kind. */
  String kind();

  /** Names of its fields. */
  List<String> fields();

  /** Names of the types that it may be of; none if it has no types. */
  default List<String> types() {
    return List.of();
  }

  /** How a part of a type is written. */
  default String example(String type) {
    return kind() + ": {type: " + type + "}";
  }

  /** The type that a name is of, in the words of the trade too; empty if it is none. */
  default Optional<String> typeOf(String name) {
    return Stream.of(name, TradeNames.here(name))
        .map(word -> word.toLowerCase(Locale.ROOT).replaceAll("( check)? valve$", ""))
        .flatMap(
            word ->
                types().stream()
                    .filter(type -> (type + " ").toLowerCase(Locale.ROOT).startsWith(word + " ")))
        .findFirst();
  }

  /** The part; of faulty fields a stand-in. */
  Part read(Fields fields, Surroundings around);

  /** Whether it is a length of pipe, in whose bore the parts beside it stand. */
  default boolean isPipe() {
    return false;
  }

  /** Whether it takes its water in by itself where a line begins with it. */
  default boolean takesWaterIn() {
    return false;
  }
}
