package rillwright.solver.stream.time;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToIntFunction;
import rillwright.solver.network.PointName;

/** The water of streams: of each a row of stores, the first filled by a fall, the last let home. */
final class StreamStores {
  private static final double NOTICEABLE = 0.01;

  /** So little is nothing. */
  private static final double TRICKLE_M3_PER_S = 1e-5;

  private final Map<PointName, Row> rows = new LinkedHashMap<>();

  /**
   * The stores of a stream.
   *
   * @param first the number of its first store; the others follow it
   */
  private record Row(StreamWay way, int first) {
    int last() {
      return first + way.links().size() - 1;
    }

    boolean isEmpty() {
      return way.links().isEmpty();
    }

    /** What a store lets on, m³/s. */
    double outflow(int store, double[] levels) {
      return way.links().get(store - first).outflow().applyAsDouble(levels[store]);
    }
  }

  /**
   * Takes in a stream.
   *
   * @param fall from which it comes
   * @param first the number of its first store
   */
  void add(PointName fall, StreamWay way, int first) {
    rows.put(fall, new Row(way, first));
  }

  /** The store into which water over a fall goes first; empty if no stream takes it. */
  Optional<Integer> entryFrom(PointName fall) {
    return Optional.ofNullable(rows.get(fall)).filter(row -> !row.isEmpty()).map(Row::first);
  }

  /**
   * Adds to what each store gains, m³/s.
   *
   * @param home the store into which the stream from a fall runs at last
   */
  void move(double[] levels, double[] net, ToIntFunction<PointName> home) {
    rows.forEach(
        (fall, row) -> {
          for (int store = row.first(); store <= row.last(); store++) {
            double flow = row.outflow(store, levels);
            net[store] -= flow;
            net[store == row.last() ? home.applyAsInt(fall) : store + 1] += flow;
          }
        });
  }

  /** What each stream brings home at some levels, m³/s, by its name. */
  Map<String, Double> returnFlowM3PerS(double[] levels) {
    Map<String, Double> home = new LinkedHashMap<>();
    for (Row row : rows.values()) {
      if (!row.isEmpty()) {
        home.put(row.way().name(), row.outflow(row.last(), levels));
      }
    }
    return home;
  }

  /**
   * Whether one of them brings home less, or more, than its first store lets on, by a hundredth.
   */
  boolean areFilling(double[] levels) {
    for (Row row : rows.values()) {
      if (!row.isEmpty()) {
        double enters = row.outflow(row.first(), levels);
        double home = row.outflow(row.last(), levels);
        double noticeable = Math.max(TRICKLE_M3_PER_S, NOTICEABLE * Math.max(enters, home));
        if (Math.abs(enters - home) > noticeable) {
          return true;
        }
      }
    }
    return false;
  }

  /** Head over the crest of each pool, m, by its stream and its place in it. */
  Map<String, Double> poolHeadsM(double[] levels) {
    Map<String, Double> heads = new LinkedHashMap<>();
    for (Row row : rows.values()) {
      int store = row.first();
      for (StreamWay.Link link : row.way().links()) {
        double head = Math.max(0, levels[store]);
        link.pool().ifPresent(pool -> heads.put(pool, head));
        store++;
      }
    }
    return heads;
  }
}
