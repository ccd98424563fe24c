package rillwright.curves.chart.mark;

import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.util.LinkedHashMap;
import java.util.Map;
import rillwright.curves.chart.layout.Obstacles;
import rillwright.curves.chart.layout.Polyline;

/** Letters at the ends of curves that strokes alone do not tell apart: A, B, C … in their order. */
public final class EndLetters {
  private static final double STEP = 0.02;
  private static final double LEAST_SHARE = 0.3;
  private static final double APART = 2 * LetterMark.RADIUS + 3;

  private final Map<String, Point2D> places = new LinkedHashMap<>();

  /** The letter of the curve of a number, from 0. */
  public static String letter(int number) {
    return String.valueOf((char) ('A' + number % 26));
  }

  /** Puts the letter of a curve near the end of its visible piece, clear of those before. */
  public void add(int number, Polyline piece) {
    double share = 1;
    while (share > LEAST_SHARE && !isClear(piece.at(share))) {
      share -= STEP;
    }
    places.put(letter(number), piece.at(share));
  }

  private boolean isClear(Point2D at) {
    return places.values().stream().allMatch(place -> place.distance(at) >= APART);
  }

  public void paint(Graphics2D g) {
    places.forEach((letter, at) -> LetterMark.draw(g, letter, at));
  }

  public void addTo(Obstacles obstacles) {
    places.values().forEach(at -> obstacles.add(at, LetterMark.RADIUS + 2));
  }
}
