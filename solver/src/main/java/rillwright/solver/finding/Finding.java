package rillwright.solver.finding;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rillwright.solver.finding.Figure.Unit;

/**
 * One thing that the crew should know, written once: its message is made of words and of the
 * figures that it shows, so that a program gets the very figures that a person reads. Immutable;
 * each method gives the finding with one more piece at the end of its message.
 */
public final class Finding {
  private final Severity severity;
  private final String code;
  private final String at;
  private final List<Piece> pieces;

  private record Piece(Optional<Figure> figure, Function<Wording, String> words) {}

  private Finding(Severity severity, String code, String at, List<Piece> pieces) {
    this.severity = severity;
    this.code = code;
    this.at = at;
    this.pieces = pieces;
  }

  /**
   * A finding whose message begins with some words.
   *
   * @param code short and stable, for programs, words joined by hyphens: "starved-chamber"
   * @param at the name of the point or line that it is about; empty for the whole
   */
  public static Finding of(Severity severity, String code, String at, String words) {
    return new Finding(severity, code, at, List.of()).then(words);
  }

  /** How grave it is. */
  public Severity severity() {
    return severity;
  }

  /** A short stable code for programs, words joined by hyphens: "starved-chamber". */
  public String code() {
    return code;
  }

  /** The name of the point or line that it is about; empty for the whole. */
  public String at() {
    return at;
  }

  /** The figures that its message shows, in their order. */
  public List<Figure> figures() {
    return pieces.stream().flatMap(piece -> piece.figure().stream()).toList();
  }

  /** What is so and what to do about it, in a few sentences. */
  public String message(Wording wording) {
    return pieces.stream().map(piece -> piece.words().apply(wording)).collect(Collectors.joining());
  }

  /** The first figure that it shows in other words than another of its kind; empty if none. */
  public Optional<String> firstUnlike(Finding other, Wording wording) {
    Map<String, String> others = other.figureWords(wording);
    return figureWords(wording).entrySet().stream()
        .filter(it -> !it.getValue().equals(others.getOrDefault(it.getKey(), it.getValue())))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  /** The words for each figure, by its name. */
  private Map<String, String> figureWords(Wording wording) {
    Map<String, String> words = new LinkedHashMap<>();
    for (Piece piece : pieces) {
      piece.figure().ifPresent(it -> words.putIfAbsent(it.name(), piece.words().apply(wording)));
    }
    return words;
  }

  /** Then words. */
  public Finding then(String words) {
    return with(new Piece(Optional.empty(), wording -> words));
  }

  /** Then what the reader's program has to say about this code, if it has. */
  public Finding thenHint() {
    return with(new Piece(Optional.empty(), wording -> wording.hint(code)));
  }

  /** Then a figure in words of its own. */
  public Finding figure(String name, double value, Unit unit, Function<Wording, String> words) {
    return with(new Piece(Optional.of(new Figure(name, value, unit)), words));
  }

  /** Then a flow, m³/s. */
  public Finding flow(String name, double flowM3PerS) {
    return figure(name, flowM3PerS, Unit.CUBIC_METRE_PER_SECOND, Wording::flow);
  }

  /** Then a flow that somebody wrote down, m³/s. */
  public Finding writtenFlow(String name, double flowM3PerS) {
    return figure(name, flowM3PerS, Unit.CUBIC_METRE_PER_SECOND, Wording::writtenFlow);
  }

  /** Then a level above the datum, m. */
  public Finding level(String name, double levelM) {
    return figure(name, levelM, Unit.METRE, Wording::level);
  }

  /** Then a height or length, m. */
  public Finding length(String name, double lengthM) {
    return figure(name, lengthM, Unit.METRE, Wording::length);
  }

  /** Then a small depth or difference of level, m. */
  public Finding depth(String name, double depthM) {
    return figure(name, depthM, Unit.METRE, Wording::depth);
  }

  /** Then a head, m. */
  public Finding head(String name, double headM) {
    return figure(name, headM, Unit.METRE, Wording::head);
  }

  /** Then a speed of water, m/s. */
  public Finding velocity(String name, double velocityMPerS) {
    return figure(name, velocityMPerS, Unit.METRE_PER_SECOND, Wording::velocity);
  }

  /** Then a limit of common practice on a speed of water, m/s. */
  public Finding velocityLimit(String name, double velocityMPerS) {
    return figure(name, velocityMPerS, Unit.METRE_PER_SECOND, Wording::velocityLimit);
  }

  /** Then a pressure above the air's, Pa. */
  public Finding pressure(String name, double pressurePa) {
    return figure(name, pressurePa, Unit.PASCAL, Wording::pressure);
  }

  /** Then a power, W. */
  public Finding power(String name, double powerW) {
    return figure(name, powerW, Unit.WATT, Wording::power);
  }

  /** Then a volume of water, m³. */
  public Finding volume(String name, double volumeM3) {
    return figure(name, volumeM3, Unit.CUBIC_METRE, Wording::volume);
  }

  /** Then a time, s. */
  public Finding duration(String name, double seconds) {
    return figure(name, seconds, Unit.SECOND, Wording::duration);
  }

  /** Then a share. */
  public Finding share(String name, double share) {
    return figure(name, share, Unit.ONE, Wording::share);
  }

  private Finding figure(
      String name, double value, Unit unit, BiFunction<Wording, Double, String> words) {
    return figure(name, value, unit, wording -> words.apply(wording, value));
  }

  private Finding with(Piece next) {
    return new Finding(
        severity, code, at, Stream.concat(pieces.stream(), Stream.of(next)).toList());
  }
}
