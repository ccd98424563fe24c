package rillwright.cli.interview;

import java.util.OptionalDouble;
import rillwright.cli.schema.PublishedSchema;

/** The text of a project: the one place where it is written. */
final class ProjectText {
  /** How far above the floor of a pond or reservoir a pump draws, m; taken. */
  private static final double ABOVE_FLOOR_M = 0.1;

  private final Answers answers;
  private final boolean metric;
  private final boolean reservoir;
  private final boolean twoFalls;
  private final PumpAnswer pump;
  private final StringBuilder text = new StringBuilder();

  ProjectText(Answers answers) {
    this.answers = answers;
    this.metric = answers.isMetric();
    this.reservoir = answers.isJob(Questions.RESERVOIR);
    this.twoFalls = answers.isJob(Questions.TWO_FALLS);
    this.pump = PumpAnswer.of(answers.to(Questions.PUMP));
  }

  String text() {
    head();
    points();
    lines();
    if (answers.isJob(Questions.STREAM)) {
      stream();
    }
    text.append('\n').append(pump.section(metric));
    if (answers.isJob(Questions.EXISTING)) {
      readings();
    }
    return text.toString();
  }

  /** Lines with values in place of their holes. */
  private void add(String lines, String... values) {
    text.append(lines.formatted((Object[]) values));
  }

  /** An answer as a value of YAML. */
  private String of(String key) {
    return Written.yaml(answers.to(key));
  }

  private String in(String us, String inMetric) {
    return metric ? inMetric : us;
  }

  private void head() {
    add(
        """
        # yaml-language-server: $schema=%s
        # Begun with "rillwright new". What follows a # is a note. Values marked "taken" were not asked:
        # put in what you measure. "rillwright check" lists all that the file describes.
        # Levels count from the normal water level of the %s, which is 0; what lies below has a minus.
        rillwright: 1
        title: %s
        show: %s
        # For the cost of a year, without the first #:
        # running: {price: 0.17 USD/kWh, hours: 24 h/day, days: 210 days/year}
        """,
        PublishedSchema.PROJECT.fileName(),
        reservoir ? "reservoir" : "pond",
        of("title"),
        of(Questions.UNITS));
  }

  private void points() {
    add(
        """

        points:
          # Any open water can drown a small child: keep covers and grates on. Local codes may ask for
          # a barrier. Water held uphill needs a safe overflow.
          pond:%s
            kind: basin
            level: %s
            shape: {length: %s, width: %s, depth: %s}
            overflow: %s    # taken: where it runs over
            grade: %s       # taken: the ground around it
        """,
        reservoir ? "                      # the hidden reservoir, full of stone" : "",
        in("0 in", "0 mm"),
        of("pond length"),
        of("pond width"),
        of("pond depth"),
        in("1 in", "25 mm"),
        in("3 in", "75 mm"));
    chamber();
    falls();
  }

  private void chamber() {
    if (reservoir) {
      add(
          """
              voids: 40 %%        # taken: the share of it that is water, between the stones
            # Taken: the vault stands on the floor of the reservoir. Air in a closed vault can be bad.
            chamber: {kind: chamber, floor: %s, intake: %s}
          """,
          aboveFloor(0), aboveFloor(ABOVE_FLOOR_M));
    } else if (answers.hasSkimmer()) {
      add(
          """
            # Taken: measure its floor, and the level of the pump's inlet.
            chamber: {kind: chamber, floor: %s, intake: %s}
          """,
          in("-30 in", "-750 mm"), in("-20 in", "-500 mm"));
    }
  }

  /** A level so far above the floor of the pond, m, or half way up one that is not so deep. */
  private String aboveFloor(double aboveM) {
    double depth = Written.lengthM(answers.to("pond depth")).orElse(0);
    return Written.length(-Math.max(depth / 2, depth - aboveM), metric);
  }

  private void falls() {
    if (twoFalls) {
      add("  split: {kind: tee, elevation: %s}    # taken\n", in("0 in", "0 mm"));
    }
    fall("fall", "lift", "fall width", "target");
    if (twoFalls) {
      fall("lower fall", "lower lift", "lower width", "lower target");
    }
  }

  private void fall(String name, String lift, String width, String target) {
    add(
        "  %s: {kind: fall, crest: %s, width: %s, lip: %s, target: %s}\n",
        name, of(lift), of(width), of("lip"), of(target));
  }

  private void lines() {
    add("\nlines:\n");
    intake();
    add(
        """
          # Have buried services located before digging. Any trench can collapse; follow local rules
          # before entering it.
          supply:
            from: %s
            to: %s
            pipe: {material: %s, size: %s}
            parts:
              # Wiring for a pump by water is for a qualified electrician, licensed where the law
              # requires it, with ground-fault (GFCI or RCD) protection; unplug before hands go in. Never
              # leave an open suction where a person or child can reach it.
              - pump: %s
              - gauge: {name: G1, elevation: %s}    # taken: a tap for a gauge
              - check valve: {type: ball}             # taken
        """,
        reservoir || answers.hasSkimmer() ? "chamber" : "pond",
        twoFalls ? "split" : "fall",
        of("pipe"),
        of("pipe size"),
        pumpPart(),
        in("0 in", "0 mm"));
    if (!twoFalls) {
      valve("");
    }
    add("      - run: %s\n", of("pipe run"));
    if (!answers.to("elbows").equals("0")) {
      add("      - fitting: {type: elbow 90, count: %s}\n", of("elbows"));
    }
    if (twoFalls) {
      branch("upper", "fall", "upper run", "pipe size");
      branch("lower", "lower fall", "lower run", "lower size");
    }
  }

  private void valve(String note) {
    add("      - valve: {type: ball, open: 100 %%, adjustable: yes}    # taken%s\n", note);
  }

  /** The way to the pump, where it does not stand in the pond. */
  private void intake() {
    if (reservoir) {
      add(
          """
            holes:                          # taken: those in the wall of the vault
              from: pond
              to: chamber
              pipe: {inside: %s, roughness: 0.05 mm}
              parts:
                - loss: {k: 4}
          """,
          in("6 in", "150 mm"));
    } else if (answers.hasSkimmer()) {
      add(
          """
            intake:
              from: pond
              to: chamber
              parts:
                - skimmer: {width: %s, height: %s, sill: %s}    # height and sill are taken
          """,
          of(Questions.SKIMMER), in("6 in", "150 mm"), in("-5 in", "-120 mm"));
    }
  }

  private String pumpPart() {
    String name = Written.yaml(pump.name());
    boolean inChamber = reservoir || answers.hasSkimmer();
    return inChamber || pump instanceof PumpAnswer.NotChosen
        ? name
        : "{model: %s, elevation: %s}    # taken: its inlet, near the floor"
            .formatted(name, aboveFloor(ABOVE_FLOOR_M));
  }

  private void branch(String line, String fall, String run, String size) {
    add(
        """
          %s:
            from: split
            to: %s
            pipe: {material: %s, size: %s}
            parts:
              - run: %s
        """,
        line, fall, of("pipe"), of(size), of(run));
    valve("; \"balance\" says how to set it");
  }

  private void stream() {
    add(
        """

        streams:
          main:
            from: fall
            to: pond
            reaches:
              - {step: {height: %s, width: %s}}
              # Its drop is the rest of the lift; bank (run over rise) and liner edge are taken.
              - {length: %s, drop: %s, width: %s, bank: 1.5, bed: %s, liner edge: %s}
        # For the days until the pond needs water, without the first #:
        # evaporation: {rate: %s, splash: 20 %%}
        """,
        of("first drop"),
        of("fall width"),
        of("stream length"),
        dropOfBed(),
        of("stream width"),
        of("bed"),
        in("6 in", "150 mm"),
        in("0.25 in/day", "6 mm/day"));
  }

  /** What is left of the lift behind the first drop; where one is wrong, what was answered. */
  private String dropOfBed() {
    OptionalDouble lift = Written.lengthM(answers.to("lift"));
    OptionalDouble first = Written.lengthM(answers.to("first drop"));
    return lift.isPresent() && first.isPresent()
        ? Written.length(lift.getAsDouble() - first.getAsDouble(), metric)
        : of("first drop");
  }

  private void readings() {
    add(
        """

        # What is read on the day: write it for the ___, take the first # away, run "rillwright weak".
        # Shut a valve for ten seconds at most, never on soft hose or with a positive-displacement pump.
        # readings:
        #   - {at: fall, bucket: %s, time: ___ s}
        #   - {at: fall, crest head: ___ %s}      # a ruler upstream of the crest
        #   - {gauge: G1, pressure: ___ %s}
        #   - {gauge: G1, pressure: ___ %s, when: valve shut, valve: supply}
        #   - {pump: supply, power: ___ W}        # a watt meter
        # signs: [for weeks, no bubbles]
        """,
        in("5 gal", "20 L"), in("in", "mm"), in("psi", "kPa"), in("psi", "kPa"));
  }
}
