package rillwright.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.file.condition.ProjectConditions;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.field.Uncertain;
import rillwright.cli.file.job.PhotoFolder;
import rillwright.cli.file.part.PartStep;
import rillwright.cli.file.pump.FolderSheets;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Pump;

/** A changed project, of which only what is changed is read, is as if all of it were read. */
class ReadOnceTest {
  private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");
  private static final int CHANGES = 40;

  /** Of what more than one point or line may be read by. */
  private static final List<String> WHOLE =
      List.of(
          "water.temperature=5 C",
          "water.temperature=30 C",
          "show=us",
          "show=metric",
          "site.elevation=900 m",
          "title=Another");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "dry-vault/vault.yaml",
        "fish-pond/pond.yaml",
        "header-pond/troughs.yaml",
        "hidden-reservoir/fall.yaml",
        "long-stream/stream.yaml",
        "old-falls/falls.yaml",
        "old-pump/fall.yaml",
        "small-pond/pond.yaml",
        "twin-falls/ball-valves.yaml",
        "weak-fall/fall.yaml"
      })
  void changedStepByStepItIsAsReadWhole(String example) {
    Path file = Path.of("..", "examples").resolve(example);
    Random random = new Random(1);
    Project project = ProjectReader.read(file, List.of());
    int made = 0;
    for (int i = 0; i < CHANGES; i++) {
      String change = anyChange(project.tree(), random);
      List<String> all = new ArrayList<>(project.changes());
      all.add(change);
      Optional<Project> whole = valid(() -> ProjectReader.read(file, all));
      Project before = project;
      Optional<Project> changed = valid(() -> before.with(List.of(change)));
      assertEquals(whole.isPresent(), changed.isPresent(), change);
      if (whole.isPresent()) {
        assertLike(whole.get(), changed.get());
        assertLike(whole.get(), before.withTree(whole.get().tree()));
        project = changed.get();
        made++;
      }
    }
    assertTrue(made > CHANGES / 4, made + " changes");
    for (var there : ProjectConditions.of(project, List.of()).projects()) {
      assertLike(read(file, there.project().tree()), there.project());
    }
  }

  /** A tree read by itself. */
  private static Project read(Path file, MapNode tree) {
    Path folder = file.resolveSibling("");
    return new ProjectMapping(
            Catalogue.standard(),
            FolderSheets.fenced(folder, List.of()),
            new PhotoFolder(folder),
            file.toString())
        .map(tree, List.of());
  }

  /** What is asked of all lines together is asked again. */
  @Test
  void twoGaugesOfOneNameAreRefused() {
    Path pond = Path.of("..", "examples", "fish-pond", "pond.yaml");
    List<String> same = List.of("lines.supply.gauge.name=before filter");
    Project project = ProjectReader.read(pond, List.of());
    String refused =
        assertThrows(InvalidInput.class, () -> ProjectReader.read(pond, same)).getMessage();
    assertTrue(refused.contains("too; give each gauge its own name"), refused);
    assertEquals(refused, assertThrows(InvalidInput.class, () -> project.with(same)).getMessage());
  }

  @Test
  void whatIsNotChangedIsNotReadAgain() {
    Project project =
        ProjectReader.read(Path.of("..", "examples", "twin-falls", "falls.yaml"), List.of());
    Project changed = project.with(List.of("lines.low.valve.k=3"));
    assertSame(line(project, "high"), line(changed, "high"));
    assertSame(line(project, "supply"), line(changed, "supply"));
    assertNotSame(line(project, "low"), line(changed, "low"));
    Project cold = project.with(List.of("water.temperature=36 F"));
    assertNotSame(line(project, "high"), line(cold, "high"), "a pressure is another head there");
  }

  private static Object line(Project project, String name) {
    return project.network().line(new LineName(name));
  }

  private static Optional<Project> valid(Supplier<Project> read) {
    try {
      return Optional.of(read.get());
    } catch (InvalidInput wrong) {
      return Optional.empty();
    }
  }

  private static void assertLike(Project whole, Project changed) {
    assertEquals(whole.network().points(), changed.network().points());
    assertEquals(written(whole), written(changed));
    assertEquals(shutOffHeadsM(whole), shutOffHeadsM(changed));
    assertEquals(whole.notes(), changed.notes());
    assertEquals(
        whole.uncertain().stream().map(Uncertain::what).toList(),
        changed.uncertain().stream().map(Uncertain::what).toList());
    Set<Node> scalars = Collections.newSetFromMap(new IdentityHashMap<>());
    collect(changed.tree(), scalars);
    changed.uncertain().forEach(it -> assertTrue(scalars.contains(it.written()), it.what()));
    whole
        .network()
        .lines()
        .forEach(
            line ->
                assertEquals(
                    whole.places().ofLine(line.name()), changed.places().ofLine(line.name())));
  }

  /** All that lines are; curves alone are equal only if they are the same. */
  private static List<String> written(Project project) {
    return project.network().lines().stream()
        .map(line -> line.toString().replaceAll("@[0-9a-f]+", ""))
        .toList();
  }

  private static List<Double> shutOffHeadsM(Project project) {
    return project.network().placed(Pump.class).stream()
        .map(pump -> pump.part().set().headAt(0))
        .toList();
  }

  private static void collect(Node node, Set<Node> scalars) {
    if (node instanceof MapNode map) {
      map.entries().forEach(entry -> collect(entry.value(), scalars));
    } else if (node instanceof ListNode list) {
      list.items().forEach(item -> collect(item, scalars));
    } else {
      scalars.add(node);
    }
  }

  /** Some number of a point, a pipe or a part, a little greater or less; now and then a range. */
  private static String anyChange(MapNode tree, Random random) {
    if (random.nextInt(6) == 0) {
      return WHOLE.get(random.nextInt(WHOLE.size()));
    }
    List<String> fields = new ArrayList<>();
    List<String> values = new ArrayList<>();
    tree.findMap("points").orElseThrow().entries().forEach(it -> add("points", it, fields, values));
    for (Entry line : tree.findMap("lines").orElseThrow().entries()) {
      MapNode map = (MapNode) line.value();
      map.find("pipe").ifPresent(pipe -> add("lines." + line.key(), pipe, fields, values));
      List<Entry> parts =
          map.listItems("parts").stream().map(part -> ((MapNode) part).entries().get(0)).toList();
      List<String> steps = PartStep.stepsOf(parts.stream().map(Entry::key).toList());
      for (int i = 0; i < steps.size(); i++) {
        Entry part = parts.get(i);
        add(
            "lines." + line.key(),
            new Entry(steps.get(i), part.keyPlace(), part.value()),
            fields,
            values);
      }
    }
    int any = random.nextInt(fields.size());
    Matcher number = NUMBER.matcher(values.get(any));
    String changed =
        number.replaceFirst(
            it ->
                Double.toString(Double.parseDouble(it.group()) * (0.9 + random.nextInt(3) / 10.0)));
    return fields.get(any) + "=" + (random.nextInt(4) == 0 ? changed + " +/- 5 %" : changed);
  }

  private static void add(String section, Entry named, List<String> fields, List<String> values) {
    String address = section + "." + named.key();
    if (named.value() instanceof MapNode map) {
      map.entries().forEach(field -> add(address, field, fields, values));
    } else if (named.value() instanceof Scalar text && NUMBER.matcher(text.text()).find()) {
      fields.add(address);
      values.add(text.text());
    }
  }
}
