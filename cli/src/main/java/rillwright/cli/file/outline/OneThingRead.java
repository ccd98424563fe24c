package rillwright.cli.file.outline;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.SetElsewhere;
import rillwright.cli.wording.Choices;

/** The one thing that a reading is of. */
public final class OneThingRead {
  private static final List<String> THINGS =
      List.of("flow", "bucket", "crest head", "brink", "pressure", "level", "power");

  private OneThingRead() {}

  /** What was read; empty, with the fault noted, if it is nothing or more than one thing. */
  public static Optional<String> find(Fields reading) {
    List<String> read = THINGS.stream().filter(reading::has).toList();
    if (read.isEmpty()) {
      reading.fault("say what was read: one of " + Choices.listed(THINGS));
      return Optional.empty();
    }
    if (read.size() > 1) {
      SetElsewhere.fault(
          reading,
          read,
          (read.size() == 2 ? "two" : "several")
              + " things stand in one reading, "
              + String.join(" and ", read)
              + (read.size() == 2 ? "; make two readings of it" : "; make a reading of each"));
      return Optional.empty();
    }
    return Optional.of(read.get(0));
  }
}
