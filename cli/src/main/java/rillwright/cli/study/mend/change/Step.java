package rillwright.cli.study.mend.change;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A change to one thing.
 *
 * @param action what is done
 * @param at the line or point at which
 * @param part of the line, as people call it: "ball valve"; empty where the action says it
 * @param figure what it becomes: degrees from open, a share, K, m, a number of pumps; 0 without one
 * @param name what it becomes, where that has a name: a size, a type, a model; empty without one
 * @param set as any command takes it
 * @param price of what is bought for it; empty if it is not known
 */
public record Step(
    Action action,
    String at,
    String part,
    double figure,
    String name,
    List<String> set,
    OptionalDouble price) {
  /** The price of what is only turned or cleaned. */
  public static final OptionalDouble NOTHING = OptionalDouble.of(0);

  /**
   * Whether another does the same to the same thing, if by another figure, and as much at least.
   */
  boolean isLike(Step other) {
    return action == other.action
        && effort() <= other.effort()
        && at.equals(other.at)
        && part.equals(other.part)
        && (action == Action.LARGER_POND || name.equals(other.name));
  }

  /** Its figure where more of it is more work; equal for all others. */
  private double effort() {
    return switch (action) {
      case LARGER_POND, FULLER, WIDER_MOUTH -> figure;
      case LOWER_SILL -> -figure;
      default -> 0;
    };
  }

  public Step {
    set = List.copyOf(set);
  }
}
