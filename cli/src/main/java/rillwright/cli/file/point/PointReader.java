package rillwright.cli.file.point;

import java.util.List;
import rillwright.cli.file.field.Fields;
import rillwright.solver.network.Point;
import rillwright.solver.network.PointName;

/** Reads points of one kind. */
interface PointReader {

  /** The word for the kind. */
  String kind();

  /** Names of its fields, besides {@code kind}. */
  List<String> fields();

  /** The point; of faulty fields a stand-in. */
  Point read(PointName name, Fields fields);
}
