package rillwright.cli.packaging;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;

/**
 * Writes into a jar what a Java machine would make anew at each start: classes for its functions
 * (lambdas and references to methods) and code for the equality of its records. An archive of
 * classes takes what stands in the jar; what is linked at first use ({@code invokedynamic}, Java
 * Virtual Machine Specification, 17, 6.5) it does not spare.
 *
 * <p>Only functions that a rehearsal asked for are written. The build runs it after a first
 * rehearsal. The jar is packed tightly, without its folders' own entries, which nothing reads.
 *
 * @see rillwright.cli.Rehearsal
 */
public final class PlainClasses {
  private static final String CLASS = ".class";

  private PlainClasses() {}

  /**
   * Rewrites a jar, and the list of the classes to archive.
   *
   * @param arguments the jar, then the list that the Java machine wrote in a rehearsal ({@code
   *     -XX:DumpLoadedClassList})
   */
  public static void main(String[] arguments) throws IOException {
    Path jar = Path.of(arguments[0]);
    Path list = Path.of(arguments[1]);
    List<String> rehearsed = Files.readAllLines(list);
    Set<Site> sites =
        rehearsed.stream().flatMap(line -> Site.of(line).stream()).collect(Collectors.toSet());
    Map<String, byte[]> files = unpacked(jar);
    Map<String, byte[]> written = written(files, sites::contains);
    pack(jar, written);
    Stream<String> functions =
        written.keySet().stream()
            .filter(name -> !files.containsKey(name))
            .map(name -> name.substring(0, name.length() - CLASS.length()));
    Files.write(list, Stream.concat(rehearsed.stream(), functions).toList());
  }

  /**
   * The files of a jar, their classes rewritten.
   *
   * @param files by their names
   * @param isWritten which functions are written
   */
  static Map<String, byte[]> written(Map<String, byte[]> files, Predicate<Site> isWritten) {
    Map<String, byte[]> written = new LinkedHashMap<>();
    Map<String, List<String>> guests = new HashMap<>();
    files.forEach(
        (name, bytes) -> {
          if (name.endsWith(CLASS)) {
            PlainClass plain = PlainClass.of(bytes, isWritten);
            plain.functions().forEach((own, code) -> written.put(own + CLASS, code));
            guests
                .computeIfAbsent(plain.nest() + CLASS, host -> new ArrayList<>())
                .addAll(plain.functions().keySet());
            written.put(name, plain.bytes());
          } else {
            written.put(name, bytes);
          }
        });
    guests.forEach(
        (host, names) -> written.computeIfPresent(host, (same, code) -> joined(code, names)));
    return written;
  }

  /** A class with more members of its nest, which may use what is private in it. */
  private static byte[] joined(byte[] bytes, List<String> guests) {
    ClassReader reader = new ClassReader(bytes);
    ClassWriter writer = new ClassWriter(reader, 0);
    reader.accept(
        new ClassVisitor(Opcodes.ASM9, writer) {
          @Override
          public void visitEnd() {
            guests.forEach(this::visitNestMember);
            super.visitEnd();
          }
        },
        0);
    return writer.toByteArray();
  }

  private static Map<String, byte[]> unpacked(Path jar) throws IOException {
    Map<String, byte[]> files = new LinkedHashMap<>();
    try (ZipFile zip = new ZipFile(jar.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        if (!entry.isDirectory()) {
          files.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
        }
      }
    }
    return files;
  }

  private static void pack(Path jar, Map<String, byte[]> files) throws IOException {
    Path packed = jar.resolveSibling("packed.jar");
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(packed))) {
      zip.setLevel(Deflater.BEST_COMPRESSION);
      for (Map.Entry<String, byte[]> file : files.entrySet()) {
        zip.putNextEntry(new ZipEntry(file.getKey()));
        zip.write(file.getValue());
      }
    }
    Files.move(packed, jar, StandardCopyOption.REPLACE_EXISTING);
  }
}
