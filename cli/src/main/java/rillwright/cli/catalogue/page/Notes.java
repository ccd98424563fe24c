package rillwright.cli.catalogue.page;

import java.util.ArrayList;
import java.util.List;

/** Numbered notes below a print: each text once, numbered from 1 as it is first met. */
final class Notes {
  static final String HEADING = "notes: where the numbers are from";

  private final List<String> texts = new ArrayList<>();

  /** The number of a note's text. */
  int numberOf(String text) {
    if (!texts.contains(text)) {
      texts.add(text);
    }
    return texts.indexOf(text) + 1;
  }

  List<String> texts() {
    return List.copyOf(texts);
  }
}
