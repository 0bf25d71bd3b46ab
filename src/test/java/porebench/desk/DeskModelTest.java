package porebench.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.form.Tasks;
import porebench.desk.form.UnitSystem;
import porebench.evidence.FactorState;
import porebench.exchange.CsvSheets;
import porebench.method.MeterType;
import porebench.method.Role;
import porebench.print.PdfPress;
import porebench.record.Laboratory;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.MixId;
import porebench.store.Books;

/** What the window is looking at, on a real lab book: it keeps up with others and with the calendar. */
class DeskModelTest {
    private static final MixId MIX = new MixId("M-1");

    @TempDir
    Path folder;

    /** A clock that a test sets. */
    private static final class Wall extends Clock {
        private Instant now = Books.NOON;

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return now;
        }
    }

    private final Wall wall = new Wall();

    private DeskModel desk(LabBook book) {
        return desk(book, Tasks.direct());
    }

    private DeskModel desk(LabBook book, Tasks tasks) {
        return new DeskModel(
                new Tools(
                        Books.SHELF,
                        new CsvSheets(),
                        new PdfPress("Porebench test", wall, ZoneOffset.UTC),
                        tasks,
                        new ScriptedAsker(),
                        wall,
                        ZoneOffset.UTC,
                        Locale.ENGLISH),
                book);
    }

    private static HeldTasks held() {
        HeldTasks held = new HeldTasks();
        held.holdAnswers();
        return held;
    }

    @Test
    void ofTwoMixesSelectedInARowOnlyTheLastComesOnView() {
        try (LabBook book = book()) {
            Books.keep(book, Samples.mix("M-2", "S-1", "S-2"));
            HeldTasks held = held();
            DeskModel desk = desk(book, held);
            List<MixId> shown = new ArrayList<>();
            desk.onChange(() -> desk.selected().ifPresent(shown::add));
            desk.select(MIX);
            desk.select(new MixId("M-2"));
            assertThat(desk.selected()).as("what is on view stays").isEmpty();
            held.end();
            held.end();
            assertThat(shown).containsExactly(new MixId("M-2"));
        }
    }

    @Test
    void savingIsSaidUntilItIsDoneAndThenTheMixOnViewIsTheSame() {
        try (LabBook book = book()) {
            HeldTasks held = held();
            DeskModel desk = desk(book, held);
            desk.setPerson("R. Vale");
            desk.select(MIX);
            held.end();
            List<String> said = new ArrayList<>();
            desk.onDoing(() -> said.add(desk.doing()));
            List<Integer> seen = new ArrayList<>();
            desk.keep(
                    List.of(Draft.of(Samples.trial("T-2", "M-1", "M-1/1", "5.5"))),
                    "entered",
                    refused -> seen.add(refused.size()));
            assertThat(said).containsExactly("Saving …");
            assertThat(trials(desk)).isEqualTo(1);
            held.end();
            assertThat(said).containsExactly("Saving …", "");
            assertThat(seen).containsExactly(0);
            assertThat(trials(desk)).isEqualTo(2);
            assertThat(desk.selected()).contains(MIX);
        }
    }

    private static int trials(DeskModel desk) {
        return desk.evidence().orElseThrow().determinations().get(0).trials().size();
    }

    @Test
    void whatIsKeptWhileTheWindowTurnsToAnotherLabBookIsKeptAndShownNowhereElse() {
        try (LabBook book = book();
                LabBook other = Books.fresh(folder.resolve("other.porebench"))) {
            HeldTasks held = held();
            DeskModel desk = desk(book, held);
            desk.setPerson("R. Vale");
            List<Integer> seen = new ArrayList<>();
            desk.keep(
                    List.of(Draft.of(Samples.source("S-3", Role.FINE, "1"))),
                    "entered",
                    refused -> seen.add(refused.size()));
            desk.turnTo(Reading.of(other, LocalDate.of(2026, 3, 2).atTime(12, 0)));
            held.end();
            assertThat(seen).containsExactly(0);
            assertThat(desk.book()).isSameAs(other);
            assertThat(desk.rows()).isEmpty();
            assertThat(book.latest(Source.class, "S-3")).isPresent();
            assertThat(other.latest(Source.class)).isEmpty();
        }
    }

    @Test
    void anAnswerComesLaterThanItsQuestionAndOfAnotherLabBookNotAtAll() {
        Question<List<Version<Source>>> question = new Question.Newest<>(Source.class);
        try (LabBook book = book();
                LabBook other = Books.fresh(folder.resolve("other.porebench"))) {
            HeldTasks held = new HeldTasks();
            DeskModel desk = desk(book, held);
            int[] told = {0};
            desk.onChange(() -> told[0]++);
            assertThat(desk.answer(question)).isEmpty();
            assertThat(desk.answer(question)).as("asked once").isEmpty();
            assertThat(held.count()).isEqualTo(1);
            desk.turnTo(Reading.of(other, LocalDate.of(2026, 3, 2).atTime(12, 0)));
            assertThat(desk.answer(question)).isEmpty();
            told[0] = 0;
            held.end();
            assertThat(desk.answer(question)).as("of the lab book before").isEmpty();
            assertThat(told[0]).isZero();
            held.end();
            assertThat(told[0]).isEqualTo(1);
            assertThat(desk.answer(question)).contains(List.of());
        }
    }

    @Test
    void whatWasAskedIsKnownAnewWithWhatWasKept() {
        try (LabBook book = book()) {
            HeldTasks held = new HeldTasks();
            DeskModel desk = desk(book, held);
            desk.setPerson("R. Vale");
            Question<List<Version<Source>>> question = new Question.Newest<>(Source.class);
            desk.answer(question);
            held.end();
            desk.keep(List.of(Draft.of(Samples.source("S-3", Role.FINE, "1"))), "entered", refused -> {
                assertThat(desk.answer(question).orElseThrow()).hasSize(3);
                assertThat(held.count()).isZero();
            });
            assertThat(desk.answer(question).orElseThrow()).hasSize(3);
        }
    }

    /** A hidden page asks nothing, and what it asked once must not make every saving longer. */
    @Test
    void whatNobodyAsksAnyMoreIsNotLookedUpAgain() {
        try (LabBook book = book()) {
            int[] lookedUp = {0};
            DeskModel desk = desk(book);
            desk.setPerson("R. Vale");
            Question<Integer> question = seen -> ++lookedUp[0];
            assertThat(desk.answer(question)).contains(1);
            desk.keep(List.of(Draft.of(Samples.source("S-3", Role.FINE, "1"))), "entered", refused -> {});
            assertThat(lookedUp[0]).isEqualTo(2);
            desk.keep(List.of(Draft.of(Samples.source("S-4", Role.FINE, "1"))), "entered", refused -> {});
            assertThat(lookedUp[0]).isEqualTo(2);
            assertThat(desk.answer(question)).contains(3);
        }
    }

    @Test
    void whatThePersonStopsIsNoFault() {
        try (LabBook book = book()) {
            HeldTasks held = held();
            DeskModel desk = desk(book, held);
            desk.setPerson("R. Vale");
            List<Draft> drafts = List.of(Draft.of(Samples.source("S-3", Role.FINE, "1")));
            desk.keep(drafts, "entered", refused -> {});
            desk.select(MIX);
            desk.ask(new Question.HeadOfBook(), head -> {});
            held.stop();
            held.stop();
            held.stop();
            assertThat(desk.doing()).isEmpty();
            assertThat(desk.selected()).isEmpty();
            desk.keep(drafts, "entered", refused -> {});
            desk.turnAway();
            book.close();
            assertThatThrownBy(held::end).hasMessage("keeping records");
        }
    }

    @Test
    void whatFailsIsToldAndTheLabBookOnViewStays() {
        HeldTasks held = held();
        LabBook book = book();
        DeskModel desk = desk(book, held);
        desk.setPerson("R. Vale");
        List<Exception> failures = new ArrayList<>();
        desk.keep(
                List.of(Draft.of(Samples.source("S-3", Role.FINE, "1"))),
                "entered",
                Outcome.of(refused -> {}, failures::add));
        book.close();
        held.end();
        assertThat(failures).hasSize(1);
        assertThat(desk.doing()).isEmpty();
        assertThat(desk.rows()).hasSize(1);
        desk.refresh(failures::add);
        held.end();
        assertThat(failures).hasSize(2);
        desk.answer(new Question.HeadOfBook());
        assertThatThrownBy(held::end).hasMessage("asking the lab book");
    }

    private LabBook book() {
        LabBook book = Books.fresh(folder.resolve("book.porebench"));
        Books.keep(
                book,
                Samples.source("S-1", Role.FINE, "1"),
                Samples.source("S-2", Role.COARSE, "1"),
                Samples.meter("B-1", MeterType.B),
                Samples.mix("M-1", "S-1", "S-2"),
                Samples.determination("M-1/1", "M-1"),
                Samples.trial("T-1", "M-1", "M-1/1", "5.4"),
                Samples.issue("M-1", 1, "M-1/1", LocalDate.of(2026, 3, 2)));
        return book;
    }

    @Test
    void theNamesAreThoseOfTheLabBookOnView() {
        DeskModel desk = desk(book());
        desk.setPerson("R. Vale");
        assertThat(desk.names().look(Samples.source("s-1", Role.FINE, "1"))).isPresent();
        assertThat(desk.names().look(Samples.source("s-3", Role.FINE, "1"))).isEmpty();
        assertThat(Refused.by(out -> desk.keep(List.of(Draft.of(Samples.source("S-3", Role.FINE, "1"))), "new", out)))
                .isEmpty();
        assertThat(desk.names().look(Samples.source("s-3", Role.FINE, "1"))).isPresent();
        desk.turnTo(Reading.of(
                        Books.fresh(folder.resolve("other.porebench")),
                        LocalDate.of(2026, 3, 2).atTime(12, 0)))
                .close();
        assertThat(desk.names().look(Samples.source("s-1", Role.FINE, "1"))).isEmpty();
        desk.book().close();
    }

    @Test
    void aWindowLeftOpenOverAFactorsLastDayShowsItLapsed() {
        try (LabBook book = book()) {
            DeskModel desk = desk(book);
            desk.select(MIX);
            int[] told = {0};
            desk.onChange(() -> told[0]++);
            assertThat(desk.rows().get(0).state()).isEqualTo(FactorState.IN_FORCE);
            desk.refresh();
            assertThat(told[0]).isZero();
            wall.now = Instant.parse("2027-03-03T00:00:00Z");
            desk.refresh();
            assertThat(told[0]).isEqualTo(1);
            assertThat(desk.rows().get(0).state()).isEqualTo(FactorState.LAPSED);
            assertThat(desk.selected()).contains(MIX);
        }
    }

    @Test
    void selectingAMixSeesWhatAnotherWindowKept() {
        try (LabBook book = book()) {
            DeskModel desk = desk(book);
            try (LabBook other = Books.SHELF.open(folder.resolve("book.porebench"))) {
                Books.keep(other, Samples.mix("M-2", "S-1", "S-2"));
            }
            desk.select(new MixId("M-2"));
            assertThat(desk.selected()).contains(new MixId("M-2"));
            assertThat(desk.rows()).hasSize(2);
            desk.select(new MixId("M-9"));
            assertThat(desk.evidence()).isEmpty();
            assertThat(desk.selected()).isEmpty();
        }
    }

    @Test
    void withoutALabBookNoneIsOpenAndNobodysLaboratoryIsNamed() {
        DeskModel desk = desk(book());
        assertThat(desk.hasBook()).isTrue();
        desk.turnAway().close();
        assertThat(desk.hasBook()).isFalse();
        assertThat(desk.laboratory()).isEmpty();
        assertThat(desk.isTraining()).isFalse();
    }

    @Test
    void aTrainingBookSaysThatItIsOneAndWhoseItIs() {
        try (LabBook book = Books.fresh(folder.resolve("training.porebench"))) {
            DeskModel desk = desk(book);
            assertThat(desk.isTraining()).isFalse();
            Books.keep(book, new Laboratory("Tarn Beck, for practice", "", true));
            desk.refresh();
            assertThat(desk.laboratory()).map(Laboratory::name).contains("Tarn Beck, for practice");
            assertThat(desk.isTraining()).isTrue();
        }
    }

    @Test
    void everyScreenHearsOfOtherUnitsAndOfWhoWorksHere() {
        DeskModel desk = new DeskModel(desk(new NoBook()).tools());
        List<String> heard = new ArrayList<>();
        desk.onChange(() -> heard.add(desk.units() + " " + desk.person()));
        desk.show(UnitSystem.US);
        desk.setPerson(" R. Vale ");
        assertThat(heard).containsExactly("US ", "US R. Vale");
    }

    @Test
    void allRecordsOfAKindAreAskedForOnlyWhereTheyAreFew() {
        assertThatThrownBy(() -> new Question.Newest<>(Trial.class))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("few");
        assertThat(new Question.Newest<>(Source.class).kind()).isEqualTo(Source.class);
    }
}
