package rillwright.cli.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.cli.file.field.Uncertain;
import rillwright.cli.file.job.JobPapers;
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
 * @param papers what it says of the job besides its water
 * @param notes what the reader should know: sentences
 * @param uncertain the quantities that are not known exactly
 * @param places where things are written
 * @param tree the file itself, with changes applied
 * @param changes that were made to the file, as written
 * @param mapping that makes changed ones of their trees
 */
public record Project(
    String title,
    Show show,
    Network network,
    StreamPlan streams,
    Running running,
    Prices prices,
    Map<String, DataSheet> sheets,
    JobPapers papers,
    List<String> notes,
    List<Uncertain> uncertain,
    WhereWritten places,
    MapNode tree,
    List<String> changes,
    ProjectMapping mapping) {
  public Project {
    notes = List.copyOf(notes);
    uncertain = List.copyOf(uncertain);
    changes = List.copyOf(changes);
  }

  /** The data sheet of a pump; empty where none is of that name. */
  public Optional<DataSheet> findSheet(String pump) {
    return Optional.ofNullable(sheets.get(pump));
  }

  /**
   * This project with some values changed. Neither its file nor a data sheet is read again; of
   * points and lines only those are that the changes touch.
   *
   * @param more as on the command line: {@code lines.intake.skimmer.clogged=40 %}
   * @throws rillwright.cli.file.fault.InvalidInput with everything that is wrong then
   */
  public Project with(List<String> more) {
    List<String> all = new ArrayList<>(changes);
    all.addAll(more);
    return mapping.mapWith(tree, more, all);
  }

  /**
   * The project that this one is with another tree, such as its own in a condition; the changes
   * that are reported stay the same.
   *
   * @throws rillwright.cli.file.fault.InvalidInput with everything that is wrong then
   */
  public Project withTree(MapNode changed) {
    return mapping.map(changed, changes);
  }
}
