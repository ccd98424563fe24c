package rillwright.cli.packaging;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;
import org.objectweb.asm.commons.TableSwitchGenerator;

/**
 * The class of all functions of one kind that a class makes: an object of it holds the number of
 * its function and the values that this one captured.
 */
final class FunctionClass {
  /**
   * What functions are.
   *
   * @param face their interface
   * @param method that interface's one method
   */
  record Kind(Type face, Method method) {}

  /**
   * One function.
   *
   * @param held types of the values that it captured
   * @param body what it calls
   * @param exact what it takes and returns, where its interface's method has type variables
   */
  private record Function(List<Type> held, Handle body, Type exact) {}

  private static final Type OBJECT = Type.getType(Object.class);
  private static final Method INIT = Method.getMethod("void <init>()");
  private static final Method INIT_NUMBER = Method.getMethod("void <init>(int)");
  private static final String NUMBER = "number";

  private final Type own;
  private final String nest;
  private final int version;
  private final Kind kind;
  private final List<Function> functions = new ArrayList<>();

  FunctionClass(String name, String nest, int version, Kind kind) {
    this.own = Type.getObjectType(name);
    this.nest = nest;
    this.version = version;
    this.kind = kind;
  }

  String name() {
    return own.getInternalName();
  }

  /**
   * Takes up one more function.
   *
   * @param types what it captures, and its interface
   * @param site where it is made: gets the code that makes it of the captured values on the stack
   */
  void add(String types, Handle body, Type exact, MethodVisitor site) {
    Type[] held = Type.getArgumentTypes(types);
    String maker = NUMBER + functions.size();
    functions.add(new Function(List.of(held), body, exact));
    if (held.length == 0) {
      site.visitFieldInsn(Opcodes.GETSTATIC, name(), maker, own.getDescriptor());
    } else {
      site.visitMethodInsn(
          Opcodes.INVOKESTATIC, name(), maker, Type.getMethodDescriptor(own, held), false);
    }
  }

  byte[] bytes() {
    ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_FRAMES);
    int access = Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC;
    String[] faces = {kind.face.getInternalName()};
    writer.visit(version, access, name(), null, OBJECT.getInternalName(), faces);
    writer.visitNestHost(nest);
    writer.visitField(Opcodes.ACC_FINAL, NUMBER, "I", null, null);
    Map<String, Type> slots = new LinkedHashMap<>();
    functions.forEach(function -> slots.putAll(slots(function.held)));
    slots.forEach((slot, type) -> writer.visitField(0, slot, type.getDescriptor(), null, null));
    init(writer);
    makers(writer);
    run(writer);
    return writer.toByteArray();
  }

  private void init(ClassWriter writer) {
    GeneratorAdapter code = new GeneratorAdapter(0, INIT_NUMBER, null, null, writer);
    code.loadThis();
    code.invokeConstructor(OBJECT, INIT);
    code.loadThis();
    code.loadArg(0);
    code.putField(own, NUMBER, Type.INT_TYPE);
    code.returnValue();
    code.endMethod();
  }

  /** A static field for each function that captures nothing, a static method for each other. */
  private void makers(ClassWriter writer) {
    GeneratorAdapter start =
        new GeneratorAdapter(
            Opcodes.ACC_STATIC, Method.getMethod("void <clinit>()"), null, null, writer);
    for (int i = 0; i < functions.size(); i++) {
      List<Type> held = functions.get(i).held;
      String maker = NUMBER + i;
      if (held.isEmpty()) {
        writer.visitField(
            Opcodes.ACC_STATIC | Opcodes.ACC_FINAL, maker, own.getDescriptor(), null, null);
        make(start, i);
        start.putStatic(own, maker, own);
        continue;
      }
      GeneratorAdapter code =
          new GeneratorAdapter(
              Opcodes.ACC_STATIC,
              new Method(maker, own, held.toArray(Type[]::new)),
              null,
              null,
              writer);
      make(code, i);
      List<String> names = new ArrayList<>(slots(held).keySet());
      for (int k = 0; k < held.size(); k++) {
        code.dup();
        code.loadArg(k);
        code.putField(own, names.get(k), slotType(held.get(k)));
      }
      code.returnValue();
      code.endMethod();
    }
    start.returnValue();
    start.endMethod();
  }

  private void make(GeneratorAdapter code, int number) {
    code.newInstance(own);
    code.dup();
    code.push(number);
    code.invokeConstructor(own, INIT_NUMBER);
  }

  /** The interface's method: what the function of this number does. */
  private void run(ClassWriter writer) {
    GeneratorAdapter code =
        new GeneratorAdapter(Opcodes.ACC_PUBLIC, kind.method, null, null, writer);
    int last = functions.size() - 1;
    if (last > 0) {
      code.loadThis();
      code.getField(own, NUMBER, Type.INT_TYPE);
      code.tableSwitch(
          IntStream.range(0, last).toArray(),
          new TableSwitchGenerator() {
            @Override
            public void generateCase(int number, Label end) {
              run(code, functions.get(number));
            }

            @Override
            public void generateDefault() {
              run(code, functions.get(last));
            }
          });
    } else {
      run(code, functions.get(last));
    }
    code.endMethod();
  }

  private void run(GeneratorAdapter code, Function function) {
    Handle body = function.body;
    boolean makes = body.getTag() == Opcodes.H_NEWINVOKESPECIAL;
    Type owner = Type.getObjectType(body.getOwner());
    List<Type> wanted = new ArrayList<>(Arrays.asList(Type.getArgumentTypes(body.getDesc())));
    if (makes) {
      code.newInstance(owner);
      code.dup();
    } else if (body.getTag() != Opcodes.H_INVOKESTATIC) {
      wanted.add(0, owner);
    }
    int next = 0;
    List<String> slots = new ArrayList<>(slots(function.held).keySet());
    for (Type held : function.held) {
      code.loadThis();
      code.getField(own, slots.get(next), slotType(held));
      fit(code, slotType(held), held, wanted.get(next++));
    }
    Type[] given = kind.method.getArgumentTypes();
    for (int i = 0; i < given.length; i++) {
      code.loadArg(i);
      fit(code, given[i], function.exact.getArgumentTypes()[i], wanted.get(next++));
    }
    code.visitMethodInsn(
        call(body), body.getOwner(), body.getName(), body.getDesc(), body.isInterface());
    giveBack(code, makes ? owner : Type.getReturnType(body.getDesc()), function.exact);
  }

  private void giveBack(GeneratorAdapter code, Type got, Type exact) {
    Type wanted = kind.method.getReturnType();
    if (wanted.equals(Type.VOID_TYPE)) {
      switch (got.getSize()) {
        case 2 -> code.pop2();
        case 1 -> code.pop();
        default -> {}
      }
    } else {
      fit(code, got, got, Boxes.isPrimitive(wanted) ? wanted : exact.getReturnType());
    }
    code.returnValue();
  }

  private static int call(Handle body) {
    return switch (body.getTag()) {
      case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
      case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
      default -> body.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
    };
  }

  /**
   * Makes the value on the stack what is wanted, by the conversions that a function may do (Java SE
   * 17, {@code java.lang.invoke.LambdaMetafactory}).
   *
   * @param given its type there
   * @param sure what it is known to be
   */
  private static void fit(GeneratorAdapter code, Type given, Type sure, Type wanted) {
    if (Boxes.isPrimitive(given) && Boxes.isPrimitive(wanted)) {
      widen(code, given, wanted);
    } else if (Boxes.isPrimitive(given)) {
      code.valueOf(given);
    } else if (Boxes.isPrimitive(wanted)) {
      Type inside = Boxes.inside(sure).orElse(wanted);
      code.unbox(inside);
      widen(code, inside, wanted);
    } else if (!given.equals(wanted)) {
      code.checkCast(wanted);
    }
  }

  private static void widen(GeneratorAdapter code, Type given, Type wanted) {
    if (!slotType(given).equals(slotType(wanted))) {
      code.cast(given, wanted);
    }
  }

  /** Fields that hold captured values, in their order, each of the type that it is kept as. */
  private static Map<String, Type> slots(List<Type> held) {
    Map<String, Type> slots = new LinkedHashMap<>();
    Map<Type, Integer> counts = new HashMap<>();
    for (Type type : held) {
      Type kept = slotType(type);
      int count = counts.merge(kept, 1, Integer::sum);
      slots.put((kept.equals(OBJECT) ? "A" : kept.getDescriptor()) + count, kept);
    }
    return slots;
  }

  /** All that a Java machine keeps as int is int, all that is no primitive an object. */
  private static Type slotType(Type type) {
    return switch (type.getSort()) {
      case Type.LONG, Type.FLOAT, Type.DOUBLE -> type;
      case Type.ARRAY, Type.OBJECT -> OBJECT;
      default -> Type.INT_TYPE;
    };
  }
}
