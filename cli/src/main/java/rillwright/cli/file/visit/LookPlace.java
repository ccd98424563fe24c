package rillwright.cli.file.visit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rillwright.cli.file.field.Fields;
import rillwright.cli.file.outline.ReadingForm;
import rillwright.solver.network.Network;
import rillwright.solver.study.diagnosis.reading.Looks;
import rillwright.solver.study.diagnosis.reading.Measurand;
import rillwright.solver.study.diagnosis.reading.Meter;
import rillwright.solver.study.diagnosis.reading.Sight;
import rillwright.solver.study.diagnosis.reading.When;

/** Finds the thing in a network at which somebody looked. */
final class LookPlace {
  private LookPlace() {}

  /** At what somebody looked. */
  static Optional<Measurand> find(Fields fields, When when, Network network) {
    Optional<String> word = fields.findWord("look", ReadingForm.LOOKS);
    if (word.isEmpty()) {
      return Optional.empty();
    }
    if (!when.equals(new When.Running())) {
      fields.fault("when", "a look is taken while it runs; take this out");
      return Optional.empty();
    }
    Map<String, Measurand> places = new LinkedHashMap<>();
    for (Measurand what : Looks.in(network)) {
      if (what instanceof Sight sight && sight.look().word().equals(word.get())) {
        places.put(sight.at(), what);
      }
      if (what instanceof Meter meter && isLook(meter, word.get())) {
        places.put(meter.at(), what);
      }
    }
    if (places.isEmpty()) {
      fields.fault("look", "this job has nothing to look at by \"look: " + word.get() + "\"");
      return Optional.empty();
    }
    List<String> names = List.copyOf(places.keySet());
    return ReadingPlace.named(
        fields, "at", word.get() + " at", names, names.stream().findFirst(), places::get);
  }

  private static boolean isLook(Meter meter, String word) {
    return (meter.kind() == Meter.Kind.HANDLE && word.equals(ReadingForm.HANDLE))
        || (meter.kind() == Meter.Kind.MOUTH && word.equals(ReadingForm.MOUTH));
  }
}
