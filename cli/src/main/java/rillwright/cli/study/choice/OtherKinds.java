package rillwright.cli.study.choice;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rillwright.cli.file.Project;
import rillwright.curves.sheet.DataSheet;
import rillwright.curves.sheet.fact.SheetFacts;
import rillwright.solver.network.Pump;
import rillwright.solver.pumping.PumpPlace;

/**
 * Pumps that stand beside the water where the one in the file stands in it, or the other way round.
 *
 * @param present the pump in the file
 * @param isPresentSubmersible whether that one stands in the water
 * @param models of the other kind, one or more
 */
public record OtherKinds(String present, boolean isPresentSubmersible, List<String> models) {
  public OtherKinds {
    models = List.copyOf(models);
  }

  /** Those of some sheets; empty where the sheets name no other kind. */
  static Optional<OtherKinds> of(Project project, PumpPlace place, Map<String, DataSheet> sheets) {
    return Stream.of(project.network().line(place.line()).parts().get(place.partIndex()))
        .flatMap(part -> part instanceof Pump pump ? Stream.of(pump.model()) : Stream.empty())
        .flatMap(model -> of(model, project, sheets).stream())
        .filter(other -> !other.models().isEmpty())
        .findFirst();
  }

  private static Optional<OtherKinds> of(
      String present, Project project, Map<String, DataSheet> sheets) {
    return project
        .findSheet(present)
        .map(DataSheet::facts)
        .filter(facts -> facts.isSubmersible() || facts.isExternal())
        .map(
            facts ->
                new OtherKinds(
                    present,
                    facts.isSubmersible(),
                    sheets.entrySet().stream()
                        .filter(it -> isOther(facts, it.getValue().facts()))
                        .map(Map.Entry::getKey)
                        .toList()));
  }

  private static boolean isOther(SheetFacts one, SheetFacts other) {
    return one.isSubmersible() ? other.isExternal() : other.isSubmersible();
  }
}
