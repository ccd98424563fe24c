package rillwright.cli.report.json;

import java.util.List;
import rillwright.cli.catalogue.Catalogue;
import rillwright.cli.catalogue.page.JsonPage;
import rillwright.cli.json.Definitions;
import rillwright.cli.json.Shape;

/** All answers that are printed as JSON. */
public final class Answers {
  private static final List<Shape<?>> SHAPES =
      List.of(
          SolveJson.SHAPE,
          ConditionsJson.SHAPE,
          CheckJson.SHAPE,
          DutyJson.SHAPE,
          ChartJson.SHAPE,
          SectionJson.SHAPE,
          PumpsJson.SHAPE,
          PipesJson.SHAPE,
          BalanceJson.SHAPE,
          MendJson.SHAPE,
          SheetJson.SHAPE,
          StreamJson.SHAPE,
          CasesJson.STREAM,
          OddsJson.SHAPE,
          CasesJson.ODDS,
          WeakJson.SHAPE,
          AsbuiltJson.SHAPE,
          CausesJson.SHAPE,
          CompareJson.SHAPE,
          PumpJson.SHAPE,
          JsonPage.shape(Catalogue.standard()));

  private Answers() {}

  /** The schema of them all: a definition named like each kind of answer. */
  public static String schema() {
    return Definitions.schema(
        "urn:rillwright:schema:result",
        "Rillwright results",
        "What a command prints with --format json; \"kind\" says which. Numbers are SI; heads and"
            + " levels in the datum of the file. null: nothing determines it, or it does not apply."
            + " Members that this schema does not name may be added; readers pass over them.",
        SHAPES);
  }
}
