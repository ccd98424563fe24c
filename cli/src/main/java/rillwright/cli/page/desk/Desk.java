package rillwright.cli.page.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import rillwright.cli.file.Project;
import rillwright.cli.file.edit.EditedText;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.tree.SourceText;

/**
 * A job that lies open: the text of its file, the same with what was changed since, and the way
 * back. One for all pages that show it; each change gives it another number, so that a page notices
 * what another one did.
 */
public final class Desk {
  private final JobFile file;
  private History history;
  private Sight saved;
  private Sight now;
  private Project sound;
  private int number;
  private Optional<String> draftTrouble = Optional.empty();

  private Desk(JobFile file, Sight saved, Project sound) {
    this.file = file;
    this.history = new History(saved.text());
    this.saved = saved;
    this.now = saved;
    this.sound = sound;
  }

  /**
   * Opens a file.
   *
   * @throws rillwright.cli.file.fault.InvalidInput if it cannot be read or something is wrong in it
   */
  public static Desk open(Path path) {
    JobFile file = JobFile.open(path);
    Sight saved = Sight.of(file.text(), path);
    return new Desk(file, saved, saved.require());
  }

  /** Its file. */
  public Path path() {
    return file.path();
  }

  /** Its folder, beyond which nothing is read or written. */
  public Path folder() {
    return path().toAbsolutePath().normalize().getParent();
  }

  /** Which state this is. */
  public synchronized int number() {
    return number;
  }

  /** All that a page may have to show anew when it changes: the number, and what is on the disk. */
  public synchronized String state() {
    return number + (changedOnDisk() ? "c" : "") + (isOpenElsewhere() ? "e" : "");
  }

  /** What the file says, as far as the page knows it. */
  public synchronized Sight saved() {
    return saved;
  }

  /** What the text with all changes says. */
  public synchronized Sight now() {
    return now;
  }

  /** The last project without a fault. */
  public synchronized Project sound() {
    return sound;
  }

  /** Whether something is not saved. */
  public synchronized boolean isChanged() {
    return !now.text().equals(saved.text());
  }

  /** What would be undone; empty if nothing was done. */
  public synchronized Optional<String> undoable() {
    return history.undoable();
  }

  /** What would be done again; empty if nothing was undone. */
  public synchronized Optional<String> redoable() {
    return history.redoable();
  }

  /**
   * Edits the text.
   *
   * @param edit what to do
   * @param done the same for people
   * @throws rillwright.cli.file.fault.InvalidInput if it cannot be done; nothing is changed then
   */
  public synchronized void edit(UnaryOperator<EditedText> edit, String done) {
    if (offered().isPresent()) {
      throw new InvalidInput(
          Place.whole(path().toString()),
          "not done: first take up the unsaved changes of last time, or throw them away");
    }
    EditedText text = EditedText.of(new SourceText(path().toString(), now.text()));
    history.add(edit.apply(text).text(), done);
    look();
  }

  /**
   * Edits the text, unless that would make it wrong.
   *
   * @throws rillwright.cli.file.fault.InvalidInput if it cannot be done or something is wrong then;
   *     nothing is changed
   */
  public synchronized void editSoundly(UnaryOperator<EditedText> edit, String done) {
    if (faults().isEmpty()) {
      EditedText text = EditedText.of(new SourceText(path().toString(), now.text()));
      Sight.of(edit.apply(text).text(), path()).require();
    }
    edit(edit, done);
  }

  /** Takes back what was done last. */
  public synchronized void undo() {
    history.undo();
    look();
  }

  /** Does again what was taken back last. */
  public synchronized void redo() {
    history.redo();
    look();
  }

  /** Throws away all that is not saved; that too can be undone. */
  public synchronized void throwAway() {
    history.add(saved.text(), "everything back as in the file");
    look();
  }

  /**
   * Saves the text, unless something is wrong with it: the page could not be opened again.
   *
   * @throws rillwright.cli.file.fault.InvalidInput if something is wrong or it cannot be written
   */
  public synchronized void save() {
    if (!faults().isEmpty()) {
      throw new InvalidInput(
          Place.whole(path().toString()),
          "not saved: put right first what is marked; until then the draft beside the file keeps"
              + " all changes");
    }
    file.write(now.text());
    saved = now;
    draftTrouble = file.forgetDraft();
    number++;
  }

  /** Whether the file was changed on the disk meanwhile. */
  public synchronized boolean changedOnDisk() {
    return file.changedOnDisk();
  }

  /** Takes the file as it is on the disk now; what was changed here can be got back by undoing. */
  public synchronized void takeFromDisk() {
    file.takeFromDisk();
    saved = Sight.of(file.text(), path());
    history.add(saved.text(), "the file as it is on the disk");
    look();
  }

  /** Unsaved changes that an earlier page left; empty if there are none. */
  public synchronized Optional<String> offered() {
    return file.draft()
        .filter(draft -> draft.process() != ProcessHandle.current().pid() && !draft.isAnothers())
        .map(Draft::project)
        .filter(text -> !text.equals(now.text()));
  }

  /** Whether another page that still runs has unsaved changes to the file. */
  public synchronized boolean isOpenElsewhere() {
    return file.draft().filter(Draft::isAnothers).isPresent();
  }

  /** Takes up what an earlier page left. */
  public synchronized void takeUpDraft() {
    offered()
        .ifPresent(
            text -> {
              history.add(text, "the unsaved changes from before");
              look();
            });
  }

  /** Throws away what an earlier page left. */
  public synchronized void forgetDraft() {
    if (offered().isPresent()) {
      draftTrouble = file.forgetDraft();
      number++;
    }
  }

  /**
   * Puts a data sheet beside the project, to be named by it.
   *
   * @return how the project names it
   * @throws rillwright.cli.file.fault.InvalidInput if it cannot be written there
   */
  public synchronized String putSheet(String name, String text) {
    return SheetBeside.put(path(), name, text);
  }

  /** Why unsaved changes are not kept beside the file; empty if they are. */
  public synchronized Optional<String> draftTrouble() {
    return draftTrouble;
  }

  private void look() {
    number++;
    now = Sight.of(history.text(), path());
    now.project().ifPresent(project -> sound = project);
    if (!isOpenElsewhere()) {
      draftTrouble =
          isChanged()
              ? file.keep(new Draft(ProcessHandle.current().pid(), now.text()))
              : file.forgetDraft();
    }
  }

  /** Faults of the text, none if it is a project. */
  public synchronized List<Fault> faults() {
    return now.faults();
  }
}
