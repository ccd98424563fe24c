package rillwright.cli.page.desk;

import java.util.Map;
import java.util.Optional;
import rillwright.cli.file.Show;

/** What a new point or part is at first, to be changed at once. */
public final class NewPieces {
  private static final Map<String, String> PARTS_US =
      Map.of(
          "run", "run: 10 ft",
          "fitting", "fitting: {type: elbow 90}",
          "valve", "valve: {type: ball, open: 100 %, adjustable: yes}",
          "check valve", "check valve: {type: swing}",
          "skimmer", "skimmer: {width: 12 in, height: 6 in, sill: -5 in}",
          "filter", "filter: {rating: {flow: 3000 gph, head: 1 ft}}",
          "pump", "pump: to be chosen",
          "gauge", "gauge: {name: G, elevation: 0 ft}",
          "high point", "high point: 3 ft",
          "loss", "loss: {k: 1}");

  private static final Map<String, String> PARTS_METRIC =
      Map.of(
          "run", "run: 3 m",
          "skimmer", "skimmer: {width: 300 mm, height: 150 mm, sill: -130 mm}",
          "filter", "filter: {rating: {flow: 11 m3/h, head: 0.3 m}}",
          "gauge", "gauge: {name: G, elevation: 0 m}",
          "high point", "high point: 1 m");

  private static final Map<String, String> POINTS_US =
      Map.of(
          "fall", "{kind: fall, crest: 3 ft, width: 24 in, lip: stone, target: 100 gph/in}",
          "tee", "{kind: tee, elevation: 0 ft}",
          "chamber", "{kind: chamber, floor: -30 in, intake: -20 in}",
          "basin", "{kind: basin, level: 0 ft}",
          "outlet", "{kind: outlet, elevation: 1 ft}");

  private static final Map<String, String> POINTS_METRIC =
      Map.of(
          "fall", "{kind: fall, crest: 1 m, width: 600 mm, lip: stone, target: 15 m3/h/m}",
          "tee", "{kind: tee, elevation: 0 m}",
          "chamber", "{kind: chamber, floor: -750 mm, intake: -500 mm}",
          "basin", "{kind: basin, level: 0 m}",
          "outlet", "{kind: outlet, elevation: 0.3 m}");

  private NewPieces() {}

  /** A new part of a kind; empty if there is no such kind. */
  public static Optional<String> part(String kind, Show units) {
    String us = PARTS_US.get(kind);
    return Optional.ofNullable(units == Show.US ? us : PARTS_METRIC.getOrDefault(kind, us));
  }

  /** The fields of the pipe of a new line. */
  public static String pipe(Show units) {
    return units == Show.US
        ? "material: flexible PVC, size: 2 in"
        : "material: PE pressure hose, size: 63 mm";
  }

  /** A new point of a kind; empty if there is no such kind. */
  public static Optional<String> point(String kind, Show units) {
    return Optional.ofNullable((units == Show.US ? POINTS_US : POINTS_METRIC).get(kind));
  }
}
