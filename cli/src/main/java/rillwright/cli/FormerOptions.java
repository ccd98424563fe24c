package rillwright.cli;

import java.util.Arrays;
import java.util.Map;

/** Options under names that earlier versions had; command lines that use them stay valid. */
final class FormerOptions {
  private static final Map<String, String> TODAY =
      Map.of(
          "--wish", "--target",
          "--upto", "--max-pumps",
          "--each", "--independent",
          "--not-called", "--include-slight");

  private FormerOptions() {}

  /** Arguments with today's names; what follows an equals sign stays. */
  static String[] renewed(String[] arguments) {
    return Arrays.stream(arguments).map(FormerOptions::renewed).toArray(String[]::new);
  }

  private static String renewed(String argument) {
    int equals = argument.indexOf('=');
    String name = equals < 0 ? argument : argument.substring(0, equals);
    return TODAY.getOrDefault(name, name) + argument.substring(name.length());
  }
}
