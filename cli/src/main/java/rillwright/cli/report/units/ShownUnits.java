package rillwright.cli.report.units;

import java.util.List;
import java.util.Optional;
import rillwright.cli.file.quantity.MetricExamples;
import rillwright.cli.wording.FindingHints;
import rillwright.curves.unit.Unit;
import rillwright.solver.finding.Wording;

/** The units in which a project is shown, and how far numbers are rounded: see the package. */
public final class ShownUnits implements Wording {
  /** Gallons per hour, feet, inches, psi. */
  public static final ShownUnits US =
      new ShownUnits(
          new Scale(Unit.GALLON_PER_HOUR, Scale.COMPUTED, "1"),
          new Scale(Unit.GALLON_PER_HOUR_PER_INCH, Scale.COMPUTED, "1"),
          new Scale(Unit.FOOT, Scale.WRITTEN, "0.01"),
          new Scale(Unit.INCH, Scale.COMPUTED, "0.1"),
          new Scale(Unit.FOOT, Scale.COMPUTED, "0.1"),
          new Scale(Unit.FOOT_PER_SECOND, Scale.COMPUTED, "0.01"),
          new Scale(Unit.PSI, Scale.CLOSE, "0.1"),
          new Scale(Unit.GALLON, Scale.COMPUTED, "1"),
          new Scale(Unit.INCH, Scale.WRITTEN, "0.001"),
          VisitTools.US,
          Optional.of(new Scale(Unit.INCH, Scale.WRITTEN, "0.01")));

  /** Cubic metres per hour, metres, millimetres, kilopascals. */
  public static final ShownUnits METRIC =
      new ShownUnits(
          new Scale(Unit.CUBIC_METRE_PER_HOUR, Scale.COMPUTED, "0.01"),
          new Scale(Unit.CUBIC_METRE_PER_HOUR_PER_METRE, Scale.COMPUTED, "0.1"),
          new Scale(Unit.METRE, Scale.WRITTEN, "0.001"),
          new Scale(Unit.MILLIMETRE, Scale.COMPUTED, "1"),
          new Scale(Unit.METRE, Scale.COMPUTED, "0.01"),
          new Scale(Unit.METRE_PER_SECOND, Scale.COMPUTED, "0.01"),
          new Scale(Unit.KILOPASCAL, Scale.CLOSE, "0.1"),
          new Scale(Unit.LITRE, Scale.COMPUTED, "1"),
          new Scale(Unit.MILLIMETRE, Scale.WRITTEN, "0.1"),
          VisitTools.METRIC,
          Optional.empty());

  private static final double INCHES_A_FOOT = 12;
  private static final double QUARTERS = 4;
  private static final double HUNDREDTHS = 100;
  private static final Scale POWER = new Scale(Unit.WATT, Scale.CLOSE, "1");
  private static final Scale SECONDS = new Scale(Unit.SECOND, Scale.COMPUTED, "0.1");
  private final Scale flow;
  private final Scale flowPerWidth;
  private final Scale length;
  private final Scale depth;
  private final Scale head;
  private final Scale velocity;
  private final Scale pressure;
  private final Scale volume;
  private final Scale bore;
  private final VisitTools tools;
  private final Optional<Scale> shortLength;

  private ShownUnits(
      Scale flow,
      Scale flowPerWidth,
      Scale length,
      Scale depth,
      Scale head,
      Scale velocity,
      Scale pressure,
      Scale volume,
      Scale bore,
      VisitTools tools,
      Optional<Scale> shortLength) {
    this.flow = flow;
    this.flowPerWidth = flowPerWidth;
    this.length = length;
    this.depth = depth;
    this.head = head;
    this.velocity = velocity;
    this.pressure = pressure;
    this.volume = volume;
    this.bore = bore;
    this.tools = tools;
    this.shortLength = shortLength;
  }

  @Override
  public String flow(double flowM3PerS) {
    return flow.with(flowM3PerS);
  }

  @Override
  public String writtenFlow(double flowM3PerS) {
    return flow.written(flowM3PerS);
  }

  /** A flow for each unit of width, from m²/s: "125 gph/in". */
  public String flowPerWidth(double flowM2PerS) {
    return flowPerWidth.with(flowM2PerS);
  }

  @Override
  public String length(double lengthM) {
    return shortLength.isPresent() && isThoughtInInches(lengthM)
        ? shortLength.get().with(lengthM)
        : length.with(lengthM);
  }

  private static boolean isThoughtInInches(double lengthM) {
    double inches = Unit.INCH.fromSi(Math.abs(lengthM));
    boolean written = isWhole(QUARTERS * inches) && !isWhole(inches / INCHES_A_FOOT);
    boolean neither = !isWhole(HUNDREDTHS * inches / INCHES_A_FOOT) && inches < 2 * INCHES_A_FOOT;
    return inches < 4 * INCHES_A_FOOT && (written || neither);
  }

  private static boolean isWhole(double number) {
    return Math.abs(number - Math.rint(number)) < 1e-6;
  }

  /** A level above the datum, all in one unit, from m: "-3.4 in", "86 in", "0.350 m". */
  @Override
  public String level(double levelM) {
    return shortLength.isPresent() ? Levels.inInches(levelM) : Levels.inMetres(levelM);
  }

  /** A width that somebody wrote down, from m: "14.5 in". */
  public String width(double widthM) {
    return depth.written(widthM);
  }

  /** A head that somebody wrote down, from m: "22.5 ft". */
  public String writtenHead(double headM) {
    return head.written(headM);
  }

  @Override
  public String depth(double depthM) {
    return depth.with(depthM);
  }

  /** A depth as near as it is to be distinguished from others, from m: "0.72 in", "18.5 mm". */
  public String fineDepth(double depthM) {
    String step = depth.unit() == Unit.INCH ? "0.01" : "0.5";
    return new Scale(depth.unit(), Scale.CLOSE, step).with(depthM);
  }

  /** A small pressure, from Pa: "0.25 psi", "1.7 kPa". */
  public String finePressure(double pressurePa) {
    return new Scale(pressure.unit(), Scale.COMPUTED, "0.05").with(pressurePa);
  }

  /** A range of depths, from m: "0.7 to 1.1 in". */
  public String depths(double lowM, double highM) {
    return depth.between(lowM, highM);
  }

  @Override
  public String head(double headM) {
    return head.with(headM);
  }

  @Override
  public String velocity(double velocityMPerS) {
    return velocity.with(velocityMPerS);
  }

  @Override
  public String velocityLimit(double velocityMPerS) {
    return new Scale(velocity.unit(), 2, "0.1").with(velocityMPerS);
  }

  @Override
  public String pressure(double pressurePa) {
    return pressure.with(pressurePa);
  }

  /** A range of pressures, from Pa: "5.5 to 6.1 psi". */
  public String pressures(double lowPa, double highPa) {
    return pressure.between(lowPa, highPa);
  }

  @Override
  public String power(double powerW) {
    return POWER.with(powerW);
  }

  /** A range of powers, from W: "385 to 405 W". */
  public String powers(double lowW, double highW) {
    return POWER.between(lowW, highW);
  }

  @Override
  public String volume(double volumeM3) {
    return volume.with(volumeM3);
  }

  @Override
  public List<String> volumes(List<Double> partsM3) {
    return volume.parts(partsM3);
  }

  /** An inside diameter, from m: "2.049 in". */
  public String bore(double diameterM) {
    return bore.with(diameterM);
  }

  @Override
  public String share(double share) {
    return Figures.ofStep(100 * share, "1") + " %";
  }

  @Override
  public String hint(String code) {
    return equals(METRIC) ? MetricExamples.in(FindingHints.of(code)) : FindingHints.of(code);
  }

  /** A plain number, such as a loss coefficient or a price: four figures. */
  public String number(double number) {
    return Figures.of(number, 4, "0.001");
  }

  /** A very small number, such as of a roughness: "0.0015". */
  public String fine(double number) {
    return Figures.of(number, Scale.CLOSE, "0.000001");
  }

  /** An amount that is computed, of energy or money: three figures, nothing after the point. */
  public String amount(double amount) {
    return Figures.of(amount, Scale.COMPUTED, "1");
  }

  /** How often something happens, or what a size adds: three figures. */
  public String computed(double number) {
    return Figures.of(number, Scale.COMPUTED, "0.01");
  }

  /** A range of seconds: "4.2 to 5.6 s". */
  public String secondsBetween(double low, double high) {
    return SECONDS.between(low, high);
  }

  /** A short distance that need not be exact, from m: "3 in", "80 mm". */
  public String distance(double distanceM) {
    return new Scale(depth.unit(), 2, shortLength.isPresent() ? "1" : "10").with(distanceM);
  }

  /** A time of minutes to days, from s: "31 minutes", "2.4 hours". */
  @Override
  public String duration(double seconds) {
    double hours = Unit.HOUR.fromSi(seconds);
    String minutes = Figures.of(Unit.MINUTE.fromSi(seconds), Scale.COMPUTED, "1");
    return hours < 2
        ? minutes + (minutes.equals("1") ? " minute" : " minutes")
        : Figures.of(hours, Scale.COMPUTED, "0.1") + " hours";
  }

  /** A number of days: "0.8 days", "12 days". */
  public String days(double days) {
    return Figures.of(days, Scale.COMPUTED, days < 10 ? "0.1" : "1") + " days";
  }

  /** A number of seconds: "5.2 s", "45 s". */
  public String seconds(double seconds) {
    return SECONDS.with(seconds);
  }

  /** Buckets, rulers and gauges. */
  public VisitTools tools() {
    return tools;
  }

  /** Over what length friction is shown: "100 ft", "100 m". */
  public String frictionLength() {
    return "100 " + head.unit().symbol();
  }

  /** Head lost over {@link #frictionLength()}, from m for each metre: "4.2 ft", "3.1 m". */
  public String frictionOverLength(double headMPerM) {
    return head.with(100 * head.unit().toSi(1) * headMPerM);
  }

  /** The unit of flows. */
  public Unit flowUnit() {
    return flow.unit();
  }

  /** The unit of depths. */
  public Unit depthUnit() {
    return depth.unit();
  }

  /** The unit of heads. */
  public Unit headUnit() {
    return head.unit();
  }

  /** The units named once, for a reader who wonders: "gph, ft, in, ft/s, psi". */
  public List<String> symbols() {
    return List.of(flow, length, depth, velocity, pressure).stream()
        .map(scale -> scale.unit().symbol())
        .toList();
  }
}
