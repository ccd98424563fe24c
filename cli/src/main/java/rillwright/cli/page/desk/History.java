package rillwright.cli.page.desk;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;

/** What was done to a text, to be undone and done again without end. */
final class History {
  private final Deque<Version> past = new ArrayDeque<>();
  private final Deque<Version> undone = new ArrayDeque<>();
  private Version now;

  History(String text) {
    this.now = new Version(text, "");
  }

  String text() {
    return now.text();
  }

  /** Goes on with another text; the same one is nothing done. */
  void add(String text, String done) {
    if (!text.equals(now.text())) {
      past.push(now);
      now = new Version(text, done);
      undone.clear();
    }
  }

  /** What would be undone; empty if nothing was done. */
  Optional<String> undoable() {
    return past.isEmpty() ? Optional.empty() : Optional.of(now.done());
  }

  /** What would be done again; empty if nothing was undone. */
  Optional<String> redoable() {
    return Optional.ofNullable(undone.peek()).map(Version::done);
  }

  /** Takes back what was done last, if anything was. */
  void undo() {
    if (!past.isEmpty()) {
      undone.push(now);
      now = past.pop();
    }
  }

  /** Does again what was taken back last, if anything was. */
  void redo() {
    if (!undone.isEmpty()) {
      past.push(now);
      now = undone.pop();
    }
  }
}
