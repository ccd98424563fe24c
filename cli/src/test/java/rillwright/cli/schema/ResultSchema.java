package rillwright.cli.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.regex.Pattern;

/** The published schema of results, put to the test. */
public final class ResultSchema {
  private static final Schema SCHEMA =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(PublishedSchema.RESULT.text(), InputFormat.JSON);

  private ResultSchema() {}

  /** It takes a result. */
  public static void assertTakes(String result) {
    assertEquals(List.of(), SCHEMA.validate(result, InputFormat.JSON));
  }

  static void assertRefuses(String result) {
    assertFalse(SCHEMA.validate(result, InputFormat.JSON).isEmpty(), result);
  }

  /**
   * It refuses a result in which something is put wrong.
   *
   * @param right in the result
   * @param wrong to put in its place; null for nothing, as a table of cases gives it
   */
  static void assertRefusesBroken(String result, String right, String wrong) {
    String broken = result.replaceFirst(Pattern.quote(right), wrong == null ? "" : wrong);
    assertNotEquals(result, broken, "the case changes something");
    assertRefuses(broken);
  }
}
