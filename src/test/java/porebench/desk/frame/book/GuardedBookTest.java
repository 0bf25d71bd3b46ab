package porebench.desk.frame.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Method;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.EventThread;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Summaries;
import porebench.store.Books;

/** One window's lab book, a real file, used by several threads at once. */
class GuardedBookTest {
    private static final int THREADS = 4;
    private static final int EACH = 25;

    @TempDir
    Path folder;

    private LabBook book;

    @BeforeEach
    void create() {
        book = GuardedBook.shelf(Books.SHELF).create(folder.resolve("book.porebench"));
    }

    @AfterEach
    void close() {
        book.close();
    }

    private static Source source(int thread, int number) {
        return Samples.source("S-" + thread + "-" + number, Role.FINE, "Ledge");
    }

    /** Does some work on every thread at once, all of them starting together, and waits for it. */
    private static <T> List<T> atOnce(IntFunction<Callable<T>> work) throws Exception {
        CyclicBarrier start = new CyclicBarrier(THREADS);
        ExecutorService people = Executors.newFixedThreadPool(THREADS);
        List<T> results = new ArrayList<>();
        try {
            List<Callable<T>> all = IntStream.range(0, THREADS)
                    .mapToObj(thread -> (Callable<T>) () -> {
                        start.await();
                        return work.apply(thread).call();
                    })
                    .toList();
            for (Future<T> done : people.invokeAll(all)) {
                results.add(done.get());
            }
        } finally {
            people.shutdown();
        }
        return results;
    }

    @Test
    void threadsThatKeepAtOnceMakeOneChain() throws Exception {
        List<List<Problem>> problems = atOnce(thread -> () -> {
            List<Problem> found = new ArrayList<>();
            for (int number = 0; number < EACH; number++) {
                found.addAll(book.keep(List.of(Draft.of(source(thread, number))), "R. Vale", "entered"));
            }
            return found;
        });
        assertThat(problems).allSatisfy(found -> assertThat(found).isEmpty());
        assertThat(book.changeNumber()).isEqualTo((long) THREADS * EACH);
        assertThat(book.latest(Source.class)).hasSize(THREADS * EACH);
        assertThat(book.verify()).isEmpty();
    }

    /** Of several who correct the same version one wins; each other is told so and may look again. */
    @Test
    void onlyOneOfSeveralCorrectionsOfOneVersionIsKept() throws Exception {
        Books.keep(book, source(0, 0));
        List<List<String>> codes = atOnce(thread -> () -> {
            Draft draft = new Draft(Samples.source("S-0-0", Role.FINE, "Ledge " + thread), 1);
            return Books.codes(book.keep(List.of(draft), "R. Vale", "corrected"));
        });
        assertThat(codes).containsOnlyOnce(List.of());
        assertThat(codes.stream().filter(found -> !found.isEmpty()))
                .hasSize(THREADS - 1)
                .containsOnly(List.of("book.changed-meanwhile"));
        assertThat(book.history(Source.class, "S-0-0")).hasSize(2);
    }

    /** A page reads while a task keeps, checks and copies. */
    @Test
    void readingGoesOnBesideKeepingCheckingAndCopying() throws Exception {
        List<Integer> seen = atOnce(thread -> () -> {
            int most = 0;
            for (int number = 0; number < EACH; number++) {
                switch (thread) {
                    case 0 -> Books.keep(book, source(thread, number));
                    case 1 -> assertThat(book.verify()).isEmpty();
                    case 2 -> book.saveCopy(folder.resolve("copy-" + number + ".porebench"));
                    default -> {
                        int now = book.latest(Source.class).size();
                        assertThat(now).isGreaterThanOrEqualTo(most);
                        assertThat(book.head().entries()).isGreaterThanOrEqualTo(now);
                        most = now;
                    }
                }
            }
            return most;
        });
        assertThat(seen.get(THREADS - 1)).isBetween(0, EACH);
        assertThat(book.changeNumber()).isEqualTo(EACH);
    }

    /** A method of a lab book that is added later must not be left unguarded. */
    @Test
    void everyMethodOfALabBookIsGuarded() {
        // What is known without a look into the file may be asked at any time.
        assertThat(Arrays.stream(LabBook.class.getMethods())
                        .filter(method ->
                                !Set.of("name", "warnings", "notWritable").contains(method.getName())))
                .hasSizeGreaterThan(20)
                .allSatisfy(method -> assertThatThrownBy(() -> EventThread.call(() -> method.invoke(book, any(method))))
                        .hasRootCauseMessage(
                                method.getName() + " of a lab book must be called beside the event thread"));
        assertThat(Stream.of("name", "warnings", "notWritable"))
                .allSatisfy(known -> assertThatCode(() -> EventThread.call(
                                () -> LabBook.class.getMethod(known).invoke(book)))
                        .doesNotThrowAnyException());
    }

    /** Returns arguments that are never looked at. */
    private static Object[] any(Method method) {
        return Arrays.stream(method.getParameterTypes())
                .map(type -> type == long.class ? (Object) 0L : type == int.class ? (Object) 0 : null)
                .toArray();
    }

    /** Summaries are kept beside the entries, in the same file. */
    @Test
    void summariesWaitForTheirLabBookAndFailAsItDoes() throws Exception {
        assertThat(book.summaries().upTo(1)).isEqualTo(book.summaries().upTo(1));
        assertThat(book).isEqualTo(book).hasSameHashCodeAs(book).isNotEqualTo(Books.SHELF);
        Summaries summaries = book.summaries();
        book.close();
        assertThatThrownBy(() -> book.latest(Source.class))
                .isInstanceOf(CancellationException.class)
                .hasMessage("lab book book.porebench must be open, but is closed");
        assertThatThrownBy(() -> summaries.upTo(1)).isInstanceOf(CancellationException.class);
        book = GuardedBook.shelf(Books.SHELF).open(folder.resolve("book.porebench"));
    }

    /** What is read for nobody is given up; what somebody wanted kept, copied or checked must not be lost silently. */
    @Test
    void whatAPersonWantedOfAClosedLabBookIsRefusedAloud() throws Exception {
        book.close();
        List<ThrowingCallable> wanted = List.of(
                () -> book.keep(List.of(Draft.of(source(0, 0))), "R. Vale", "entered"),
                () -> book.saveCopy(folder.resolve("copy.porebench")),
                book::verify,
                () -> book.check(Optional.empty()));
        assertThat(wanted)
                .allSatisfy(one -> assertThatThrownBy(one)
                        .isInstanceOf(IllegalStateException.class)
                        .isNotInstanceOf(CancellationException.class)
                        .hasMessage("lab book book.porebench must be open, but is closed"));
        book = GuardedBook.shelf(Books.SHELF).open(folder.resolve("book.porebench"));
    }

    @Test
    void refusesTheEventThread() {
        assertThatThrownBy(() -> EventThread.call(() -> book.latest(Source.class)))
                .hasRootCauseInstanceOf(IllegalStateException.class)
                .hasRootCauseMessage("latest of a lab book must be called beside the event thread");
        assertThatThrownBy(() ->
                        EventThread.call(() -> GuardedBook.shelf(Books.SHELF).open(folder.resolve("book.porebench"))))
                .hasRootCauseMessage("open of a lab book must be called beside the event thread");
    }

    @Test
    void aShelfThatOnlyNotesStraysLetsThemGoOn() throws Exception {
        List<IllegalStateException> strays = new ArrayList<>();
        LabBook noting = GuardedBook.shelf(Books.SHELF, strays::add).open(folder.resolve("book.porebench"));
        assertThat(strays).isEmpty();
        assertThat(EventThread.call(() -> noting.latest(Source.class))).isEmpty();
        assertThat(EventThread.call(noting::name)).isEqualTo("book.porebench");
        assertThat(strays)
                .singleElement()
                .satisfies(stray ->
                        assertThat(stray).hasMessage("latest of a lab book must be called beside the event thread"));
        noting.close();
    }
}
