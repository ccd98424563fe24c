package rillwright.cli.json;

import java.util.OptionalDouble;

/**
 * A number and what it is measured in.
 *
 * @param unit as it is written; empty for none
 * @param least that it may be
 * @param beyondLeast whether it must be more than that
 * @param greatest that it may be
 */
public record Quantity(
    String unit, OptionalDouble least, boolean beyondLeast, OptionalDouble greatest)
    implements Value<Double> {
  public static final Quantity NUMBER = of("");
  public static final Quantity FLOW = of("m3/s");
  public static final Quantity METRES = of("m");
  public static final Quantity SPEED = of("m/s");
  public static final Quantity PRESSURE = of("Pa");
  public static final Quantity POWER = of("W").from(0);
  public static final Quantity VOLUME = of("m3").from(0);
  public static final Quantity SECONDS = of("s").from(0);
  public static final Quantity ENERGY = of("kWh").from(0);
  public static final Quantity MONEY = of("currency").from(0);
  public static final Quantity SHARE = of("1");

  /** A quantity in a unit. */
  public static Quantity of(String unit) {
    return new Quantity(unit, OptionalDouble.empty(), false, OptionalDouble.empty());
  }

  /** At least so large. */
  public Quantity from(double value) {
    return new Quantity(unit, OptionalDouble.of(value), false, greatest);
  }

  /** Larger than that. */
  public Quantity above(double value) {
    return new Quantity(unit, OptionalDouble.of(value), true, greatest);
  }

  /** At most so large. */
  public Quantity upTo(double value) {
    return new Quantity(unit, least, beyondLeast, OptionalDouble.of(value));
  }

  /** The same, null where it is not known. */
  public Value<OptionalDouble> orNull() {
    Quantity known = this;
    return new Value<>() {
      @Override
      public void write(Json json, OptionalDouble value) {
        if (value.isPresent()) {
          json.number(value.getAsDouble());
        } else {
          json.nothing();
        }
      }

      @Override
      public String unit() {
        return known.unit();
      }

      @Override
      public void describe(Json schema, Definitions definitions, boolean orNull) {
        known.describe(schema, definitions, true);
      }
    };
  }

  @Override
  public void write(Json json, Double value) {
    json.number(value);
  }

  @Override
  public void describe(Json schema, Definitions definitions, boolean orNull) {
    Plain.type(schema, "number", orNull);
    least.ifPresent(it -> bound(schema, beyondLeast ? "exclusiveMinimum" : "minimum", it));
    greatest.ifPresent(it -> bound(schema, "maximum", it));
  }

  private static void bound(Json schema, String name, double value) {
    schema.name(name).whole(Math.round(value));
  }
}
