package porebench;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.FileOutputStream;
import java.io.FileReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.text.MessageFormat;
import java.text.NumberFormat;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.ResourceBundle;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.ToIntFunction;
import java.util.function.UnaryOperator;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import porebench.method.Problem;
import porebench.record.Trial;
import porebench.record.book.Belonging;
import porebench.record.book.LabBook;
import porebench.record.book.Records;

/** Shows that the house rules can fail: each fault planted here is found, and nothing else is. */
class PlantedFaultsTest {
    @Test
    void findsEveryReadingOfTheClock() {
        assertThat(violations(HouseRulesTest.timeComesFromAClock, Time.class)).isEqualTo(7);
    }

    @Test
    void findsEveryUseOfTheMachinesLocale() {
        assertThat(violations(HouseRulesTest.localeIsAnArgument, Text.class)).isEqualTo(11);
        assertThat(violations(HouseRulesTest.onlyAppAsksForTheMachinesLocale, Text.class))
                .isEqualTo(1);
    }

    @Test
    void findsEveryUseOfTheMachinesCharset() {
        assertThat(violations(HouseRulesTest.charsetIsAnArgument, Bytes.class)).isEqualTo(7);
    }

    @Test
    void findsChanceWithoutASeed() {
        assertThat(violations(HouseRulesTest.chanceHasASeed, Chance.class)).isEqualTo(2);
    }

    @Test
    void findsOldDatesConsoleOutputAndAnEarlyEnd() {
        assertThat(violations(HouseRulesTest.noOldDates, Old.class)).isPositive();
        assertThat(violations(HouseRulesTest.onlyCommandAndAppPrintToTheConsole, Old.class))
                .isEqualTo(2);
        assertThat(violations(HouseRulesTest.onlyAppEndsTheProgram, Old.class)).isEqualTo(1);
    }

    @Test
    void findsEveryFileThatIsWrittenPastTheGate() {
        assertThat(violations(HouseRulesTest.filesAreWrittenThroughOneGate, Written.class))
                .isEqualTo(7);
    }

    @Test
    void findsNamesThatSayNothing() {
        assertThat(violations(HouseRulesTest.namesSayWhatAClassIs, MassUtils.class, StoreImpl.class, Time.class))
                .isEqualTo(2);
    }

    @Test
    void findsWhoeverIsSteeredByACode() {
        assertThat(violations(HouseRulesTest.codesSteerNothing, Steered.class)).isEqualTo(2);
    }

    @Test
    void findsWhoeverReadsAWholeKind() {
        assertThat(violations(HouseRulesTest.noQuestionReadsAWholeKind, Whole.class))
                .isEqualTo(3);
    }

    @Test
    void findsWhatOnlyTestsCall() {
        JavaClasses classes = new ClassFileImporter().importClasses(Asked.class, Asking.class);
        ArchRule rule = methods()
                .that()
                .arePublic()
                .and(DescribedPredicate.not(CalledByTheProduct.neededWithoutACaller()))
                .should(CalledByTheProduct.haveACaller());
        assertThat(rule.evaluate(classes).getFailureReport().getDetails())
                .hasSize(2)
                .anyMatch(line -> line.contains("neverAsked"))
                .anyMatch(line -> line.contains("callsItself"));
    }

    private static int violations(ArchRule rule, Class<?>... planted) {
        JavaClasses classes = new ClassFileImporter().importClasses(planted);
        return rule.evaluate(classes).getFailureReport().getDetails().size();
    }

    @SuppressWarnings("unused")
    private static final class Steered {
        boolean byCode(Problem problem) {
            Function<Problem, String> reference = Problem::code;
            return problem.code().equals("form.required");
        }

        boolean byKind(Problem problem) {
            return problem.kind() == Problem.Kind.NOT_YET;
        }
    }

    @SuppressWarnings("unused")
    private record Asked(int figure) implements Comparable<Asked> {
        public int asked() {
            return figure;
        }

        public int referredTo() {
            return figure;
        }

        public int neverAsked() {
            return figure;
        }

        public int callsItself() {
            return figure > 0 ? 0 : callsItself();
        }

        @Override
        public int compareTo(Asked other) {
            return Integer.compare(figure, other.figure);
        }
    }

    @SuppressWarnings("unused")
    private static final class Asking {
        ToIntFunction<Asked> asks(Asked one) {
            return one.asked() > 0 ? Asked::referredTo : other -> 0;
        }
    }

    @SuppressWarnings("unused")
    private static final class Time {
        void faults() {
            Instant.now();
            LocalDate.now();
            LocalDateTime.now(ZoneId.systemDefault());
            ZonedDateTime.now();
            Clock.systemUTC();
            Supplier<LocalDate> reference = LocalDate::now;
        }

        void right(Clock clock) {
            Instant.now(clock);
            clock.instant();
            LocalDate.now(clock);
        }
    }

    @SuppressWarnings("unused")
    private static final class Text {
        void faults(PrintWriter out) {
            String.format("%d", 1);
            "%d".formatted(1);
            "a".toUpperCase();
            "a".toLowerCase();
            out.printf("%d", 1);
            new DecimalFormat("0.0");
            NumberFormat.getInstance();
            MessageFormat.format("{0}", 1);
            DateTimeFormatter.ofPattern("d MMM");
            ResourceBundle.getBundle("porebench.text");
            UnaryOperator<String> reference = String::toUpperCase;
            Locale.getDefault();
        }

        void right(PrintWriter out, Locale locale, MessageFormat message) {
            String.format(locale, "%d", 1);
            "a".toUpperCase(locale);
            out.printf(locale, "%d", 1);
            new DecimalFormat("0.0", DecimalFormatSymbols.getInstance(locale));
            NumberFormat.getInstance(locale);
            message.format(new Object[] {1});
            DateTimeFormatter.ofPattern("d MMM", locale);
            ResourceBundle.getBundle("porebench.text", locale);
        }
    }

    @SuppressWarnings({"unused", "resource"})
    private static final class Bytes {
        void faults(InputStream in, ByteArrayOutputStream out) throws IOException {
            new FileReader("a");
            new FileReader(new File("a"));
            new InputStreamReader(in);
            new PrintStream(out);
            "a".getBytes();
            new String(new byte[0]);
            out.toString();
        }

        Reader right(InputStream in, ByteArrayOutputStream out) throws IOException {
            new PrintWriter(new StringWriter());
            new PrintStream(out, true, StandardCharsets.UTF_8);
            "a".getBytes(StandardCharsets.UTF_8);
            new String(new byte[0], StandardCharsets.UTF_8);
            out.toString(StandardCharsets.UTF_8);
            new FileReader("a", StandardCharsets.UTF_8);
            return new InputStreamReader(in, StandardCharsets.UTF_8);
        }
    }

    @SuppressWarnings("unused")
    private static final class Chance {
        void faults() {
            new Random();
            Math.random();
        }

        void right(long seed) {
            new Random(seed);
        }
    }

    @SuppressWarnings("unused")
    private static final class Old {
        void faults() {
            new Date(0);
            System.out.println();
            System.err.println();
            System.exit(1);
        }
    }

    @SuppressWarnings({"unused", "resource"})
    private static final class Written {
        void faults(Path file, BufferedImage picture) throws IOException {
            Files.writeString(file, "");
            Files.createTempFile("a", "b");
            Files.move(file, file);
            FileChannel.open(file);
            new FileOutputStream(file.toFile());
            new PrintStream("a", StandardCharsets.UTF_8);
            ImageIO.write(picture, "png", file.toFile());
        }

        void right(Path file, OutputStream stream, BufferedImage picture) throws IOException {
            Files.readString(file);
            Files.createDirectories(file);
            new PrintStream(stream, true, StandardCharsets.UTF_8);
            ImageIO.write(picture, "png", stream);
        }
    }

    @SuppressWarnings("unused")
    private static final class Whole {
        void faults(LabBook book, Records records) {
            book.latest(Trial.class);
            records.latest(Trial.class);
            book.each(Trial.class, trial -> {});
        }

        void right(LabBook book) {
            book.latest(Trial.class, "T-1");
            book.latest(Trial.class, List.of("T-1"));
            book.latestOf(Belonging.TRIALS_OF_MIX, "M-1");
        }
    }

    private static final class MassUtils {}

    private static final class StoreImpl {}
}
