package rillwright.cli.packaging;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;

/**
 * What {@code equals} and {@code hashCode} of a record do, as static methods that give the same as
 * the Java machine's own (Java SE 17, {@code java.lang.runtime.ObjectMethods}).
 *
 * @param record the record
 * @param fields of it, in order
 */
record RecordEquality(Type record, List<Field> fields) {
  /** A field of a record. */
  record Field(String name, Type type) {}

  private static final Type OBJECTS = Type.getType(Objects.class);
  private static final int FACTOR = 31;

  /**
   * The equality of a record.
   *
   * @param arguments of the call by which its class asks for it: two, then its fields
   */
  static RecordEquality of(String record, Object[] arguments) {
    return new RecordEquality(
        Type.getObjectType(record),
        Stream.of(arguments)
            .skip(2)
            .map(Handle.class::cast)
            .map(field -> new Field(field.getName(), Type.getType(field.getDesc())))
            .toList());
  }

  /** Adds a method that takes the record, and to compare it another object. */
  void write(Method method, ClassVisitor writer) {
    GeneratorAdapter code =
        new GeneratorAdapter(
            Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_SYNTHETIC,
            method,
            null,
            null,
            writer);
    if (method.getReturnType().equals(Type.BOOLEAN_TYPE)) {
      compare(code);
    } else {
      hash(code);
    }
    code.returnValue();
    code.endMethod();
  }

  private void compare(GeneratorAdapter code) {
    Label different = code.newLabel();
    code.loadArg(1);
    code.instanceOf(record);
    code.ifZCmp(GeneratorAdapter.EQ, different);
    for (Field field : fields) {
      load(code, 0, field);
      load(code, 1, field);
      if (Boxes.isPrimitive(field.type)) {
        Type[] both = {field.type, field.type};
        code.invokeStatic(Boxes.of(field.type), new Method("compare", Type.INT_TYPE, both));
        code.ifZCmp(GeneratorAdapter.NE, different);
      } else {
        code.invokeStatic(OBJECTS, Method.getMethod("boolean equals(Object, Object)"));
        code.ifZCmp(GeneratorAdapter.EQ, different);
      }
    }
    code.push(true);
    code.returnValue();
    code.mark(different);
    Object[] arguments = {record.getInternalName(), "java/lang/Object"};
    code.visitFrame(Opcodes.F_NEW, arguments.length, arguments, 0, new Object[0]);
    code.push(false);
  }

  private void hash(GeneratorAdapter code) {
    code.push(0);
    for (Field field : fields) {
      code.push(FACTOR);
      code.math(GeneratorAdapter.MUL, Type.INT_TYPE);
      load(code, 0, field);
      if (Boxes.isPrimitive(field.type)) {
        Type[] one = {field.type};
        code.invokeStatic(Boxes.of(field.type), new Method("hashCode", Type.INT_TYPE, one));
      } else {
        code.invokeStatic(OBJECTS, Method.getMethod("int hashCode(Object)"));
      }
      code.math(GeneratorAdapter.ADD, Type.INT_TYPE);
    }
  }

  private void load(GeneratorAdapter code, int argument, Field field) {
    code.loadArg(argument);
    if (argument > 0) {
      code.checkCast(record);
    }
    code.getField(record, field.name, field.type);
  }
}
