package rillwright.solver.invariant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import rillwright.solver.law.LimitedLaw;
import rillwright.solver.law.NoLoss;
import rillwright.solver.law.minor.NozzleLoss;
import rillwright.solver.network.Valve;

/**
 * No record of a network, a law or water holds a null, a value that is no number or an infinite
 * one, whichever of its components it stands in.
 */
class NoSenselessRecordTest {
  private static final double[] SENSELESS = {
    Double.NaN, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY
  };

  /** Infinite by what they mean: no limit, both ways, shut. */
  private static final Set<String> MAY_BE_INFINITE =
      Set.of(
          LimitedLaw.class.getSimpleName() + ".mostM3PerS Infinity",
          NoLoss.class.getSimpleName() + ".leastFlow -Infinity",
          NozzleLoss.class.getSimpleName() + ".leastFlow -Infinity",
          Valve.GivenLoss.class.getSimpleName() + ".lossCoefficient Infinity");

  /** What comes out of a question; nobody makes one to put a question. */
  private static final Set<String> ANSWERS =
      Set.of("MoreOutThanIn", "Factor", "TravelPoint", "ClosedPoint", "LineLaws", "ChangeOfBore");

  private static final Pattern TESTS = Pattern.compile(".*/(test-classes|test)/.*");

  static Stream<Arguments> components() {
    return Stream.of(Sound.laws(), Sound.partsOfNetworks())
        .flatMap(List::stream)
        .flatMap(
            sample ->
                Arrays.stream(sample.getClass().getRecordComponents())
                    .map(part -> Arguments.of(sample.getClass().getSimpleName(), part, sample)));
  }

  @ParameterizedTest(name = "{0} {1}")
  @MethodSource("components")
  void refusesWhatMeansNothing(String name, RecordComponent component, Record sample)
      throws ReflectiveOperationException {
    String place = name + "." + component.getName();
    for (Object value : senseless(component.getType())) {
      if (MAY_BE_INFINITE.contains(place + " " + value)) {
        assertEquals(value, component.getAccessor().invoke(with(sample, component, value)));
      } else {
        String message = refusal(sample, component, value);
        assertTrue(message.contains("; it must be "), place + " " + value + ": " + message);
      }
    }
  }

  private static List<Object> senseless(Class<?> type) {
    List<Object> values = new ArrayList<>();
    if (type == double.class) {
      Arrays.stream(SENSELESS).forEach(values::add);
    } else if (type == OptionalDouble.class) {
      Arrays.stream(SENSELESS).mapToObj(OptionalDouble::of).forEach(values::add);
    } else if (type == List.class) {
      values.add(Collections.singletonList(null));
    }
    if (!type.isPrimitive()) {
      values.add(null);
    }
    return values;
  }

  private static String refusal(Record sample, RecordComponent component, Object value) {
    InvocationTargetException thrown =
        assertThrows(
            InvocationTargetException.class,
            () -> with(sample, component, value),
            () -> sample.getClass().getSimpleName() + " took " + component + " = " + value);
    return assertInstanceOf(IllegalArgumentException.class, thrown.getCause()).getMessage();
  }

  private static Object with(Record sample, RecordComponent changed, Object value)
      throws ReflectiveOperationException {
    RecordComponent[] all = sample.getClass().getRecordComponents();
    Object[] values = new Object[all.length];
    for (int i = 0; i < all.length; i++) {
      values[i] =
          all[i].getName().equals(changed.getName()) ? value : all[i].getAccessor().invoke(sample);
    }
    Class<?>[] types = Arrays.stream(all).map(RecordComponent::getType).toArray(Class<?>[]::new);
    Constructor<?> constructor = sample.getClass().getDeclaredConstructor(types);
    return constructor.newInstance(values);
  }

  @Test
  void everyRecordIsTried() {
    List<String> tried =
        Stream.of(Sound.laws(), Sound.partsOfNetworks())
            .flatMap(List::stream)
            .map(sample -> sample.getClass().getName())
            .toList();
    List<String> untried =
        new ClassFileImporter()
                .withImportOption(place -> !place.matches(TESTS))
                .importPackages(
                    "rillwright.solver.law", "rillwright.solver.network", "rillwright.solver.water")
                .stream()
                .filter(type -> type.isRecord() && !type.getPackageName().endsWith("topology"))
                .filter(type -> !ANSWERS.contains(type.getSimpleName()))
                .map(JavaClass::getName)
                .filter(name -> !tried.contains(name))
                .toList();
    assertEquals(List.of(), untried);
    assertTrue(tried.size() > 60, () -> "only " + tried.size());
  }
}
