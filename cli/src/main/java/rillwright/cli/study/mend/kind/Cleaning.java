package rillwright.cli.study.mend.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rillwright.cli.file.part.PartStep;
import rillwright.cli.file.tree.Entry;
import rillwright.cli.file.tree.ListNode;
import rillwright.cli.file.tree.MapNode;
import rillwright.cli.file.tree.Node;
import rillwright.cli.study.mend.change.Action;
import rillwright.cli.study.mend.change.Addresses;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.change.Source;
import rillwright.cli.study.mend.change.Step;
import rillwright.cli.study.mend.site.Site;
import rillwright.solver.network.Filter;
import rillwright.solver.network.Line;
import rillwright.solver.network.Part;
import rillwright.solver.network.Placed;
import rillwright.solver.network.Skimmer;

/** Cleaning what is clogged, one thing alone and all together. */
public final class Cleaning implements Source {
  private static final String CLOGGED = "clogged";
  private static final String DEPOSIT = "deposit";
  private static final String RUN = "run";

  /** Everything cleaned together; none where nothing is clogged. */
  public static List<Candidate> all(Site site) {
    List<Step> steps = steps(site, site.lines());
    return steps.isEmpty() ? List.of() : List.of(new Candidate(steps));
  }

  @Override
  public List<List<Candidate>> candidates(Site site) {
    List<Step> steps = steps(site, site.lines());
    List<List<Candidate>> all = new ArrayList<>();
    steps.forEach(step -> all.add(List.of(Candidate.of(step))));
    if (steps.size() > 1) {
      all.add(List.of(new Candidate(steps)));
    }
    return all;
  }

  /** What there is to clean in lines. */
  public static List<Step> steps(Site site, List<Line> lines) {
    List<Step> steps = new ArrayList<>();
    for (Line line : lines) {
      for (Placed<Skimmer> skimmer : line.placed(Skimmer.class)) {
        if (skimmer.part().clogged() > 0) {
          steps.add(cleaned(skimmer));
        }
      }
      for (Placed<Filter> filter : line.placed(Filter.class)) {
        if (filter.part().clogged() > 0) {
          steps.add(cleaned(filter));
        }
      }
      List<String> pipes = fouled(site, line);
      if (!pipes.isEmpty()) {
        steps.add(step(line, "pipe", pipes));
      }
    }
    return steps;
  }

  private static Step cleaned(Placed<? extends Part> clogged) {
    return step(
        clogged.line(), clogged.part().kind(), List.of(Addresses.ofPart(clogged, CLOGGED, "0 %")));
  }

  private static Step step(Line line, String part, List<String> set) {
    return new Step(Action.CLEAN, line.name().value(), part, 0, "", set, Step.NOTHING);
  }

  private static List<String> fouled(Site site, Line line) {
    List<String> set = new ArrayList<>();
    Optional<MapNode> written =
        site.project().tree().findMap("lines").flatMap(map -> map.findMap(line.name().value()));
    written
        .flatMap(map -> map.findMap("pipe"))
        .flatMap(pipe -> pipe.find(DEPOSIT))
        .ifPresent(deposit -> set.add(clean(line, "pipe")));
    for (PartStep.Written part :
        PartStep.listIn(
            written.flatMap(map -> map.find("parts")).map(Cleaning::items).orElse(List.of()))) {
      boolean isFouled =
          part.entry().value() instanceof MapNode fields && fields.find(DEPOSIT).isPresent();
      if (part.entry().key().equals(RUN) && isFouled) {
        set.add(clean(line, part.step()));
      }
    }
    return set;
  }

  private static String clean(Line line, String step) {
    return Addresses.ofLine(line.name(), step, DEPOSIT, "0 mm");
  }

  private static List<Node> items(Entry parts) {
    return parts.value() instanceof ListNode list ? list.items() : List.of();
  }
}
