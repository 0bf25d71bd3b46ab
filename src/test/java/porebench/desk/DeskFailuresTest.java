package porebench.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CancellationException;
import java.util.function.Predicate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.form.Tasks;
import porebench.exchange.CsvSheets;
import porebench.method.MeterType;
import porebench.method.Role;
import porebench.print.PdfPress;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.id.MixId;
import porebench.store.Books;

/** What the desk does with a lab book that cannot be read or written, with work that a person stops, and with what comes too late. */
class DeskFailuresTest {
    private static final MixId MIX = new MixId("M-1");
    private static final Question<?> QUESTION = new Question.Newest<>(Source.class);

    @TempDir
    Path folder;

    private LabBook file;
    private Predicate<String> fails = call -> false;
    private LabBook book;

    @BeforeEach
    void fill() {
        file = Books.fresh(folder.resolve("book.porebench"));
        Books.keep(
                file,
                Samples.source("S-1", Role.FINE, "1"),
                Samples.source("S-2", Role.COARSE, "1"),
                Samples.meter("B-1", MeterType.B),
                Samples.mix("M-1", "S-1", "S-2"),
                Samples.mix("M-2", "S-1", "S-2"));
        book = (LabBook) Proxy.newProxyInstance(
                LabBook.class.getClassLoader(), new Class<?>[] {LabBook.class}, (proxy, method, arguments) -> {
                    if (fails.test(method.getName())) {
                        throw new IllegalStateException("the disk is gone");
                    }
                    try {
                        return method.invoke(file, arguments);
                    } catch (InvocationTargetException failure) {
                        throw failure.getCause();
                    }
                });
    }

    @AfterEach
    void close() {
        file.close();
    }

    private DeskModel desk(Tasks tasks) {
        DeskModel desk = new DeskModel(
                new Tools(
                        Books.SHELF,
                        new CsvSheets(),
                        new PdfPress("Porebench test", Books.CLOCK, ZoneOffset.UTC),
                        tasks,
                        new ScriptedAsker(),
                        Books.CLOCK,
                        ZoneOffset.UTC,
                        Locale.ENGLISH),
                book);
        desk.setPerson("R. Vale");
        return desk;
    }

    private static HeldTasks held() {
        HeldTasks held = new HeldTasks();
        held.holdAnswers();
        return held;
    }

    private void breaks() {
        fails = call -> true;
    }

    @Test
    void aMixThatCannotBeReadIsToldAsAFaultAndWhatIsOnViewStays() {
        DeskModel desk = desk(Tasks.direct());
        desk.select(MIX);
        breaks();
        assertThatThrownBy(() -> desk.select(new MixId("M-2")))
                .hasMessage("selecting a mix")
                .hasRootCauseMessage("the disk is gone");
        assertThat(desk.selected()).contains(MIX);
    }

    @Test
    void aSelectionThatAPersonStopsIsNoFault() {
        HeldTasks held = held();
        DeskModel desk = desk(held);
        desk.select(MIX);
        held.stop();
        assertThat(desk.selected()).isEmpty();
        desk.ask(QUESTION, answer -> assertThat(answer).as("never comes").isNull());
        held.stop();
    }

    @Test
    void ofTwoSelectionsTheFaultOfTheFirstIsNobodysAnyMore() {
        HeldTasks held = held();
        DeskModel desk = desk(held);
        desk.select(MIX);
        desk.select(new MixId("M-2"));
        breaks();
        held.end();
        fails = call -> false;
        held.end();
        assertThat(desk.selected()).contains(new MixId("M-2"));
    }

    @Test
    void aSelectionOfALabBookThatWasTurnedAwayIsDropped() {
        HeldTasks held = held();
        DeskModel desk = desk(held);
        desk.select(MIX);
        desk.turnAway();
        held.end();
        assertThat(desk.selected()).isEmpty();
        assertThat(desk.hasBook()).isFalse();
    }

    @Test
    void aQuestionThatCannotBeAnsweredIsToldAsAFault() {
        DeskModel desk = desk(Tasks.direct());
        breaks();
        assertThatThrownBy(() -> desk.ask(QUESTION, answer -> {})).hasMessage("asking the lab book");
    }

    @Test
    void aReadingAnewThatFailsIsToldAndTheNextOneIsTried() {
        DeskModel desk = desk(Tasks.direct());
        breaks();
        assertThatThrownBy(desk::refresh).hasMessage("reading the lab book anew");
        List<String> told = new ArrayList<>();
        desk.refresh(failure -> told.add(failure.getMessage()));
        assertThat(told).containsExactly("the disk is gone");
        fails = call -> false;
        Books.keep(file, Samples.mix("M-3", "S-1", "S-2"));
        desk.refresh();
        assertThat(desk.rows()).hasSize(3);
    }

    @Test
    void theLabBookIsReadAnewOnceAtATimeAndAFaultOfOneTurnedAwayIsNotTold() {
        HeldTasks held = held();
        DeskModel desk = desk(held);
        List<Exception> told = new ArrayList<>();
        desk.refresh(told::add);
        desk.refresh(told::add);
        assertThat(held.count()).isEqualTo(1);
        desk.turnAway();
        breaks();
        held.end();
        assertThat(told).isEmpty();
    }

    @Test
    void whatWasKeptCountsAsKeptWhereItCannotBeReadAnewAtOnce() {
        DeskModel desk = desk(Tasks.direct());
        fails = "changeNumber"::equals;
        List<Integer> refused = new ArrayList<>();
        desk.keep(
                List.of(Draft.of(Samples.source("S-3", Role.FINE, "1"))),
                "entered",
                found -> refused.add(found.size()));
        assertThat(refused).containsExactly(0);
        assertThat(file.latest(Source.class, "S-3")).isPresent();
        assertThat(desk.doing()).isEmpty();
        fails = call -> false;
        desk.refresh();
        assertThat(desk.answer(QUESTION))
                .hasValueSatisfying(all -> assertThat((List<?>) all).hasSize(3));
    }

    @Test
    void whatCannotBeKeptIsAFaultUnlessAPersonStoppedIt() {
        HeldTasks held = held();
        DeskModel desk = desk(held);
        List<Draft> drafts = List.of(Draft.of(Samples.source("S-3", Role.FINE, "1")));
        fails = "keep"::equals;
        desk.keep(drafts, "entered", refused -> {});
        assertThatThrownBy(held::end).hasMessage("keeping records").hasRootCauseMessage("the disk is gone");
        assertThat(desk.doing()).isEmpty();
        List<Exception> failed = new ArrayList<>();
        desk.keep(drafts, "entered", Outcome.of(refused -> {}, failed::add));
        held.stop();
        assertThat(failed).singleElement().isInstanceOf(CancellationException.class);
        assertThat(file.latest(Source.class, "S-3")).isEmpty();
    }
}
