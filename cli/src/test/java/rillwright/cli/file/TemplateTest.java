package rillwright.cli.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/** Templates of records of two drawn values, found from readings at all their ends. */
class TemplateTest {
  private static final List<List<Double>> SETS =
      List.of(List.of(1.0, 1.0), List.of(2.0, 2.0), List.of(1.0, 2.0), List.of(2.0, 1.0));

  /** Something read. */
  public record Read(String name, double one, List<Inner> inside) {
    /** Checks what every such record must keep. */
    public Read {
      if (one < 0) {
        throw new IllegalArgumentException("less than 0");
      }
    }
  }

  /** A part of it. */
  public record Inner(OptionalDouble other, Optional<Object> more) {}

  private static Optional<Template> of(Function<List<Double>, Object> reader) {
    return Template.of(SETS.stream().map(reader).toList(), SETS);
  }

  private static Read read(List<Double> values) {
    return new Read(
        "it",
        values.get(0),
        List.of(
            new Inner(OptionalDouble.empty(), Optional.of("as ever")),
            new Inner(OptionalDouble.of(values.get(1)), Optional.of(values.get(0)))));
  }

  @Test
  void ofRecordsListsAndWhatMayBeThereGivesWhatIsRead() {
    Template template = of(TemplateTest::read).orElseThrow();
    for (List<Double> values : List.of(List.of(1.2, 1.7), List.of(2.0, 1.0), List.of(9.0, -3.0))) {
      assertEquals(read(values), template.with(values));
    }
  }

  @Test
  void whatARecordRefusesIsRefused() {
    Template template = of(TemplateTest::read).orElseThrow();
    assertThrows(IllegalArgumentException.class, () -> template.with(List.of(-1.0, 1.0)));
  }

  @Test
  void whatIsAlikeWhateverIsDrawnStays() {
    assertEquals("it", of(values -> "it").orElseThrow().with(List.of(7.0, 8.0)));
  }

  @Test
  void thereIsNoneWhereSomethingFollowsFromAValue() {
    assertEquals(Optional.empty(), of(values -> 2 * values.get(0)));
    assertEquals(Optional.empty(), of(values -> "k " + values.get(0)));
    assertEquals(Optional.empty(), of(values -> List.of(values.get(0) + values.get(1))));
    assertEquals(Optional.empty(), of(values -> values.subList(0, values.get(0).intValue())));
    assertEquals(
        Optional.empty(), of(values -> Optional.of(values.get(0)).filter(value -> value > 1)));
  }
}
