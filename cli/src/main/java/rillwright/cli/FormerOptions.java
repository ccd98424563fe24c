package rillwright.cli;

import java.util.Arrays;
import java.util.Map;
import java.util.Set;

/** Options under names that earlier versions had; command lines that use them stay valid. */
final class FormerOptions {
  private static final Map<String, String> TODAY =
      Map.of(
          "--wish", "--target",
          "--upto", "--max-pumps",
          "--each", "--independent",
          "--not-called", "--include-slight",
          "--valve", "--valves");

  /** Commands in which the line of the pump was asked for by {@code --line}. */
  private static final Set<String> OF_A_PUMP = Set.of("duty", "chart", "pumps");

  private FormerOptions() {}

  /** Arguments with today's names; what follows an equals sign stays. */
  static String[] renewed(String[] arguments) {
    boolean ofAPump = arguments.length > 0 && OF_A_PUMP.contains(arguments[0]);
    return Arrays.stream(arguments)
        .map(argument -> renewed(argument, ofAPump))
        .toArray(String[]::new);
  }

  private static String renewed(String argument, boolean ofAPump) {
    int equals = argument.indexOf('=');
    String name = equals < 0 ? argument : argument.substring(0, equals);
    String today = ofAPump && name.equals("--line") ? "--pump" : TODAY.getOrDefault(name, name);
    return today + argument.substring(name.length());
  }
}
