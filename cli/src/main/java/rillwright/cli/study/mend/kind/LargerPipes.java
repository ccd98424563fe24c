package rillwright.cli.study.mend.kind;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rillwright.cli.file.Project;
import rillwright.cli.file.fault.InvalidInput;
import rillwright.cli.file.fault.Place;
import rillwright.cli.file.size.LineSizes;
import rillwright.cli.file.size.SizeOption;
import rillwright.cli.study.mend.change.Action;
import rillwright.cli.study.mend.change.Bought;
import rillwright.cli.study.mend.change.Candidate;
import rillwright.cli.study.mend.change.Source;
import rillwright.cli.study.mend.change.Step;
import rillwright.cli.study.mend.site.Site;
import rillwright.solver.network.Line;
import rillwright.solver.network.LineName;
import rillwright.solver.network.Run;

/**
 * Larger pipe: each line of a way alone, and the way as a whole.
 *
 * @param sizes to try; none for the next ones up
 */
public record LargerPipes(List<String> sizes) implements Source {
  /** How many sizes up are tried; more than that nobody lays for a fall. */
  private static final int MOST_SIZES = 3;

  public LargerPipes {
    sizes = List.copyOf(sizes);
  }

  @Override
  public List<List<Candidate>> candidates(Site site) {
    Map<LineName, List<Candidate>> singles = new LinkedHashMap<>();
    for (Line line : site.lines()) {
      if (line.has(Run.class)) {
        singles.put(line.name(), options(site, line));
      }
    }
    Set<Candidate> all = new LinkedHashSet<>();
    singles.values().forEach(all::addAll);
    for (Set<LineName> way : site.ways().values()) {
      for (int up = 0; up < MOST_SIZES; up++) {
        List<Step> steps = new ArrayList<>();
        for (LineName line : way) {
          List<Candidate> options = singles.getOrDefault(line, List.of());
          if (up < options.size()) {
            steps.addAll(options.get(up).steps());
          }
        }
        if (steps.size() > 1) {
          all.add(new Candidate(steps));
        }
      }
    }
    return all.stream().map(List::of).toList();
  }

  /** The sizes that a line may have beside its own. */
  public List<Candidate> options(Site site, Line line) {
    LineSizes known = new LineSizes(site.project(), line.name().value());
    List<Candidate> options = new ArrayList<>();
    for (SizeOption option : sizes.isEmpty() ? known.larger(MOST_SIZES) : named(known)) {
      for (Project sized : site.changed(option.changes()).stream().toList()) {
        Line changed = sized.network().line(line.name());
        if (!changed.equals(line)) {
          options.add(
              Candidate.of(
                  new Step(
                      Action.PIPE,
                      line.name().value(),
                      "",
                      option.sizes().get(line.name()).boreM(),
                      option.sizes().get(line.name()).name(),
                      option.changes(),
                      Bought.pipe(List.of(changed), sized))));
        }
      }
    }
    return options;
  }

  private List<SizeOption> named(LineSizes known) {
    List<SizeOption> options = new ArrayList<>();
    for (String size : sizes) {
      find(known, size).ifPresent(options::add);
    }
    return options;
  }

  /** A size that another line may have, where this one cannot. */
  private static Optional<SizeOption> find(LineSizes known, String size) {
    try {
      return Optional.of(known.read(size, Place.whole("--sizes")));
    } catch (InvalidInput notOfThisLine) {
      return Optional.empty();
    }
  }
}
