package rillwright.cli.report.picture.section;

import java.util.Map;
import rillwright.cli.study.section.Station;
import rillwright.curves.chart.content.SectionChart.Symbol;

/** By which symbol a place is drawn. */
final class SectionSymbols {
  private static final Map<String, Symbol> BY_KIND =
      Map.ofEntries(
          Map.entry("basin", Symbol.BASIN),
          Map.entry("chamber", Symbol.CHAMBER),
          Map.entry("tee", Symbol.TEE),
          Map.entry("fall", Symbol.FALL),
          Map.entry("outlet", Symbol.OUTLET),
          Map.entry("run", Symbol.PIPE),
          Map.entry("fitting", Symbol.FITTINGS),
          Map.entry("valve", Symbol.VALVE),
          Map.entry("check valve", Symbol.CHECK_VALVE),
          Map.entry("skimmer", Symbol.SKIMMER),
          Map.entry("filter", Symbol.FILTER),
          Map.entry("pump", Symbol.PUMP),
          Map.entry("gauge", Symbol.GAUGE),
          Map.entry("high point", Symbol.HIGH_POINT),
          Map.entry("loss", Symbol.LOSS),
          Map.entry("reach", Symbol.REACH),
          Map.entry("pool", Symbol.POOL),
          Map.entry("step", Symbol.STEP));

  private SectionSymbols() {}

  static Symbol of(Station station) {
    return station.kind().map(BY_KIND::get).orElse(Symbol.FALLING);
  }
}
