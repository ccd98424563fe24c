package rillwright.cli.file.part;

import java.util.List;
import rillwright.cli.file.field.Fields;
import rillwright.solver.network.Part;

/** Reads parts of one kind. */
public interface PartReader {

  /** The word for the kind. */
  String kind();

  /** Names of its fields. */
  List<String> fields();

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
