package rillwright.cli.examples;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import rillwright.curves.unit.Dimension;
import rillwright.curves.unit.Unit;
import tools.jackson.databind.JsonNode;

/** The numbers of an answer for programs, by what they measure, to find those of a page among. */
final class Figures {
  /** "2,290 gph", "1-1/2 in", "15/16 in". */
  private static final Pattern SHOWN =
      Pattern.compile("((?:\\d+-)?\\d+/\\d+|[\\d,]*\\.?\\d+)\\s(%|[a-zA-Z][\\w/]*)");

  private static final Map<String, Dimension> ENDINGS =
      Map.of(
          "M", Dimension.LENGTH,
          "M3PerS", Dimension.FLOW,
          "W", Dimension.POWER,
          "Pa", Dimension.PRESSURE,
          "M2", Dimension.AREA,
          "M3", Dimension.VOLUME,
          "S", Dimension.TIME,
          "MPerS", Dimension.SPEED,
          "M3PerSPerDegree", Dimension.FLOW);

  private static final Map<String, Dimension> UNITS =
      Map.of(
          "m", Dimension.LENGTH,
          "s", Dimension.TIME,
          "Pa", Dimension.PRESSURE,
          "W", Dimension.POWER,
          "m3/s", Dimension.FLOW,
          "m/s", Dimension.SPEED);

  private final Map<Dimension, List<Double>> numbers = new EnumMap<>(Dimension.class);

  Figures(JsonNode answer) {
    gather("", answer);
  }

  /** Those of a project file too, since a page repeats them. */
  Figures with(String file) {
    for (MatchResult written : SHOWN.matcher(file).results().toList()) {
      Unit.find(written.group(2))
          .filter(unit -> measures(unit.dimension()))
          .ifPresent(
              unit -> add(unit.dimension(), unit.toSi(number(written.group(1).replace(",", "")))));
    }
    return this;
  }

  private void gather(String name, JsonNode node) {
    if (node.isNumber()) {
      ENDINGS.entrySet().stream()
          .filter(ending -> name.matches(".*[a-z0-9]" + ending.getKey() + "|" + ending.getKey()))
          .forEach(ending -> add(ending.getValue(), node.asDouble()));
    }
    if (name.matches("days[A-Z]\\w*") && node.isNumber()) {
      add(Dimension.TIME, Unit.DAY.toSi(node.asDouble()));
    }
    if (name.equals("lossMPerDay") && node.isNumber()) {
      add(Dimension.LENGTH, node.asDouble());
    }
    if (name.equals("brinkDepthM") && node.isNumber()) { // the page says within 30 %
      add(Dimension.LENGTH, 0.7 * node.asDouble());
      add(Dimension.LENGTH, 1.3 * node.asDouble());
    }
    if (node.has("gravelM3") && node.has("volumeM3")) {
      add(Dimension.VOLUME, node.get("volumeM3").asDouble() + node.get("gravelM3").asDouble());
    }
    if (node.isObject() && node.has("unit")) {
      Optional.ofNullable(UNITS.get(node.get("unit").asString()))
          .ifPresent(
              dimension ->
                  node.properties().stream()
                      .filter(member -> member.getValue().isNumber())
                      .forEach(member -> add(dimension, member.getValue().asDouble())));
    }
    for (Map.Entry<String, JsonNode> member : node.properties()) {
      gather(isEnded(name) ? name : member.getKey(), member.getValue());
      if (member.getKey().matches("words|size")) {
        with(member.getValue().asString());
      }
    }
    for (JsonNode element : node.isArray() ? node : List.<JsonNode>of()) {
      gather(name, element);
    }
  }

  private static boolean isEnded(String name) {
    return name.matches(".*[a-z](" + String.join("|", ENDINGS.keySet()) + ")");
  }

  private void add(Dimension dimension, double number) {
    numbers.computeIfAbsent(dimension, it -> new ArrayList<>()).add(number);
  }

  /** The figures of a text that are none of the numbers, rounded as they are shown. */
  List<String> strangersIn(String text) {
    return SHOWN.matcher(text).results().filter(this::isStranger).map(MatchResult::group).toList();
  }

  private boolean isStranger(MatchResult shown) {
    Optional<Unit> unit = Unit.find(shown.group(2)).filter(it -> measures(it.dimension()));
    if (unit.isEmpty()) {
      return false;
    }
    String digits = shown.group(1).replace(",", "");
    double number = number(digits);
    Dimension dimension = unit.orElseThrow().dimension();
    double places = dimension == Dimension.VOLUME ? 1 : 0.5; // parts of a sum are made to add up
    double apart = unit.orElseThrow().toSi(places * lastPlace(digits, number)) * (1 + 1e-6);
    double si = unit.orElseThrow().toSi(number);
    return numbers.getOrDefault(dimension, List.of()).stream()
        .noneMatch(candidate -> Math.abs(Math.abs(candidate) - si) <= apart);
  }

  private static boolean measures(Dimension dimension) {
    return ENDINGS.containsValue(dimension);
  }

  private static double number(String digits) {
    double sum = 0;
    for (String part : digits.split("-")) {
      String[] ratio = part.split("/");
      sum += Double.parseDouble(ratio[0]) / (ratio.length > 1 ? Double.parseDouble(ratio[1]) : 1);
    }
    return sum;
  }

  /** The last place shown, at least the third figure; fractions are sixteenths. */
  private static double lastPlace(String digits, double number) {
    if (digits.contains("/")) {
      return 1 / 16.0;
    }
    int point = digits.indexOf('.');
    double written = point < 0 ? 1 : Math.pow(10, point + 1 - digits.length());
    double third = number > 0 ? Math.pow(10, Math.floor(Math.log10(number)) - 2) : 0;
    return Math.max(written, third);
  }
}
