package rillwright.cli.file.edit;

import rillwright.cli.file.change.Changes;
import rillwright.cli.file.change.FormerNames;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.SourceText;
import rillwright.cli.file.tree.TreeReader;

/**
 * The text of a project, YAML or JSON, and edits to it. An edit makes another text, in which all
 * that it does not touch stays as it is written: comments, order, quotes, indentation, line ends.
 * What an edit would not change leaves the text as it is. Every edit ends with the text read anew:
 * it says just what the same change in memory says, or the edit is refused. Whether that is a
 * project, with nothing missing, is for the reader of projects to say.
 */
public final class EditedText {
  private final SourceText source;
  private final MapNode tree;

  private EditedText(SourceText source, MapNode tree) {
    this.source = source;
    this.tree = tree;
  }

  /**
   * A text to be edited.
   *
   * @throws InvalidInput if it is not a map in YAML or JSON
   */
  public static EditedText of(SourceText source) {
    return new EditedText(source, FormerNames.renewedIn(TreeReader.read(source)));
  }

  /** The text. */
  public String text() {
    return source.text();
  }

  /** The text with the name of its file. */
  public SourceText source() {
    return source;
  }

  /** What it says, with today's names of fields. */
  public MapNode tree() {
    return tree;
  }

  /**
   * The text with one value set, be it there or not.
   *
   * @param change as on the command line: {@code lines.intake.skimmer.clogged=40 %}
   * @throws InvalidInput if nothing has that address
   */
  public EditedText set(String change) {
    return saying(Changes.apply(tree, change));
  }

  /**
   * The text with a section, an entry of a section or a field that is not there yet.
   *
   * @param address where: {@code points.upper fall}
   * @param written what, a value or in braces: <code>{kind: fall, crest: 5 ft}</code>
   * @throws InvalidInput if it is there, what it belongs to is not, or this cannot be read
   */
  public EditedText add(String address, String written) {
    return saying(Branch.of(tree, address).added(Snippet.value(written)));
  }

  /**
   * The text without a field, an entry of a section, a part, a row or a section.
   *
   * @param address {@code lines.supply.valve 2}
   * @throws InvalidInput if nothing has that address
   */
  public EditedText remove(String address) {
    return saying(Branch.of(tree, address).removed());
  }

  /**
   * The text with one more item in a list.
   *
   * @param list its address: {@code lines.supply.parts}
   * @param position the item's number then, from 1 to one more than there are
   * @param written the item: <code>valve: {type: ball, open: 100 %}</code>
   * @throws InvalidInput if there is no such list or position, or the item cannot be read
   */
  public EditedText insert(String list, int position, String written) {
    return saying(Branch.of(tree, list).inserted(position, Snippet.item(written)));
  }

  /**
   * The text with an item of a list at another position, with its comment.
   *
   * @param list its address: {@code lines.supply.parts}
   * @param from the item's number, from 1
   * @param to its number then
   * @throws InvalidInput if there is no such list or position
   */
  public EditedText move(String list, int from, int to) {
    return saying(Branch.of(tree, list).moved(from, to));
  }

  /**
   * The text with another name for a point, line, pump or stream, wherever it is named.
   *
   * @param address {@code points.upper fall}
   * @throws InvalidInput if there is none, the name is taken, or it is empty
   */
  public EditedText rename(String address, String name) {
    return saying(Renaming.in(tree, address, name));
  }

  /**
   * The text that says what a tree says which was made of this one's; pieces of both are known by
   * their names and their places.
   *
   * @throws InvalidInput if it is written in a way that cannot be edited so
   */
  public EditedText saying(MapNode changed) {
    MapNode ordered = UsualOrder.of(tree, changed);
    if (Alike.say(tree, ordered)) {
      return this;
    }
    SourceText written = new SourceText(source.name(), Splice.write(source, tree, ordered));
    EditedText edited;
    try {
      edited = of(written);
    } catch (InvalidInput unreadable) {
      throw refused();
    }
    if (!Alike.say(edited.tree, ordered)) {

      throw refused();
    }
    return edited;
  }

  private InvalidInput refused() {
    return new InvalidInput(
        Place.whole(source.name()),
        "this cannot be edited here without rewriting more of the file; edit it by hand");
  }
}
