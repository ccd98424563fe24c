package rillwright.cli.study.jobsheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.TreeMap;
import rillwright.cli.file.Project;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.study.jobsheet.materials.Item;
import rillwright.cli.study.jobsheet.materials.Materials;
import rillwright.cli.study.jobsheet.materials.Stock;
import rillwright.solver.network.Run;

/** Materials against the file as it is written: counted again from its tree, not its network. */
public final class AddingUp {
  private final Map<String, Integer> written = new TreeMap<>();

  private AddingUp() {}

  /** Asserts that all is on the list as often as in the file. */
  public static void check(Project project, String name) {
    AddingUp file = new AddingUp();
    for (Entry line : project.tree().findMap("lines").orElseThrow().entries()) {
      ((MapNode) line.value())
          .find("parts")
          .ifPresent(parts -> ((ListNode) parts.value()).items().forEach(file::part));
    }
    Map<String, Integer> listed = new TreeMap<>();
    double netM = 0;
    for (Item item : Materials.of(project).items()) {
      netM += item.lengthM().orElse(0);
      item.stock().ifPresent(stock -> enough(stock, item.lengthM().orElseThrow(), name));
      String kind = kind(item);
      if (!kind.isEmpty()) {
        listed.merge(kind, item.count(), Integer::sum);
      }
    }
    assertEquals(file.written, listed, name);
    double runsM =
        project.network().placed(Run.class).stream().mapToDouble(it -> it.part().lengthM()).sum();
    assertEquals(runsM, netM, 1e-9 * runsM, name);
  }

  private static void enough(Stock stock, double netM, String name) {
    assertTrue(stock.totalM() >= 1.05 * netM - 1e-6, name);
    assertTrue(stock.totalM() - stock.lengthM() < 1.05 * netM, name);
  }

  /** What is on the list without being written is left out: junctions, unions, bulkheads. */
  private static String kind(Item item) {
    return switch (item.what().kind()) {
      case FITTING -> item.what().name().equals("reducer") ? "" : fitting(item.what().name());
      case VALVE -> "valve";
      case CHECK_VALVE -> "check valve";
      case GAUGE_TAP -> "gauge";
      case SKIMMER -> "skimmer";
      case FILTER -> "filter";
      case PUMP -> "pump";
      default -> "";
    };
  }

  /** Ways of a tee may be one piece, and joints may be added. */
  private static String fitting(String type) {
    boolean isOwn =
        type.matches(".*(tee|wye|diverter|three-way).*|union|bulkhead|reducer|enlargement");
    return isOwn ? "" : "fitting " + type;
  }

  private void part(Node item) {
    if (item instanceof Scalar scalar) {
      add(scalar.text(), 1);
      return;
    }
    Entry only = ((MapNode) item).entries().get(0);
    if (only.key().equals("fitting")) {
      boolean isMap = only.value() instanceof MapNode;
      String type = isMap ? text((MapNode) only.value(), "type", "fitting") : text(only.value());
      int count = isMap ? (int) Double.parseDouble(text((MapNode) only.value(), "count", "1")) : 1;
      add(fitting(type), count);
    } else if (only.key().equals("pump")) {
      boolean isMap = only.value() instanceof MapNode;
      add("pump", isMap ? Integer.parseInt(text((MapNode) only.value(), "count", "1")) : 1);
    } else {
      add(only.key(), 1);
    }
  }

  private void add(String kind, int count) {
    if (kind.matches("fitting .*|valve|check valve|gauge|skimmer|filter|pump")) {
      written.merge(kind, count, Integer::sum);
    }
  }

  private static String text(MapNode map, String field, String usual) {
    return map.find(field).map(entry -> text(entry.value())).orElse(usual);
  }

  private static String text(Node node) {
    return ((Scalar) node).text();
  }
}
