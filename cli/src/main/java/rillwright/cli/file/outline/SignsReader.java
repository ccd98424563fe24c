package rillwright.cli.file.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.change.FormerNames;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.tree.Node;
import rillwright.cli.file.tree.Scalar;
import rillwright.cli.wording.Choices;
import rillwright.curves.wording.PlainText;
import rillwright.solver.study.diagnosis.cause.Sign;

/** Reads the section {@code signs}. */
public final class SignsReader {
  private static final String SECTION = "signs";

  private SignsReader() {}

  /** The signs of a project, in the order of the file; what is wrong is noted. */
  public static List<Sign> read(Fields root) {
    List<Sign> signs = new ArrayList<>();
    for (Node item : root.listItems(SECTION)) {
      sign(item, root).ifPresent(sign -> add(sign, signs, item, root));
    }
    return signs;
  }

  private static Optional<Sign> sign(Node item, Fields root) {
    if (!(item instanceof Scalar scalar)) {
      root.ledger().fault(item.place(), "signs: expected a sign, found " + item.words());
      return Optional.empty();
    }
    Optional<Sign> sign = Sign.find(FormerNames.sign(scalar.text()));
    if (sign.isEmpty()) {
      root.ledger()
          .fault(
              item.place(),
              "signs: "
                  + PlainText.quoted(scalar.text())
                  + " is no sign"
                  + Choices.hint(scalar.text(), Sign.names()));
    }
    return sign;
  }

  private static void add(Sign sign, List<Sign> signs, Node item, Fields root) {
    for (Sign before : signs) {
      if (sign.excludes().contains(before)) {
        root.ledger()
            .fault(
                item.place(),
                "signs: \""
                    + sign.words()
                    + "\" contradicts \""
                    + before.words()
                    + "\"; keep the one that is true");
      }
    }
    if (!signs.contains(sign)) {
      signs.add(sign);
    }
  }
}
