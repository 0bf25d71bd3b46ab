package porebench.evidence.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Bench;
import porebench.method.Place;
import porebench.method.Role;
import porebench.record.Kept;
import porebench.record.SampleCalibrations;
import porebench.record.Samples;
import porebench.record.book.LabBook;

/** An import asks a lab book for what its files touch: never for the whole of a kind, and not row by row. */
class IntakeQuestionsTest {
    @TempDir
    Path folder;

    private Bench bench;

    @BeforeEach
    void begin() {
        bench = new Bench(folder);
    }

    @AfterEach
    void end() {
        bench.close();
    }

    /** Returns what a lab book is asked for while some records are checked: the names of the questions and what they are about. */
    private List<String> asked(int rows, IntFunction<Kept> row) {
        List<String> asked = new ArrayList<>();
        LabBook listened = (LabBook) Proxy.newProxyInstance(
                LabBook.class.getClassLoader(), new Class<?>[] {LabBook.class}, (proxy, question, values) -> {
                    asked.add(named(question, values));
                    try {
                        return question.invoke(bench.book, values);
                    } catch (InvocationTargetException failure) {
                        throw failure.getCause();
                    }
                });
        Intake.Result result = Intake.check(
                listened,
                IntStream.range(0, rows)
                        .mapToObj(i -> new Incoming(Place.of("file.csv", i + 2), row.apply(i)))
                        .toList(),
                SampleCalibrations.TODAY);
        assertThat(result.drafts()).hasSizeGreaterThanOrEqualTo(rows);
        return asked;
    }

    private static String named(Method question, Object[] values) {
        return question.getName() + (values == null ? "" : " " + values[0] + (values.length == 1 ? " whole" : ""));
    }

    private void isAskedOnce(IntFunction<Kept> row) {
        List<String> few = asked(3, row);
        assertThat(few).noneMatch(question -> question.endsWith(".Trial whole"));
        assertThat(few).noneMatch(question -> question.endsWith(".Determination whole"));
        assertThat(asked(60, row)).hasSameSizeAs(few);
    }

    @Test
    void trialsOfADetermination() {
        isAskedOnce(i -> Samples.trial("N-" + i, "M-1", "M-1/1", "5.4"));
    }

    @Test
    void trialsThatNameNoDetermination() {
        isAskedOnce(i -> Samples.trial("N-" + i, "M-1", "M-1", "5.4"));
    }

    @Test
    void trialsOfNewDeterminations() {
        isAskedOnce(i -> Samples.trial("N-" + i, "M-1", "M-1/new" + i, "5.4"));
    }

    @Test
    void determinations() {
        isAskedOnce(i -> Samples.determination("M-1/new" + i, "M-1"));
    }

    @Test
    void mixes() {
        isAskedOnce(i -> Samples.mix("N-" + i, "S-1", "S-2"));
    }

    @Test
    void sources() {
        isAskedOnce(i -> Samples.source("N-" + i, Role.FINE, "Ledge"));
    }
}
