package rillwright.curves.chart.mark;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import rillwright.curves.chart.layout.TextBlock;

/** Writes blocks of text as text, and tells the canvas where each line is held. */
public final class Words {
  /** Rendering hint with the {@link Anchored} of the next line. */
  public static final RenderingHints.Key ANCHORED = new AnchoredKey();

  private Words() {}

  /** Where a line stands against its x. */
  public enum Anchor {
    START(0),
    MIDDLE(0.5),
    END(1);

    private final double share;

    Anchor(double share) {
      this.share = share;
    }
  }

  /** Where a line is held: its x is there whatever the font's widths are. */
  public record Anchored(Anchor anchor, double x) {}

  private static final class AnchoredKey extends RenderingHints.Key {
    AnchoredKey() {
      super(0);
    }

    @Override
    public boolean isCompatibleValue(Object value) {
      return value instanceof Anchored;
    }
  }

  /** Writes a heading whose top is at y. */
  public static void heading(Graphics2D g, String text, double x, double y) {
    write(g, TextBlock.ofLine(text, Ink.AXIS_TITLE), x, y, Anchor.START, Ink.TEXT);
  }

  /** Writes a block on a white ground, so that grid lines do not run through it. */
  public static void writeOnPaper(Graphics2D g, TextBlock block, Rectangle2D place, Color color) {
    g.setColor(Ink.PAPER);
    g.fill(
        new Rectangle2D.Double(
            place.getX() - 4, place.getY(), place.getWidth() + 8, place.getHeight()));
    write(g, block, place.getX(), place.getY(), Anchor.START, color);
  }

  /** Writes a block whose first line has its top at y. */
  public static void write(
      Graphics2D g, TextBlock block, double x, double y, Anchor anchor, Color color) {
    g.setColor(color);
    g.setFont(block.font());
    double baseline = y + block.ascent();
    for (String line : block.lines()) {
      g.setRenderingHint(ANCHORED, new Anchored(anchor, x));
      double left = x - anchor.share * block.widthOf(line);
      g.drawString(line, (float) left, (float) baseline);
      baseline += block.lineHeight();
    }
  }
}
