package rillwright.cli.packaging;

import java.util.Map;
import java.util.Optional;
import org.objectweb.asm.Type;

/** Primitive types and the classes that box them. */
final class Boxes {
  private static final Map<Type, Type> BOXES =
      Map.of(
          Type.BOOLEAN_TYPE, Type.getType(Boolean.class),
          Type.CHAR_TYPE, Type.getType(Character.class),
          Type.BYTE_TYPE, Type.getType(Byte.class),
          Type.SHORT_TYPE, Type.getType(Short.class),
          Type.INT_TYPE, Type.getType(Integer.class),
          Type.LONG_TYPE, Type.getType(Long.class),
          Type.FLOAT_TYPE, Type.getType(Float.class),
          Type.DOUBLE_TYPE, Type.getType(Double.class));

  private Boxes() {}

  static boolean isPrimitive(Type type) {
    return BOXES.containsKey(type);
  }

  /** The class that boxes a primitive type. */
  static Type of(Type primitive) {
    return BOXES.get(primitive);
  }

  /** The primitive type in a box; empty if a type is no box. */
  static Optional<Type> inside(Type box) {
    return BOXES.keySet().stream().filter(it -> BOXES.get(it).equals(box)).findFirst();
  }
}
