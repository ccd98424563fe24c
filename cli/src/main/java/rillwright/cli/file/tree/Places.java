package rillwright.cli.file.tree;

import rillwright.cli.file.fault.Place;
import tools.jackson.core.TokenStreamLocation;

/** Makes places of a parser's locations. */
final class Places {
  private Places() {}

  static Place of(String source, TokenStreamLocation at) {
    if (at == null || at.getLineNr() < 1) {
      return Place.whole(source);
    }
    return new Place(source, at.getLineNr(), Math.max(1, at.getColumnNr()));
  }
}
