package rillwright.cli.file.size;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rillwright.cli.file.change.Address;
import rillwright.solver.network.LineName;
import rillwright.solver.study.pipechoice.PipeOption.Size;

/**
 * Sizes to be tried together.
 *
 * @param sizes of the pipes of some lines
 * @param changes that make them of the project
 */
public record SizeOption(Map<LineName, Size> sizes, List<String> changes) {
  /** Fields of a pipe that sizes may change. */
  private static final List<String> FIELDS = List.of("size", "material", "inside");

  public SizeOption {
    sizes = Collections.unmodifiableMap(new LinkedHashMap<>(sizes));
    changes = List.copyOf(changes);
  }

  /** These and the sizes of other lines. */
  public SizeOption and(SizeOption other) {
    Map<LineName, Size> all = new LinkedHashMap<>(sizes);
    all.putAll(other.sizes);
    return new SizeOption(all, Stream.concat(changes.stream(), other.changes.stream()).toList());
  }

  /** What is tried, as what judges the sizes takes it. */
  public static List<String> tried(List<SizeOption> options) {
    return options.get(0).sizes.keySet().stream()
        .map(line -> new Address(List.of("lines", line.value(), "pipe")))
        .flatMap(pipe -> FIELDS.stream().map(pipe::below).map(Address::text))
        .toList();
  }
}
