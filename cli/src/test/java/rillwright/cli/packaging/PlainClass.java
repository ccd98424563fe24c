package rillwright.cli.packaging;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.Method;

/** A class whose functions and whose equality, if it is a record, stand in plain code. */
final class PlainClass extends ClassVisitor {
  private static final String FUNCTIONS = "java/lang/invoke/LambdaMetafactory";
  private static final String RECORDS = "java/lang/runtime/ObjectMethods";

  private final ClassWriter writer;
  private final Predicate<Site> isWritten;
  private final Map<FunctionClass.Kind, FunctionClass> functions = new LinkedHashMap<>();
  private String name = "";
  private String nest = "";
  private int version;

  private PlainClass(ClassWriter writer, Predicate<Site> isWritten) {
    super(Opcodes.ASM9, writer);
    this.writer = writer;
    this.isWritten = isWritten;
  }

  /** The class of these bytes, with those of its functions in plain code that are to be. */
  static PlainClass of(byte[] bytes, Predicate<Site> isWritten) {
    ClassReader reader = new ClassReader(bytes);
    PlainClass plain = new PlainClass(new ClassWriter(reader, ClassWriter.COMPUTE_MAXS), isWritten);
    reader.accept(plain, 0);
    return plain;
  }

  /** Its code. */
  byte[] bytes() {
    return writer.toByteArray();
  }

  /** The class that lists the members of its nest. */
  String nest() {
    return nest;
  }

  /** The classes that its functions have become, by name. */
  Map<String, byte[]> functions() {
    return functions.values().stream()
        .collect(Collectors.toMap(FunctionClass::name, FunctionClass::bytes));
  }

  @Override
  public void visit(
      int version, int access, String name, String signature, String parent, String[] faces) {
    this.version = version;
    this.name = name;
    this.nest = name;
    super.visit(version, access, name, signature, parent, faces);
  }

  @Override
  public void visitNestHost(String host) {
    nest = host;
    super.visitNestHost(host);
  }

  @Override
  public MethodVisitor visitMethod(
      int access, String method, String types, String signature, String[] exceptions) {
    return new MethodVisitor(
        Opcodes.ASM9, super.visitMethod(access, method, types, signature, exceptions)) {
      @Override
      public void visitInvokeDynamicInsn(
          String made, String types, Handle maker, Object... arguments) {
        if (isFunction(maker, arguments)) {
          FunctionClass.Kind kind =
              new FunctionClass.Kind(
                  Type.getReturnType(types), new Method(made, arguments[0].toString()));
          functions
              .computeIfAbsent(kind, PlainClass.this::functionClass)
              .add(types, (Handle) arguments[1], (Type) arguments[2], this);
        } else if (maker.getOwner().equals(RECORDS) && !made.equals("toString")) {
          Method plain = new Method("$" + made, types);
          RecordEquality.of(name, arguments).write(plain, writer);
          super.visitMethodInsn(
              Opcodes.INVOKESTATIC, name, plain.getName(), plain.getDescriptor(), false);
        } else {
          super.visitInvokeDynamicInsn(made, types, maker, arguments);
        }
      }
    };
  }

  private FunctionClass functionClass(FunctionClass.Kind kind) {
    return new FunctionClass(name + "$$" + (functions.size() + 1), nest, version, kind);
  }

  /** Nests (JEP 181) let its class use what is private here; older classes have none. */
  private boolean isFunction(Handle maker, Object[] arguments) {
    return version >= Opcodes.V11
        && maker.getOwner().equals(FUNCTIONS)
        && maker.getName().equals("metafactory")
        && isWritten.test(Site.of(name, (Handle) arguments[1]));
  }
}
