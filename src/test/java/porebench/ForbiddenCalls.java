package porebench;

import static com.tngtech.archunit.base.DescribedPredicate.describe;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.List;
import java.util.Set;

/** Calls that take the clock, the locale, the charset or chance from the machine, or that write a file past the gate. */
final class ForbiddenCalls {
    private static final Set<String> LOCALE_AWARE = Set.of(
            "java.lang.String.format",
            "java.lang.String.toUpperCase",
            "java.lang.String.toLowerCase",
            "java.lang.String.formatted",
            "java.io.PrintStream.printf",
            "java.io.PrintStream.format",
            "java.io.PrintWriter.printf",
            "java.io.PrintWriter.format",
            "java.util.Formatter.<init>",
            "java.util.Scanner.<init>",
            "java.util.ResourceBundle.getBundle",
            "java.text.Collator.getInstance",
            "java.text.MessageFormat.<init>",
            "java.text.MessageFormat.format",
            "java.text.NumberFormat.getInstance",
            "java.text.NumberFormat.getNumberInstance",
            "java.text.NumberFormat.getIntegerInstance",
            "java.text.NumberFormat.getPercentInstance",
            "java.text.DecimalFormatSymbols.<init>",
            "java.text.DecimalFormatSymbols.getInstance",
            "java.text.SimpleDateFormat.<init>",
            "java.time.format.DateTimeFormatter.ofPattern");

    private static final Set<String> TEXT_FROM_BYTES = Set.of(
            "java.io.FileReader",
            "java.io.FileWriter",
            "java.io.InputStreamReader",
            "java.io.OutputStreamWriter",
            "java.io.PrintStream",
            "java.io.PrintWriter",
            "java.util.Scanner");

    private static final Set<String> WRITES_FILES = Set.of(
            "java.nio.file.Files.write",
            "java.nio.file.Files.writeString",
            "java.nio.file.Files.newOutputStream",
            "java.nio.file.Files.newBufferedWriter",
            "java.nio.file.Files.newByteChannel",
            "java.nio.file.Files.createFile",
            "java.nio.file.Files.createTempFile",
            "java.nio.file.Files.createLink",
            "java.nio.file.Files.createSymbolicLink",
            "java.nio.file.Files.copy",
            "java.nio.file.Files.move",
            "java.nio.channels.FileChannel.open",
            "java.io.File.createTempFile",
            "java.io.File.createNewFile",
            "java.io.File.renameTo",
            "java.io.FileOutputStream.<init>",
            "java.io.FileWriter.<init>",
            "java.io.RandomAccessFile.<init>");

    private static final Set<String> MAY_WRITE_A_NAMED_FILE = Set.of(
            "java.io.PrintStream.<init>",
            "java.io.PrintWriter.<init>",
            "java.util.Formatter.<init>",
            "javax.imageio.ImageIO.write",
            "org.apache.pdfbox.pdmodel.PDDocument.save");

    private ForbiddenCalls() {}

    interface Question {
        boolean isTrueOf(String owner, String name, List<String> parameters);
    }

    /** Matches a call or a method reference. */
    static DescribedPredicate<JavaAccess<?>> call(String description, Question question) {
        return describe(
                description,
                access -> access.getTarget() instanceof CodeUnitAccessTarget target
                        && question.isTrueOf(
                                target.getOwner().getName(),
                                target.getName(),
                                target.getRawParameterTypes().stream()
                                        .map(JavaClass::getName)
                                        .toList()));
    }

    static boolean readsTheClock(String owner, String name, List<String> parameters) {
        if (owner.startsWith("java.time.") && name.equals("now")) {
            return !parameters.equals(List.of("java.time.Clock"));
        }
        return owner.equals("java.time.Clock") && name.startsWith("system")
                || owner.equals("java.time.Clock") && name.startsWith("tick") && !parameters.contains("java.time.Clock")
                || owner.equals("java.time.ZoneId") && name.equals("systemDefault")
                || owner.equals("java.util.TimeZone") && name.equals("getDefault")
                || owner.equals("java.lang.System") && name.equals("currentTimeMillis");
    }

    static boolean takesDefaultLocale(String owner, String name, List<String> parameters) {
        if (owner.equals("java.text.DecimalFormat") && name.equals("<init>")) {
            return !parameters.contains("java.text.DecimalFormatSymbols");
        }
        if (owner.equals("java.text.MessageFormat") && name.equals("format")) {
            // The instance method carries the locale it was made with; the static one has none.
            return parameters.contains("java.lang.String");
        }
        return LOCALE_AWARE.contains(owner + "." + name)
                && !parameters.contains("java.util.Locale")
                && !parameters.contains("java.text.DateFormatSymbols");
    }

    static boolean takesDefaultCharset(String owner, String name, List<String> parameters) {
        boolean named = parameters.stream().anyMatch(each -> each.startsWith("java.nio.charset."));
        if (owner.equals("java.lang.String")) {
            return name.equals("getBytes") && !named || name.equals("<init>") && parameters.contains("[B") && !named;
        }
        if (owner.equals("java.io.ByteArrayOutputStream") && name.equals("toString")) {
            return !named;
        }
        if (owner.equals("java.nio.charset.Charset") && name.equals("defaultCharset")) {
            return true;
        }
        boolean bytes = !parameters.isEmpty()
                && Set.of("java.io.InputStream", "java.io.OutputStream", "java.io.File", "java.nio.file.Path")
                        .contains(parameters.get(0));
        boolean fileByName = !parameters.isEmpty()
                && parameters.get(0).equals("java.lang.String")
                && !owner.equals("java.util.Scanner");
        return TEXT_FROM_BYTES.contains(owner) && name.equals("<init>") && (bytes || fileByName) && !named;
    }

    static boolean writesAFile(String owner, String name, List<String> parameters) {
        String called = owner + "." + name;
        return WRITES_FILES.contains(called)
                || MAY_WRITE_A_NAMED_FILE.contains(called)
                        && (parameters.contains("java.io.File") || parameters.indexOf("java.lang.String") == 0);
    }

    /** The newest versions of one kind, asked for without saying which. */
    static boolean readsAWholeKind(String owner, String name, List<String> parameters) {
        boolean all = name.equals("latest") && parameters.size() == 1 || name.equals("each");
        return all && owner.startsWith("porebench.record.") && parameters.contains("java.lang.Class");
    }

    static boolean drawsWithoutASeed(String owner, String name, List<String> parameters) {
        boolean unseeded =
                Set.of("java.util.Random", "java.util.SplittableRandom").contains(owner)
                        && name.equals("<init>")
                        && parameters.isEmpty();
        return unseeded
                || owner.equals("java.lang.Math") && name.equals("random")
                || owner.equals("java.util.concurrent.ThreadLocalRandom");
    }
}
