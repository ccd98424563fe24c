package rillwright.cli.file.tree;

import rillwright.cli.file.fault.Place;

/** A piece of a file: a map, a list or a single value. */
public sealed interface Node permits MapNode, ListNode, Scalar {

  /** Where it begins. */
  Place place();

  /** "a list": what it is, for messages. */
  String words();
}
