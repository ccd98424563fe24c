package rillwright.cli.file.site;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import rillwright.curves.sheet.fact.Price;

/**
 * What the crew pays, as far as the file says.
 *
 * @param pipe price of a metre by material and size as written: {@code flexible PVC 2 in}
 * @param fittings price of one by type and size as written: {@code elbow 90 2 in}
 * @param trench price of a metre of trench
 */
public record Prices(Map<String, Price> pipe, Map<String, Price> fittings, Optional<Price> trench) {
  public Prices {
    pipe = Collections.unmodifiableMap(new LinkedHashMap<>(pipe));
    fittings = Collections.unmodifiableMap(new LinkedHashMap<>(fittings));
  }
}
