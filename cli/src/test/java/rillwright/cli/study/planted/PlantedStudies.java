package rillwright.cli.study.planted;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Option;
import rillwright.cli.report.units.ShownUnits;
import rillwright.curves.wording.PlainText;

/** Studies that know what no study may know, for the test of the rules. */
final class PlantedStudies {
  private PlantedStudies() {}

  static final class KnowsTheCommandLine implements Callable<Integer> {
    @Option(names = "--planted")
    private int planted;

    @Override
    public Integer call() {
      return planted;
    }
  }

  record KnowsAPath(Path path) {}

  record KnowsAReport(ShownUnits units) {}

  static final class KnowsWords {
    String words(String name) {
      return PlainText.quoted(name);
    }
  }
}
