package club.ascham.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.LdcInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * The statements that stand whole in the program. They are found in the compiled classes, where a
 * text that was put together from constants is one constant; those put together when they run are
 * met by the tests that run them.
 */
final class WholeStatements {
  private static final Pattern STATEMENT =
      Pattern.compile("\\s*(SELECT|WITH|INSERT|UPDATE|DELETE)\\s.*", Pattern.DOTALL);

  /** What a text leaves to be filled in when it runs. */
  private static final Pattern BLANK = Pattern.compile("%(\\d+\\$)?[sd]");

  private WholeStatements() {}

  /**
   * @param shape the record that its rows become; null: none stands beside it
   */
  record Whole(String where, String shape, String sql) {}

  static List<Whole> all() throws Exception {
    Path classes = Path.of(Rows.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    List<Whole> all = new ArrayList<>();
    try (Stream<Path> files = Files.walk(classes.resolve("club/ascham"))) {
      for (Path file : files.filter(one -> one.toString().endsWith(".class")).toList()) {
        collect(file, all);
      }
    }
    return all;
  }

  private static void collect(Path file, List<Whole> into) throws IOException {
    ClassNode read = new ClassNode();
    new ClassReader(Files.readAllBytes(file)).accept(read, ClassReader.SKIP_FRAMES);
    if (Stream.of("Test", "TestFixture").anyMatch(read.name::contains)) {
      return;
    }
    for (MethodNode method : read.methods) {
      for (AbstractInsnNode node : method.instructions) {
        if (node instanceof LdcInsnNode constant
            && constant.cst instanceof String sql
            && STATEMENT.matcher(sql).matches()
            && !BLANK.matcher(sql).find()
            && beginsAnArray(node)) {
          into.add(new Whole(read.name + "." + method.name, shapeBefore(node.getPrevious()), sql));
        }
      }
    }
  }

  /** Whether the statement's parameters come next: it is not put together with anything. */
  private static boolean beginsAnArray(AbstractInsnNode node) {
    AbstractInsnNode size = node.getNext();
    return size != null
        && size.getNext() != null
        && size.getNext().getOpcode() == Opcodes.ANEWARRAY;
  }

  private static String shapeBefore(AbstractInsnNode node) {
    return node instanceof LdcInsnNode constant
            && constant.cst instanceof Type type
            && type.getSort() == Type.OBJECT
        ? type.getClassName().replace('/', '.')
        : null;
  }
}
