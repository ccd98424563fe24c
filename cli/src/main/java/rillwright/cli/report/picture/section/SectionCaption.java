package rillwright.cli.report.picture.section;

import java.util.ArrayList;
import java.util.List;
import rillwright.cli.study.section.Section;

/** What stands below the title of a section or sketch. */
final class SectionCaption {
  private SectionCaption() {}

  /**
   * Sentences.
   *
   * @param scale how levels and distances are drawn
   */
  static String of(Section section, String scale) {
    List<String> sentences = new ArrayList<>(List.of(scale));
    section.condition().ifPresent(name -> sentences.add("In condition " + name + "."));
    if (section.noBalance().isPresent()) {
      sentences.add("By the file, without heads: no balanced state exists.");
    } else if (section.state().isEmpty()) {
      sentences.add("By the file, without heads: a pump is still to be chosen.");
    }
    if (!section.changes().isEmpty()) {
      sentences.add("Changed: " + String.join("; ", section.changes()) + ".");
    }
    return String.join(" ", sentences);
  }
}
