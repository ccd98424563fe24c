package rillwright.curves.chart.content;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import rillwright.curves.unit.Dimension;
import rillwright.curves.unit.Unit;

/**
 * Long sections: what water meets on its ways, levels to scale, distances stretched for room. All
 * levels are SI; the unit says how the scale shows them.
 *
 * @param title one line, shown as plain text
 * @param caption a sentence below it; may be empty
 * @param levelUnit of the scale, a length
 * @param ways one below the other, one or more
 */
public record SectionChart(String title, String caption, Unit levelUnit, List<Way> ways)
    implements Chart {
  public SectionChart {
    ways = List.copyOf(ways);
    if (levelUnit.dimension() != Dimension.LENGTH || ways.isEmpty()) {
      throw new IllegalArgumentException("a section needs a way and a scale of lengths");
    }
  }

  /** The same of other ways. */
  public SectionChart with(List<Way> others) {
    return new SectionChart(title, caption, levelUnit, others);
  }

  /** What is drawn. */
  public enum Symbol {
    BASIN,
    CHAMBER,
    SKIMMER,
    TEE,
    PIPE,
    FITTINGS,
    VALVE,
    CHECK_VALVE,
    PUMP,
    GAUGE,
    FILTER,
    HIGH_POINT,
    LOSS,
    FALL,
    OUTLET,
    FALLING,
    REACH,
    POOL,
    STEP;

    /** Whether a pipe runs through it. */
    public boolean isInPipe() {
      return compareTo(TEE) >= 0 && compareTo(LOSS) <= 0;
    }
  }

  /**
   * A way of the water.
   *
   * @param name what stands above it
   * @param pieces in the order the water meets them, one or more
   */
  public record Way(String name, List<Piece> pieces) {
    public Way {
      pieces = List.copyOf(pieces);
      if (pieces.isEmpty()) {
        throw new IllegalArgumentException("way \"" + name + "\" needs a piece");
      }
    }
  }

  /**
   * What the water meets.
   *
   * @param symbol how it is drawn
   * @param lengthM its length along the way, m; 0 for what has none
   * @param name what it is
   * @param figures what is to be said of it, line by line
   * @param start where the water comes from
   * @param end where it goes
   * @param water open water in it
   */
  public record Piece(
      Symbol symbol,
      double lengthM,
      String name,
      List<String> figures,
      Side start,
      Side end,
      Optional<OpenWater> water) {
    public Piece {
      figures = List.copyOf(figures);
      Finite.check("length", lengthM);
    }
  }

  /**
   * Levels at one side of a piece, m.
   *
   * @param levelM of the pipe, the crest or the bed
   * @param sure whether the level is that of what is built, or nobody knows it
   * @param headM total head
   * @param gaugeHeadM head that a gauge shows, its elevation added
   * @param restHeadM where water stands with the pumps off
   * @param shutOffHeadM head against shut valves
   */
  public record Side(
      double levelM,
      boolean sure,
      OptionalDouble headM,
      OptionalDouble gaugeHeadM,
      OptionalDouble restHeadM,
      OptionalDouble shutOffHeadM) {
    public Side {
      Finite.check("level", levelM);
    }

    /** By how much a pipe there lies above the head that a gauge would show, m; if it does. */
    public OptionalDouble suctionM() {
      return sure && gaugeHeadM.isPresent()
          ? OptionalDouble.of(levelM - gaugeHeadM.getAsDouble())
          : OptionalDouble.empty();
    }
  }

  /**
   * Open water, m.
   *
   * @param startM its surface where it comes in; empty where not known
   * @param endM its surface where it goes out
   * @param bottomM below it
   * @param edgeM of what holds it: ground, top or bank
   */
  public record OpenWater(
      OptionalDouble startM, OptionalDouble endM, double bottomM, OptionalDouble edgeM) {
    public OpenWater {
      Finite.check("bottom", bottomM);
    }

    /** Standing at one level. */
    public static OpenWater standing(OptionalDouble levelM, double bottomM, OptionalDouble edgeM) {
      return new OpenWater(levelM, levelM, bottomM, edgeM);
    }
  }
}
