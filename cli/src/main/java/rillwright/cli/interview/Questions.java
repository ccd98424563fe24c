package rillwright.cli.interview;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** All questions, in the order in which they are asked. */
public final class Questions {
  /** The question that decides what others suggest. */
  public static final String UNITS = "units";

  static final String JOB = "job";
  static final String FALL = "fall";
  static final String STREAM = "stream";
  static final String TWO_FALLS = "two falls";
  static final String RESERVOIR = "reservoir";
  static final String EXISTING = "existing";
  static final String SKIMMER = "skimmer";
  static final String NONE = "none";
  static final String PUMP = "pump";

  private static final String LENGTH =
      "A length with its unit: 7 ft 3 in, 1-1/2 in, 2.2 m, 350 mm.";
  private static final String CREST =
      "Measured from the pond's normal water level, which is 0, up to the edge that the water pours"
          + " over.";
  private static final String TARGET =
      "A flow (2400 gph, 9 m3/h) or a flow for each unit of width (100 gph/in, 15 m3/h/m)."
          + " 100 gph/in (15 m3/h/m) makes a full sheet, half of it a thin one (common practice).";
  private static final String RUN =
      "The pipe as it lies, rises included, not the distance on the plan.";

  private static final List<Question> ALL =
      List.of(
          Question.choice(
              UNITS,
              "Which units: us (feet, inches, gallons) or metric?",
              "Only what is suggested and shown depends on it; answers may be in any unit.",
              List.of("us", "metric")),
          Question.choice(
              JOB,
              "What is the job: fall (one fall and a pond), stream (a long stream), two falls (off"
                  + " one pump), reservoir (hidden, full of stone, no pond) or existing (built, to"
                  + " be diagnosed)?",
              "It decides which questions follow.",
              List.of(FALL, STREAM, TWO_FALLS, RESERVOIR, EXISTING)),
          Question.value("title", "What is the job called?", "It stands on every page.", "title")
              .suggests(
                  answers ->
                      answers.isJob(RESERVOIR)
                          ? "My fall without a pond"
                          : answers.isJob(EXISTING) ? "A weak fall" : "My pond"),
          size("pond length", "How long is the pond at the water line?", "length")
              .orIf(Questions::isReservoir, "How long is the hole of the reservoir?")
              .suggests(
                  answers ->
                      answers.isJob(RESERVOIR)
                          ? answers.isMetric() ? "1.8 m" : "6 ft"
                          : answers.isMetric() ? "3.5 m" : "12 ft"),
          size("pond width", "How wide is it?", "width")
              .suggests(
                  answers ->
                      answers.isJob(RESERVOIR)
                          ? answers.isMetric() ? "1.5 m" : "5 ft"
                          : answers.isMetric() ? "2.7 m" : "9 ft"),
          size("pond depth", "How deep is it?", "depth")
              .suggests(
                  answers ->
                      answers.isJob(RESERVOIR)
                          ? answers.isMetric() ? "750 mm" : "30 in"
                          : answers.isMetric() ? "900 mm" : "36 in"),
          new Question(
                  SKIMMER,
                  any -> "How wide is the mouth of the skimmer?",
                  "The clear width that water pours through, or none if the pump stands in the"
                      + " pond itself. "
                      + LENGTH,
                  List.of("lines", "intake", "parts", "skimmer", "width"),
                  List.of(),
                  answers -> !isReservoir(answers),
                  any -> "")
              .suggests("16 in", "400 mm"),
          Question.value(
                  "lift",
                  "How high is the crest of the fall above the water of the pond?",
                  CREST + " " + LENGTH,
                  "points",
                  "fall",
                  "crest")
              .orIf(
                  answers -> answers.isJob(TWO_FALLS),
                  "How high is the crest of the upper fall above the water of the pond?")
              .orIf(
                  Questions::isReservoir,
                  "How high is the crest of the fall above the water of the reservoir?")
              .suggests(
                  answers ->
                      answers.isJob(STREAM)
                          ? answers.isMetric() ? "1.5 m" : "5 ft"
                          : answers.isMetric() ? "900 mm" : "3 ft"),
          Question.value(
                  "fall width",
                  "How wide is the wet part of its crest?",
                  "The width that water really pours over. " + LENGTH,
                  "points",
                  "fall",
                  "width")
              .suggests(
                  answers ->
                      answers.isJob(TWO_FALLS, RESERVOIR)
                          ? answers.isMetric() ? "350 mm" : "14 in"
                          : answers.isMetric() ? "600 mm" : "24 in"),
          Question.value(
                  "lip",
                  "What is its lip: stone, metal, plastic, boulders, or a broad level crest (broad)?",
                  "\"rillwright catalogue lips\" lists them.",
                  "points",
                  "fall",
                  "lip")
              .suggests("stone", "stone"),
          Question.value("target", "What should flow over it?", TARGET, "points", "fall", "target")
              .suggests("100 gph/in", "15 m3/h/m"),
          lower(
                  "lower lift",
                  "How high is the crest of the lower fall above the water of the pond?",
                  CREST + " " + LENGTH,
                  "crest")
              .suggests(
                  answers ->
                      Written.share(
                          answers.to("lift"), answers.isMetric() ? 0.9 : 0.8, answers.isMetric())),
          lower("lower width", "How wide is the wet part of the lower crest?", LENGTH, "width")
              .suggests("14 in", "350 mm"),
          lower("lower target", "What should flow over the lower fall?", TARGET, "target")
              .suggests("100 gph/in", "15 m3/h/m"),
          stream(
                  "first drop",
                  "How far does the water drop at the fall, onto the head of the stream?",
                  "The rest of the lift is the fall of the stream's bed. " + LENGTH,
                  "step",
                  "height")
              .suggests(answers -> Written.share(answers.to("lift"), 0.3, answers.isMetric())),
          stream(
                  "stream length",
                  "How long is the stream from there to the pond?",
                  LENGTH,
                  "length")
              .suggests("30 ft", "9 m"),
          stream("stream width", "How wide is its bed?", LENGTH, "width")
              .suggests("24 in", "600 mm"),
          stream(
                  "bed",
                  "What is its bed: pea gravel, gravel, pebbles, cobble, large cobble, boulders?",
                  "\"rillwright catalogue beds\" lists more.",
                  "bed")
              .suggests("cobble", "cobble"),
          Question.value(
                  "pipe run",
                  "How much pipe from the pump to the fall?",
                  RUN + " " + LENGTH,
                  "lines",
                  "supply",
                  "parts",
                  "run")
              .orIf(
                  answers -> answers.isJob(TWO_FALLS),
                  "How much pipe from the pump to the tee where the falls part?")
              .suggests(
                  answers ->
                      answers.isJob(STREAM)
                          ? answers.isMetric() ? "14 m" : "45 ft"
                          : answers.isMetric() ? "6 m" : "20 ft"),
          branch("upper run", "How much pipe from the tee to the upper fall?", "upper")
              .suggests("15 ft", "4.5 m"),
          branch("lower run", "How much pipe from the tee to the lower fall?", "lower")
              .suggests("12 ft", "3.5 m"),
          Question.value(
                  "pipe",
                  "What kind of pipe: flexible PVC, PVC schedule 40, PVC-U PN 10?",
                  "\"rillwright catalogue pipes\" lists all kinds and their sizes.",
                  "lines",
                  "supply",
                  "pipe",
                  "material")
              .suggests("flexible PVC", "flexible PVC"),
          Question.value(
                  "pipe size",
                  "Which size?",
                  "As it is sold: 1-1/2 in, 2 in, 63 mm.",
                  "lines",
                  "supply",
                  "pipe",
                  "size")
              .suggests(SuggestedPipe::usual),
          Question.value(
                  "lower size",
                  "Which size to the lower fall?",
                  "Of the same kind of pipe. A smaller one holds the lower fall back.",
                  "lines",
                  "lower",
                  "pipe",
                  "size")
              .when(answers -> answers.isJob(TWO_FALLS))
              .suggests(SuggestedPipe::ofBranch),
          Question.value(
                  "elbows",
                  "How many 90 degree elbows on the way?",
                  "A number, or 0.",
                  "lines",
                  "supply",
                  "parts",
                  "fitting",
                  "count")
              .suggests("4", "4"),
          Question.value(
                  PUMP,
                  "Which pump: the file of its data sheet, a flow and head to plan for, or none"
                      + " yet?",
                  "A .csv beside the project (pumps/P-180.csv); 2400 gph at 9 ft writes an invented"
                      + " curve through that point, said to be one; none yet writes \"to be"
                      + " chosen\", and \"rillwright duty\" and \"pumps\" find one.",
                  "pumps")
              .suggests(PlannedDuty::suggestedFor));

  private Questions() {}

  private static boolean isReservoir(Answers answers) {
    return answers.isJob(RESERVOIR);
  }

  private static Question size(String key, String words, String field) {
    return Question.value(key, words, LENGTH, "points", "pond", "shape", field);
  }

  private static Question lower(String key, String words, String hint, String field) {
    return Question.value(key, words, hint, "points", "lower fall", field)
        .when(answers -> answers.isJob(TWO_FALLS));
  }

  private static Question stream(String key, String words, String hint, String... field) {
    List<String> goesTo = new ArrayList<>(List.of("streams", "main", "reaches"));
    goesTo.addAll(List.of(field));
    return Question.value(key, words, hint, goesTo.toArray(String[]::new))
        .when(answers -> answers.isJob(STREAM));
  }

  private static Question branch(String key, String words, String line) {
    return Question.value(key, words, RUN + " " + LENGTH, "lines", line, "parts", "run")
        .when(answers -> answers.isJob(TWO_FALLS));
  }

  /** All of them. */
  public static List<Question> all() {
    return ALL;
  }

  /** Those that are asked after some answers. */
  public static List<Question> askedAfter(Answers answers) {
    return ALL.stream().filter(question -> question.asked().test(answers)).toList();
  }

  /** The question of a key; empty if there is none. */
  public static Optional<Question> find(String key) {
    return ALL.stream().filter(question -> question.key().equals(key)).findFirst();
  }

  static Question named(String key) {
    return find(key).orElseThrow();
  }
}
