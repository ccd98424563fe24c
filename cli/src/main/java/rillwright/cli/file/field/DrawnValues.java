package rillwright.cli.file.field;

import java.util.OptionalDouble;
import rillwright.cli.file.tree.Scalar;

/** Values to take in place of quantities that are not known exactly. */
public interface DrawnValues {
  /** Takes everything as it is written. */
  DrawnValues NONE =
      new DrawnValues() {
        @Override
        public OptionalDouble findFor(Scalar written) {
          return OptionalDouble.empty();
        }
      };

  /**
   * What to take in place of a value, in the base unit of its measure; empty to take what is
   * written.
   *
   * @param written this very piece of the file, not one like it
   */
  OptionalDouble findFor(Scalar written);
}
