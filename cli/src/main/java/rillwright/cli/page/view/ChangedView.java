package rillwright.cli.page.view;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import rillwright.cli.file.change.Address;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.page.desk.Outcome;
import rillwright.cli.page.desk.Places;
import rillwright.cli.page.html.Html;
import rillwright.cli.report.units.Shown;
import rillwright.cli.report.units.ShownUnits;
import rillwright.cli.study.compare.Compared;
import rillwright.cli.study.compare.Entered;
import rillwright.cli.study.compare.Measured;
import rillwright.cli.study.compare.Measured.Kind;

/** What is otherwise than in the file, and what comes of it. */
final class ChangedView {
  private static final String AS_BEFORE = " as before";

  private ChangedView() {}

  /**
   * Prints it.
   *
   * @param saved what the file gives; empty if it has no project
   * @param before what the job gave before the last change; empty if none was just made
   * @param now what the job gives with all changes
   * @param tried whether the last change is only tried: it cannot be kept or thrown away yet
   */
  static void print(
      Optional<Outcome> saved, Optional<Outcome> before, Outcome now, boolean tried, Html html) {
    html.open(
        "section",
        "id",
        "changed",
        "aria-live",
        tried ? "off" : "polite",
        before.isPresent() ? "data-did" : "",
        before.map(it -> did(it, now)).orElse(""));
    List<Entered> entered =
        saved.map(file -> Entered.listBetween(file.project(), now.project())).orElse(List.of());
    if (!entered.isEmpty()) {
      html.leaf("h2", "Changed against the file");
      String effect = String.join(", ", effects(saved.orElseThrow(), now, true));
      html.leaf("p", effect, "class", "effect");
      html.open("ul", "class", "changes");
      MapNode was = saved.orElseThrow().project().tree();
      Set<String> pieces = new LinkedHashSet<>();
      for (Entered one : entered) {
        Optional<String> piece = newPiece(one, was);
        if (piece.isPresent()) {
          pieces.add(piece.get());
          continue;
        }
        html.open("li").open("span");
        html.leaf("b", Places.words(one.address()) + ":").text(" " + words(one)).close();
        if (!tried && one.a().isPresent() && one.b().isPresent() && !isParts(one)) {
          html.leaf(
              "button",
              "as it was: " + one.a().get(),
              "type",
              "button",
              "data-do",
              "set",
              "data-at",
              one.address(),
              "data-value",
              one.a().get());
        }
        html.close();
      }
      pieces.forEach(it -> html.open("li").leaf("b", it + ":").text(" new").close());
      html.close();
      if (!tried) {
        html.open("p", "class", "row");
        html.leaf("button", "Throw all away", "type", "button", "data-do", "throw-away");
        html.close();
      }
    }
    html.close();
  }

  /** The point or line that a value is of, if the file has none of that name. */
  private static Optional<String> newPiece(Entered one, MapNode was) {
    List<String> steps = Address.of(one.address()).steps();
    boolean isOfPiece = steps.size() > 2 && List.of("points", "lines").contains(steps.get(0));
    boolean isNew =
        isOfPiece && was.findMap(steps.get(0)).flatMap(all -> all.find(steps.get(1))).isEmpty();
    return isNew ? Optional.of(steps.get(1)) : Optional.empty();
  }

  private static boolean isParts(Entered one) {
    return one.address().startsWith("lines.") && one.address().endsWith(".parts");
  }

  private static String words(Entered one) {
    if (one.a().isEmpty()) {
      return one.b().orElse("") + ", new";
    }
    return one.b().isEmpty()
        ? "removed, was " + one.a().get()
        : one.b().get() + " instead of " + one.a().get();
  }

  /** {@code supply: pipe size: 3 in instead of 2 in. upper fall 3,600 → 4,150 gph, +38 W}. */
  private static String did(Outcome before, Outcome now) {
    List<Entered> entered = Entered.listBetween(before.project(), now.project());
    String edit =
        entered.size() == 1
            ? Places.words(entered.get(0).address()) + ": " + words(entered.get(0))
            : "";
    List<String> effects = entered.isEmpty() ? List.of() : effects(before, now, false);
    String effect = String.join(", ", effects);
    return edit.isEmpty() || effect.isEmpty() ? edit + effect : edit + ". " + effect;
  }

  /**
   * {@code upper fall 3,600 → 4,150 gph, +38 W}.
   *
   * @param all whether what stays the same is named, too
   */
  private static List<String> effects(Outcome saved, Outcome now, boolean all) {
    if (saved.solved().isEmpty() || now.solved().isEmpty()) {
      return List.of();
    }
    ShownUnits units = Shown.of(now.project().show());
    Compared compared =
        Compared.of(saved.project(), saved.solved().get(), now.project(), now.solved().get());
    List<String> words = new ArrayList<>();
    for (Measured one : compared.measured()) {
      if (one.figure() == Kind.FLOW_OUT) {
        String flow = fromTo(one, units::flow);
        if (all || !flow.endsWith(AS_BEFORE)) {
          words.add(one.at() + " " + flow);
        }
      }
    }
    compared.measured().stream()
        .filter(it -> it.figure() == Kind.POWER && it.change().isPresent())
        .forEach(
            it -> {
              double watts = it.change().getAsDouble();
              if (Math.abs(watts) >= 0.5) {
                words.add((watts > 0 ? "+" : "\u2212") + units.power(Math.abs(watts)));
              } else if (all) {
                words.add("same watts");
              }
            });
    return words;
  }

  private static String fromTo(Measured one, DoubleFunction<String> shown) {
    String from = one.a().isPresent() ? shown.apply(one.a().getAsDouble()) : "nothing";
    String to = one.b().isPresent() ? shown.apply(one.b().getAsDouble()) : "nothing";
    int unit = from.lastIndexOf(' ');
    boolean alike = unit > 0 && to.endsWith(from.substring(unit));
    return from.equals(to)
        ? to + AS_BEFORE
        : (alike ? from.substring(0, unit) : from) + " \u2192 " + to;
  }
}
