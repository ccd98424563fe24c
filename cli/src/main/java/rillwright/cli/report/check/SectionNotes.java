package rillwright.cli.report.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rillwright.cli.file.tree.MapNode;

/** Which sections of a file only some commands use, so that nobody waits for them elsewhere. */
final class SectionNotes {
  private SectionNotes() {}

  /** Sentences, one for each such section of a file. */
  static List<String> in(MapNode tree) {
    List<String> notes = new ArrayList<>();
    for (Map.Entry<String, String> use : uses().entrySet()) {
      if (tree.find(use.getKey()).isPresent()) {
        notes.add("the section \"" + use.getKey() + "\" is used only by " + use.getValue());
      }
    }
    return notes;
  }

  private static Map<String, String> uses() {
    Map<String, String> uses = new LinkedHashMap<>();
    uses.put("job", "\"rillwright sheet\"");
    uses.put("prices", "\"rillwright pipes\", \"mend\" and \"sheet\"");
    uses.put("streams", "\"rillwright stream\", \"mend\" and \"sheet\"");
    uses.put("evaporation", "\"rillwright stream\", \"mend\" and \"sheet\"");
    uses.put("readings", "\"rillwright weak\" and \"asbuilt\"");
    uses.put("signs", "\"rillwright weak\"");
    uses.put(
        "conditions",
        "\"rillwright solve\", \"mend\", \"pumps\", \"pipes\", \"stream\" and \"odds\", where"
            + " conditions are asked for");
    return uses;
  }
}
