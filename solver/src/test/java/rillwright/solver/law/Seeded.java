package rillwright.solver.law;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A test run with several seeds, each named in its report. */
@Target(ElementType.METHOD)
@Retention(RetentionPolicy.RUNTIME)
@ParameterizedTest(name = "seed {0}")
@ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
public @interface Seeded {}
