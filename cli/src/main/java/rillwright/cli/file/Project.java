package rillwright.cli.file;

import java.util.List;
import java.util.Map;
import rillwright.cli.file.field.Uncertain;
import rillwright.cli.file.site.Prices;
import rillwright.cli.file.site.Running;
import rillwright.cli.file.tree.MapNode;
import rillwright.curves.sheet.DataSheet;
import rillwright.solver.network.Network;
import rillwright.solver.stream.StreamPlan;

/**
 * What a project file says.
 *
 * @param title of the job; the file's name if it has none
 * @param show units to print
 * @param network points, lines and water, with the middle of every quantity
 * @param streams ways home and what evaporates
 * @param running how long the pumps run and what electricity costs
 * @param prices what pipe, fittings and trench cost
 * @param sheets data sheets by the name of the pump, in the order of the file
 * @param notes what the reader should know: sentences
 * @param uncertain the quantities that are not known exactly
 * @param places where things are written
 * @param tree the file itself, with changes applied
 */
public record Project(
    String title,
    Show show,
    Network network,
    StreamPlan streams,
    Running running,
    Prices prices,
    Map<String, DataSheet> sheets,
    List<String> notes,
    List<Uncertain> uncertain,
    WhereWritten places,
    MapNode tree) {
  public Project {
    notes = List.copyOf(notes);
    uncertain = List.copyOf(uncertain);
  }
}
