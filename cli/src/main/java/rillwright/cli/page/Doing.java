package rillwright.cli.page;

import static java.util.stream.Collectors.joining;

import java.util.List;
import java.util.stream.Stream;
import rillwright.cli.file.Show;
import rillwright.cli.file.edit.EditedText;
import rillwright.cli.file.edit.Quoting;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.page.desk.Desk;
import rillwright.cli.page.desk.NewPieces;
import rillwright.cli.page.desk.Places;
import rillwright.cli.page.desk.SecondFall;
import rillwright.cli.page.web.Asked;
import rillwright.curves.wording.PlainText;

/** What a page can have done to the job. */
final class Doing {
  private Doing() {}

  /**
   * Carries it out.
   *
   * @throws InvalidInput if it cannot be done; nothing is changed then
   */
  static void of(Desk desk, Asked asked) {
    String at = asked.text("at");
    String value = asked.text("value");
    switch (asked.text("do")) {
      case "set" -> set(desk, at, value);
      case "set-field" -> set(desk, (at.isEmpty() ? "" : at + ".") + asked.text("field"), value);
      case "set-all" -> setAll(desk, value);
      case "remove" -> desk.edit(text -> text.remove(at), "take away " + Places.words(at));
      case "rename" ->
          desk.edit(
              text -> text.rename(at, asked.text("name").strip()), "rename " + Places.words(at));
      case "add-point" -> addPoint(desk, asked);
      case "add-line" -> addLine(desk, asked);
      case "add-part" -> addPart(desk, asked);
      case "add-second-fall" -> addSecondFall(desk, asked);
      case "add-reading" -> Visiting.addReading(desk, asked);
      case "add-sign" -> Visiting.addSign(desk, value);
      case "take-sheet" -> takeSheet(desk, asked);
      case "move-up" -> move(desk, at, number(value), -1);
      case "move-down" -> move(desk, at, number(value), 1);
      case "undo" -> desk.undo();
      case "redo" -> desk.redo();
      case "throw-away" -> desk.throwAway();
      case "save" -> desk.save();
      case "take-from-disk" -> desk.takeFromDisk();
      case "take-up-draft" -> desk.takeUpDraft();
      case "forget-draft" -> desk.forgetDraft();
      default -> throw wrong("there is nothing of this name to be done");
    }
  }

  private static void set(Desk desk, String at, String value) {
    String change = at + "=" + value;
    desk.edit(text -> text.set(change), Places.words(at) + ": " + value);
  }

  /** Several changes, with a tabulator between. */
  private static void setAll(Desk desk, String changes) {
    desk.edit(
        text -> {
          EditedText edited = text;
          for (String change : changes.split("\t", -1)) {
            edited = edited.set(change);
          }
          return edited;
        },
        Stream.of(changes.split("\t", -1)).map(Doing::words).collect(joining(", ")));
  }

  /** {@code lines.supply.pipe.size=3 in}: "supply: pipe size: 3 in". */
  private static String words(String change) {
    int end = change.indexOf('=');
    return end < 0
        ? change
        : Places.words(change.substring(0, end)) + ": " + change.substring(end + 1);
  }

  /** Puts a dropped data sheet beside the project and makes the changes that take that pump. */
  private static void takeSheet(Desk desk, Asked asked) {
    String model = asked.text("value");
    String file = desk.putSheet(model, asked.text("sheet:" + model));
    setAll(desk, Places.text(List.of("pumps", model)) + "=" + file + "\t" + asked.text("at"));
  }

  private static void addPoint(Desk desk, Asked asked) {
    String name = asked.text("name").strip();
    String written =
        NewPieces.point(asked.text("kind"), units(desk))
            .orElseThrow(() -> wrong("there is no such kind of point"));
    String address = Places.text(List.of("points", name));
    requireNew(desk, "points", name);
    desk.edit(text -> text.add(address, written), "add point " + name);
  }

  private static void requireNew(Desk desk, String section, String name) {
    boolean isThere =
        desk.now()
            .tree()
            .flatMap(tree -> tree.findMap(section))
            .flatMap(it -> it.find(name))
            .isPresent();
    if (isThere) {
      throw wrong(PlainText.quoted(name) + " is there already; choose another name");
    }
  }

  private static void addLine(Desk desk, Asked asked) {
    String name = asked.text("name").strip();
    String address = Places.text(List.of("lines", name));
    String run = NewPieces.part("run", units(desk)).orElseThrow();
    String written =
        "{from: %s, to: %s, pipe: {%s}, parts: [{%s}]}"
            .formatted(
                Quoting.json(asked.text("from")),
                Quoting.json(asked.text("to")),
                NewPieces.pipe(units(desk)),
                run);
    requireNew(desk, "lines", name);
    desk.editSoundly(text -> text.add(address, written), "add line " + name);
  }

  /** A tee in a run, a branch from there and its fall, in one step. */
  private static void addSecondFall(Desk desk, Asked asked) {
    String fall = asked.text("name").strip();
    requireNew(desk, "points", fall);
    desk.editSoundly(
        text ->
            SecondFall.in(
                text,
                asked.text("at"),
                asked.text("length"),
                asked.text("value"),
                fall,
                units(desk)),
        "add fall " + fall + " off " + Places.words(asked.text("at")));
  }

  /** At the end of its line, from where it can be moved. */
  private static void addPart(Desk desk, Asked asked) {
    String line = asked.text("at");
    String written =
        NewPieces.part(asked.text("kind"), units(desk))
            .orElseThrow(() -> wrong("there is no such kind of part"));
    desk.edit(
        text -> text.insert(line + ".parts", partsOf(text, line) + 1, written),
        "add " + asked.text("kind") + " to " + Places.words(line));
  }

  private static void move(Desk desk, String part, int position, int by) {
    String line = Places.above(part);
    desk.edit(
        text -> {
          int to = position + by;
          return to < 1 || to > partsOf(text, line)
              ? text
              : text.move(line + ".parts", position, to);
        },
        "move " + Places.words(part));
  }

  private static int partsOf(EditedText text, String line) {
    return Places.partsOf(text.tree(), line);
  }

  private static int number(String text) {
    if (!text.matches("\\d{1,4}")) {
      throw wrong("a position is a number");
    }
    return Integer.parseInt(text);
  }

  private static Show units(Desk desk) {
    return desk.sound().show();
  }

  static InvalidInput wrong(String message) {
    return new InvalidInput(Place.whole("page"), message);
  }
}
