package rillwright.curves.chart;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.imageio.ImageIO;
import rillwright.curves.chart.content.CurvePoint;
import rillwright.curves.chart.content.CurveSeries;
import rillwright.curves.chart.content.FlowMark;
import rillwright.curves.chart.content.HeadMark;
import rillwright.curves.chart.content.OperatingChart;
import rillwright.curves.chart.content.OperatingPoint;
import rillwright.curves.chart.content.PowerSeries;
import rillwright.curves.chart.content.PowerSeries.PowerPoint;
import rillwright.curves.chart.content.PumpCurveSeries;
import rillwright.curves.unit.Unit;
import rillwright.solver.law.pump.PumpCurve;
import rillwright.solver.law.pump.PumpPoint;

/** Charts of invented pumps and systems. {@link #main} writes them to look at. */
final class Samples {
  private Samples() {}

  static PumpCurve pump(double flowGph, double headFt, double powerW) {
    double[] flows = {0, 0.2, 0.4, 0.6, 0.8, 1};
    double[] heads = {1, 0.96, 0.87, 0.73, 0.53, 0.26};
    double[] powers = {0.76, 0.84, 0.92, 0.97, 1, 0.99};
    List<PumpPoint> points = new ArrayList<>();
    for (int i = 0; i < flows.length; i++) {
      points.add(
          new PumpPoint(
              Unit.GALLON_PER_HOUR.toSi(flows[i] * flowGph),
              Unit.FOOT.toSi(heads[i] * headFt),
              OptionalDouble.of(powers[i] * powerW)));
    }
    return new PumpCurve(points);
  }

  static PumpCurveSeries series(String name, PumpCurve curve) {
    double last = curve.lastFlowM3PerS();
    List<CurvePoint> published = new ArrayList<>();
    List<CurvePoint> beyond = new ArrayList<>();
    for (int i = 0; i <= 60; i++) {
      double flow = last * i / 60;
      published.add(new CurvePoint(flow, curve.headAt(flow)));
      double further = last * (1 + 0.4 * i / 60);
      beyond.add(new CurvePoint(further, curve.headAt(further)));
    }
    List<CurvePoint> sheet =
        curve.points().stream()
            .map(point -> new CurvePoint(point.flowM3PerS(), point.headM()))
            .toList();
    return new PumpCurveSeries(name, published, beyond, sheet);
  }

  static double systemHeadM(double flowM3PerS, double liftFt, double at4000GphFt) {
    double share = Unit.GALLON_PER_HOUR.fromSi(flowM3PerS) / 4000;
    return Unit.FOOT.toSi(liftFt + (at4000GphFt - liftFt) * Math.pow(share, 1.85));
  }

  static CurveSeries system(String name, double liftFt, double at4000GphFt) {
    List<CurvePoint> points = new ArrayList<>();
    for (int i = 0; i <= 80; i++) {
      double flow = Unit.GALLON_PER_HOUR.toSi(8000.0 * i / 80);
      points.add(new CurvePoint(flow, systemHeadM(flow, liftFt, at4000GphFt)));
    }
    return new CurveSeries(name, points);
  }

  /** Where pump and system meet, found by halving. */
  static OperatingPoint meeting(PumpCurve pump, double liftFt, double at4000GphFt, Unit flowUnit) {
    double low = 0;
    double high = 2 * pump.lastFlowM3PerS();
    for (int i = 0; i < 60; i++) {
      double flow = (low + high) / 2;
      if (pump.headAt(flow) > systemHeadM(flow, liftFt, at4000GphFt)) {
        low = flow;
      } else {
        high = flow;
      }
    }
    double head = pump.headAt(low);
    return new OperatingPoint(
        low,
        head,
        List.of(
            String.format(
                java.util.Locale.ROOT,
                flowUnit == Unit.GALLON_PER_HOUR ? "%,.0f %s at %.1f %s" : "%,.1f %s at %.2f %s",
                flowUnit == Unit.GALLON_PER_HOUR
                    ? 100 * Math.rint(flowUnit.fromSi(low) / 100)
                    : flowUnit.fromSi(low),
                flowUnit.symbol(),
                flowUnit == Unit.GALLON_PER_HOUR ? Unit.FOOT.fromSi(head) : head,
                flowUnit == Unit.GALLON_PER_HOUR ? "ft" : "m"),
            String.format(java.util.Locale.ROOT, "%.0f W", pump.powerAt(low).orElseThrow())));
  }

  static PowerSeries power(PumpCurve pump) {
    List<PowerPoint> points = new ArrayList<>();
    for (int i = 0; i <= 60; i++) {
      double flow = pump.lastFlowM3PerS() * 1.2 * i / 60;
      points.add(new PowerPoint(flow, pump.powerAt(flow).orElseThrow()));
    }
    return new PowerSeries("power drawn", points);
  }

  static OperatingChart usual() {
    PumpCurve pump = pump(5600, 31, 520);
    return new OperatingChart(
        "Demo 30 stream",
        "Pump demo 40 at 100 % through line \"supply\": where the two curves meet is what flows.",
        Unit.GALLON_PER_HOUR,
        Unit.FOOT,
        List.of(system("what the system takes", 7.2, 19)),
        List.of(series("demo 40 gives", pump)),
        List.of(meeting(pump, 7.2, 19, Unit.GALLON_PER_HOUR)),
        Optional.of(
            new FlowMark(
                Unit.GALLON_PER_HOUR.toSi(5200), "the skimmer passes no more than 5,200 gph")),
        Optional.of(new HeadMark(Unit.FOOT.toSi(7.2), "static head 7.2 ft: the rest is friction")),
        Optional.of(power(pump)));
  }

  static OperatingChart bare() {
    PumpCurve pump = pump(3400, 22, 300);
    OperatingPoint point = meeting(pump, 9, 14, Unit.CUBIC_METRE_PER_HOUR);
    return new OperatingChart(
        "Demo 20",
        "",
        Unit.CUBIC_METRE_PER_HOUR,
        Unit.METRE,
        List.of(system("system", 9, 14)),
        List.of(series("demo 25", pump)),
        List.of(point),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  static OperatingChart dozen() {
    List<PumpCurveSeries> pumps = new ArrayList<>();
    List<OperatingPoint> points = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      PumpCurve pump = pump(2600 + 420 * i, 15 + 2.6 * ((i * 5) % 12), 300);
      pumps.add(series("demo " + (20 + 5 * i), pump));
      OperatingPoint full = meeting(pump, 7.2, 19, Unit.GALLON_PER_HOUR);
      points.add(
          new OperatingPoint(
              full.flowM3PerS(),
              full.headM(),
              i == 5 ? List.of("demo 45: " + full.labelLines().get(0)) : List.of()));
    }
    return new OperatingChart(
        "Demo 30 stream: a dozen pumps",
        "Every pump on the list over the one system curve; a ring marks what would flow.",
        Unit.GALLON_PER_HOUR,
        Unit.FOOT,
        List.of(system("system", 7.2, 19)),
        pumps,
        points,
        Optional.empty(),
        Optional.of(new HeadMark(Unit.FOOT.toSi(7.2), "static head 7.2 ft")),
        Optional.empty());
  }

  static OperatingChart pipes() {
    PumpCurve pump = pump(6200, 33, 560);
    String[] names = {"1-1/4 in", "1-1/2 in", "2 in", "2-1/2 in", "3 in"};
    double[] heads = {48, 31, 17, 12, 9.5};
    List<CurveSeries> systems = new ArrayList<>();
    List<OperatingPoint> points = new ArrayList<>();
    for (int i = 0; i < names.length; i++) {
      systems.add(system(names[i] + " pipe", 7.2, heads[i]));
      OperatingPoint full = meeting(pump, 7.2, heads[i], Unit.GALLON_PER_HOUR);
      points.add(
          new OperatingPoint(
              full.flowM3PerS(),
              full.headM(),
              List.of(names[i] + ": " + full.labelLines().get(0).split(" at")[0])));
    }
    return new OperatingChart(
        "Which pipe goes into the trench",
        "One pump, five pipe sizes.",
        Unit.GALLON_PER_HOUR,
        Unit.FOOT,
        systems,
        List.of(series("demo 45", pump)),
        points,
        Optional.empty(),
        Optional.empty(),
        Optional.of(power(pump)));
  }

  static OperatingChart hostile() {
    OperatingChart usual = usual();
    return new OperatingChart(
        "<script>alert(\"x\")</script> & \u202eevil\u0007 ]]> " + "a very long title ".repeat(12),
        "caption ".repeat(60) + "<b>bold</b>",
        usual.flowUnit(),
        usual.headUnit(),
        List.of(new CurveSeries("system <&> ".repeat(20), usual.systemCurves().get(0).points())),
        List.of(
            new PumpCurveSeries(
                "pump with a name that goes on and on and on and on and on and on and on",
                usual.pumpCurves().get(0).published(),
                List.of(),
                List.of())),
        usual.operatingPoints(),
        usual.flowLimit(),
        usual.staticHead(),
        usual.power());
  }

  static OperatingChart onlySystem() {
    return new OperatingChart(
        "System alone",
        "What a pump must give at each flow; the basin stands above the outlet.",
        Unit.LITRE_PER_MINUTE,
        Unit.METRE,
        List.of(system("system", -4, 12)),
        List.of(),
        List.of(),
        Optional.empty(),
        Optional.of(new HeadMark(Unit.FOOT.toSi(-4), "lift \u22121.22 m")),
        Optional.empty());
  }

  /** A pump that does not reach the lift. */
  static OperatingChart tooWeak() {
    PumpCurve pump = pump(3000, 11, 90);
    return new OperatingChart(
        "Too high for this pump",
        "",
        Unit.GALLON_PER_HOUR,
        Unit.FOOT,
        List.of(system("system curve", 12.4, 17)),
        List.of(series("demo 15", pump)),
        List.of(
            new OperatingPoint(
                0, pump.headAt(0), List.of("moves no water, shut-off 11 ft", "68 W"))),
        Optional.of(new FlowMark(1, "no more than a river comes in")),
        Optional.of(new HeadMark(Unit.FOOT.toSi(12.4), "static head 12.4 ft")),
        Optional.of(power(pump)));
  }

  /** What a pump to be chosen must make. */
  static OperatingChart wanted() {
    double flow = Unit.GALLON_PER_HOUR.toSi(5200);
    double less = Unit.GALLON_PER_HOUR.toSi(4100);
    return new OperatingChart(
        "Demo 30 stream",
        "Pump in line \"supply\", still to be chosen.",
        Unit.GALLON_PER_HOUR,
        Unit.FOOT,
        List.of(system("system curve", 7.2, 19)),
        List.of(),
        List.of(
            new OperatingPoint(
                flow,
                systemHeadM(flow, 7.2, 19),
                List.of("wanted, valves as they stand", "5,200 gph at 26.4 ft")),
            new OperatingPoint(
                less,
                Unit.FOOT.toSi(22),
                List.of("wanted, others throttled", "4,100 gph at 22 ft"))),
        Optional.empty(),
        Optional.of(new HeadMark(Unit.FOOT.toSi(7.2), "static head 7.2 ft")),
        Optional.empty());
  }

  /** Writes all charts into the folder of the first argument. */
  public static void main(String[] args) throws IOException {
    Path folder = Files.createDirectories(Path.of(args[0]));
    write(folder, "usual", usual());
    write(folder, "bare", bare());
    write(folder, "dozen", dozen());
    write(folder, "pipes", pipes());
    write(folder, "hostile", hostile());
    write(folder, "system", onlySystem());
    write(folder, "weak", tooWeak());
    write(folder, "wanted", wanted());
  }

  private static void write(Path folder, String name, OperatingChart chart) throws IOException {
    Files.write(folder.resolve(name + ".png"), ChartWriter.png(chart));
    Files.write(folder.resolve(name + ".svg"), ChartWriter.svg(chart));
    BufferedImage picture = ImageIO.read(folder.resolve(name + ".png").toFile());
    BufferedImage grey =
        new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
    grey.getGraphics().drawImage(picture, 0, 0, null);
    ImageIO.write(grey, "png", folder.resolve(name + "-grey.png").toFile());
  }
}
