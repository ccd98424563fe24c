package rillwright.cli.study.jobsheet.materials;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.cli.file.Project;
import rillwright.cli.study.mend.change.Bought;

/**
 * What a job is built of.
 *
 * @param items by kind, in the order in which the water meets them
 * @param currency of all prices, where one is known
 */
public record Materials(List<Item> items, Optional<String> currency) {
  public Materials {
    items = List.copyOf(items);
  }

  /** The materials of a project. */
  public static Materials of(Project project) {
    return new Materials(TakeOff.of(project), Bought.currency(project));
  }

  /** What all that has a price costs; empty if nothing has one. */
  public OptionalDouble total() {
    return items.stream().anyMatch(item -> item.price().isPresent())
        ? OptionalDouble.of(items.stream().mapToDouble(item -> item.price().orElse(0)).sum())
        : OptionalDouble.empty();
  }

  /** Whether everything on the list has a price. */
  public boolean isPriced() {
    return items.stream().allMatch(item -> item.price().isPresent());
  }
}
