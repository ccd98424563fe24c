package rillwright.curves.chart.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LabelPlacerTest {
  private static final Rectangle2D AREA = new Rectangle2D.Double(0, 0, 1000, 600);
  private static final List<Double> SHARES = List.of(0.1, 0.3, 0.5, 0.7, 0.9);

  private static Polyline curve(SplittableRandom random) {
    double start = random.nextDouble(600);
    double slope = random.nextDouble(-0.5, 0.5);
    List<Point2D> points = new ArrayList<>();
    for (int x = 0; x <= 1000; x += 25) {
      points.add(new Point2D.Double(x, start + slope * x + 40 * Math.sin(x / 200.0)));
    }
    return new Polyline(points);
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void labelsCoverNoCurveAndNoOtherLabel(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Obstacles obstacles = new Obstacles(AREA);
    List<Polyline> curves = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      curve(random).within(AREA).forEach(curves::add);
    }
    curves.forEach(obstacles::add);
    LabelPlacer placer = new LabelPlacer(obstacles);
    List<Rectangle2D> labels = new ArrayList<>();
    for (Polyline curve : curves) {
      placer.near(180, 60, curve.at(0.5)).ifPresent(labels::add);
      placer.beside(90, 28, curve, SHARES).ifPresent(labels::add);
    }
    assertTrue(labels.size() > 6, "seed " + seed + ": " + labels.size() + " labels");
    for (int i = 0; i < labels.size(); i++) {
      Rectangle2D label = labels.get(i);
      assertTrue(AREA.contains(label), "seed " + seed);
      assertTrue(curves.stream().noneMatch(curve -> curve.crosses(label)), "seed " + seed);
      for (Rectangle2D other : labels.subList(0, i)) {
        assertFalse(label.intersects(other), "seed " + seed);
      }
    }
  }

  @Test
  void aLabelStandsNearerToItsCurveThanToAnyOther() {
    Polyline upper =
        new Polyline(List.of(new Point2D.Double(0, 300), new Point2D.Double(1000, 300)));
    Polyline lower =
        new Polyline(List.of(new Point2D.Double(0, 345), new Point2D.Double(1000, 345)));
    Obstacles obstacles = new Obstacles(AREA);
    obstacles.add(upper);
    obstacles.add(lower);
    LabelPlacer placer = new LabelPlacer(obstacles);
    assertTrue(placer.beside(90, 28, upper, SHARES).orElseThrow().getMaxY() < 300);
    assertTrue(placer.beside(90, 28, lower, SHARES).orElseThrow().getMinY() > 345);
  }

  @Test
  void whereThereIsNoRoomThereIsNoLabel() {
    Obstacles obstacles = new Obstacles(AREA);
    Polyline curve =
        new Polyline(List.of(new Point2D.Double(0, 300), new Point2D.Double(1000, 300)));
    obstacles.add(curve);
    LabelPlacer placer = new LabelPlacer(obstacles);
    assertEquals(Optional.empty(), placer.beside(1200, 28, curve, SHARES));
    assertEquals(Optional.empty(), placer.near(400, 290, new Point2D.Double(500, 300)));
  }
}
