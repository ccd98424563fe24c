package rillwright.cli.packaging;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.LongConsumer;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntBiFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

class PlainClassesTest {
  /** Every kind of function that a class makes, and what each gives. */
  static class Samples {
    private static final char MARK = '!';

    private final String own;

    Samples(String own) {
      this.own = own;
    }

    private String joined(String text, long number) {
      return own + text + number;
    }

    private static <T extends Comparable<T>> T larger(T one, T other) {
      return one.compareTo(other) > 0 ? one : other;
    }

    static List<String> all() {
      return new Samples("own").results(7, 1L << 40, 0.5, 2.5f, true, MARK, (byte) -3, (short) 300);
    }

    private List<String> results(
        int i, long l, double d, float f, boolean z, char c, byte b, short s) {
      List<String> results = new ArrayList<>();
      Consumer<String> add = results::add;
      BiFunction<String, Long, String> bound = this::joined;
      add.accept(bound.apply("-", l));
      Supplier<String> captured = () -> own + i + l + d + f + z + c + b + s + i + l;
      add.accept(captured.get());
      Function<String, Integer> unbound = String::length;
      add.accept("" + unbound.apply("four"));
      ToDoubleFunction<Integer> widened = Integer::intValue;
      add.accept("" + widened.applyAsDouble(3));
      ToIntBiFunction<Character, Character> unboxed = Character::compare;
      add.accept("" + unboxed.applyAsInt('a', 'b'));
      DoubleUnaryOperator twoHeld = x -> x * d + l;
      add.accept("" + twoHeld.applyAsDouble(3));
      Function<String, StringBuilder> made = StringBuilder::new;
      add.accept(made.apply("made").reverse().toString());
      IntFunction<int[][]> arrays = int[][]::new;
      add.accept("" + arrays.apply(5).length);
      AtomicLong sum = new AtomicLong();
      LongConsumer dropped = sum::addAndGet;
      dropped.accept(12);
      add.accept("" + sum);
      BiFunction<Integer, Integer, Integer> generic = Samples::larger;
      add.accept("" + generic.apply(4, 9));
      Predicate<String> inherited = "x"::equals;
      add.accept("" + inherited.test("x") + inherited.negate().test("x"));
      Comparator<String> reversed = Comparator.<String>naturalOrder().reversed();
      add.accept(Stream.of("a", "c", "b").sorted(reversed).toList().toString());
      Supplier<Supplier<String>> nested = () -> () -> own + s;
      add.accept(nested.get().get());
      Supplier<Integer> none = () -> null;
      add.accept("" + none.get());
      Speaker speaker = () -> "word";
      add.accept(speaker.twice());
      return results;
    }
  }

  /** An interface that makes functions of what is private in it. */
  interface Speaker {
    String word();

    private String loud(String word) {
      return word.toUpperCase(java.util.Locale.ROOT);
    }

    default String twice() {
      Function<String, String> loud = this::loud;
      return loud.apply(word()) + loud.apply(word());
    }
  }

  /** A record of every kind of field, and how it compares. */
  record Fields(
      int i,
      long l,
      double d,
      float f,
      boolean z,
      char c,
      byte b,
      short s,
      String t,
      List<Integer> a) {
    private static final List<Integer> SHARED = List.of(1);

    static List<String> all() {
      List<Object> others =
          List.of(
              new Fields(1, 2, 3, 4, true, 'c', (byte) 5, (short) 6, "t", SHARED),
              new Fields(9, 2, 3, 4, true, 'c', (byte) 5, (short) 6, "t", SHARED),
              new Fields(1, 9, 3, 4, true, 'c', (byte) 5, (short) 6, "t", SHARED),
              new Fields(1, 2, Double.NaN, 4, true, 'c', (byte) 5, (short) 6, "t", SHARED),
              new Fields(1, 2, 3, -0f, true, 'c', (byte) 5, (short) 6, "t", SHARED),
              new Fields(1, 2, 3, 0f, true, 'c', (byte) 5, (short) 6, "t", SHARED),
              new Fields(1, 2, 3, 4, false, 'c', (byte) 5, (short) 6, "t", SHARED),
              new Fields(1, 2, 3, 4, true, 'd', (byte) 5, (short) 6, "t", SHARED),
              new Fields(1, 2, 3, 4, true, 'c', (byte) 9, (short) 6, "t", SHARED),
              new Fields(1, 2, 3, 4, true, 'c', (byte) 5, (short) 9, "t", SHARED),
              new Fields(1, 2, 3, 4, true, 'c', (byte) 5, (short) 6, null, SHARED),
              new Fields(1, 2, 3, 4, true, 'c', (byte) 5, (short) 6, "t", null),
              new Empty(),
              "no record");
      List<String> results = new ArrayList<>();
      for (Object first : others) {
        for (Object second : others) {
          results.add("" + first.equals(second));
        }
      }
      others.forEach(other -> results.add("" + other.hashCode()));
      return results;
    }
  }

  /** A record of nothing. */
  record Empty() {}

  private static final List<Class<?>> ALL =
      List.of(PlainClassesTest.class, Samples.class, Speaker.class, Fields.class, Empty.class);

  @ParameterizedTest
  @ValueSource(classes = {Samples.class, Fields.class})
  void givesTheSame(Class<?> samples) throws Exception {
    Map<String, byte[]> written = PlainClasses.written(files(), site -> true);
    Object before = samples.getDeclaredMethod("all").invoke(null);
    Class<?> plain = new Loader(written).loadClass(samples.getName());
    Method all = plain.getDeclaredMethod("all");
    all.setAccessible(true);
    assertEquals(before, all.invoke(null));
    assertNotSame(samples, plain);
  }

  @Test
  void leavesNothingToLinkOfWhatIsWritten() throws Exception {
    assertTrue(linked(files()) > 20, "" + linked(files()));
    assertEquals(0, linked(PlainClasses.written(files(), site -> true)));
  }

  @Test
  void writesTheFunctionsOfARehearsalAlone() throws Exception {
    Site loud =
        Site.of(
                ("@lambda-proxy %2$s apply (L%2$s;)L%1$s; (L%3$s;)L%3$s;"
                        + " REF_invokeInterface %2$s loud (L%4$s;)L%4$s; (L%4$s;)L%4$s;")
                    .formatted(
                        "java/util/function/Function",
                        "rillwright/cli/packaging/PlainClassesTest$Speaker",
                        "java/lang/Object",
                        "java/lang/String"))
            .orElseThrow();
    Map<String, byte[]> written = PlainClasses.written(files(), loud::equals);
    assertEquals(
        List.of("rillwright/cli/packaging/PlainClassesTest$Speaker$$1.class"),
        written.keySet().stream().filter(name -> name.contains("$$")).toList());
  }

  private static Map<String, byte[]> files() throws IOException {
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (Class<?> one : ALL) {
      String file = one.getName().replace('.', '/') + ".class";
      try (InputStream bytes = one.getClassLoader().getResourceAsStream(file)) {
        files.put(file, bytes.readAllBytes());
      }
    }
    return files;
  }

  /** How many functions and equalities the samples leave to be linked when they are first asked. */
  private static int linked(Map<String, byte[]> files) {
    AtomicInteger count = new AtomicInteger();
    files.forEach(
        (name, bytes) -> {
          if (!name.endsWith("PlainClassesTest.class")) {
            new ClassReader(bytes).accept(new LinkCounter(count), 0);
          }
        });
    return count.get();
  }

  private static final class LinkCounter extends ClassVisitor {
    private final AtomicInteger count;

    LinkCounter(AtomicInteger count) {
      super(Opcodes.ASM9);
      this.count = count;
    }

    @Override
    public MethodVisitor visitMethod(
        int access, String name, String types, String signature, String[] exceptions) {
      return new MethodVisitor(Opcodes.ASM9) {
        @Override
        public void visitInvokeDynamicInsn(
            String made, String made2, Handle maker, Object... more) {
          if (!name.equals("toString")) {
            count.incrementAndGet();
          }
        }
      };
    }
  }

  /** Defines the classes that it is given, and leaves all others to this test's own loader. */
  private static final class Loader extends ClassLoader {
    private final Map<String, byte[]> files;

    Loader(Map<String, byte[]> files) {
      super(PlainClassesTest.class.getClassLoader());
      this.files = files;
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
      byte[] bytes = files.get(name.replace('.', '/') + ".class");
      if (bytes == null) {
        return super.loadClass(name, resolve);
      }
      Class<?> loaded = findLoadedClass(name);
      return loaded == null ? defineClass(name, bytes, 0, bytes.length) : loaded;
    }
  }
}
