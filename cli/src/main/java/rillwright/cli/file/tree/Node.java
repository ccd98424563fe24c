package rillwright.cli.file.tree;

import java.util.Optional;
import rillwright.cli.file.fault.Place;

/** A piece of a file: a map, a list or a single value. */
public sealed interface Node permits MapNode, ListNode, Scalar {

  /** Where it begins. */
  Place place();

  /** The text of a single value in it by its name; empty if there is none or this is no map. */
  default Optional<String> findText(String key) {
    return Optional.empty();
  }

  /** "a list": what it is, for messages. */
  String words();
}
