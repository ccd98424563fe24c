package rillwright.cli.file.job;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.fault.Fault;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.field.Ledger;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.curves.wording.PlainText;

/** Reads the section {@code job}, and {@code note} and {@code photo} of points and lines. */
public final class JobReader {
  /** What every point and line may say. */
  public static final List<String> REMARKS = List.of("note", "photo");

  private final PhotoFolder photos;
  private final Ledger ledger;

  /**
   * A reader.
   *
   * @param photos where they are found
   */
  public JobReader(PhotoFolder photos, Ledger ledger) {
    this.photos = photos;
    this.ledger = ledger;
  }

  /** What a project says of its job. */
  public JobPapers read(Fields root) {
    JobDetails details =
        root.findFields("job", List.of("firm", "customer", "address", "date"))
            .map(
                job ->
                    new JobDetails(
                        job.findText("firm"),
                        job.findText("customer"),
                        job.findText("address"),
                        date(job)))
            .orElse(JobDetails.NONE);
    return new JobPapers(details, remarks(root, "points", "point"), remarks(root, "lines", "line"));
  }

  private static Optional<LocalDate> date(Fields job) {
    Optional<String> written = job.findText("date");
    try {
      return written.map(LocalDate::parse);
    } catch (DateTimeParseException noDate) {
      job.fault(
          "date",
          PlainText.quoted(written.orElseThrow())
              + " is not a date; write year, month and day, for example \"2026-05-14\"");
      return Optional.empty();
    }
  }

  private List<Remark> remarks(Fields root, String section, String what) {
    List<Remark> remarks = new ArrayList<>();
    for (Entry entry : root.findMap(section).map(MapNode::entries).orElse(List.of())) {
      if (entry.value() instanceof MapNode map
          && REMARKS.stream().anyMatch(field -> map.find(field).isPresent())) {
        String at = what + " " + PlainText.quoted(entry.key());
        List<String> notes = texts(map, "note", at).stream().map(Scalar::text).toList();
        List<Photo> shown =
            texts(map, "photo", at).stream().flatMap(path -> photo(path, at).stream()).toList();
        remarks.add(new Remark(entry.key(), notes, shown));
      }
    }
    return remarks;
  }

  /** The text of a field, or its list of texts. */
  private List<Scalar> texts(MapNode map, String field, String at) {
    Optional<Node> node = map.findNode(field);
    List<Node> items =
        node.map(it -> it instanceof ListNode list ? list.items() : List.of(it)).orElse(List.of());
    List<Scalar> texts = new ArrayList<>();
    for (Node item : items) {
      if (item instanceof Scalar scalar && !scalar.isNothing() && !scalar.text().isBlank()) {
        texts.add(scalar);
      } else {
        String found = item instanceof Scalar s && s.text().isBlank() ? "nothing" : item.words();
        ledger.fault(item.place(), at + ": " + field + ": expected a text, found " + found);
      }
    }
    return texts;
  }

  private Optional<Photo> photo(Scalar path, String at) {
    try {
      return Optional.of(photos.find(path.text()));
    } catch (InvalidInput wrong) {
      for (Fault fault : wrong.faults()) {
        ledger.fault(
            path.place(),
            at + ": photo: " + PlainText.quoted(fault.file()) + ": " + fault.message());
      }
      return Optional.empty();
    }
  }
}
