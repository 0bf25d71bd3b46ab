package porebench.desk.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.desk.DeskModel;
import porebench.desk.Refused;
import porebench.desk.form.TwoVersions;
import porebench.desk.form.TypedDraft;
import porebench.record.MixDesign;
import porebench.record.Trial;
import porebench.record.book.Version;
import porebench.record.column.TrialColumns;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;
import porebench.store.Books;

/** What is typed into the entry form outlives the page, the mix on view and the program. */
class LiveDraftTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final MixId OTHER = new MixId("K8");

    private final BenchBook bench = new BenchBook();
    private DeskModel desk;
    private TrialsModel model;
    private BenchModel entry;

    @BeforeEach
    void open() {
        MixDesign mix = bench.book.latest(MixDesign.class, "K7").orElseThrow().value();
        bench.keep(new MixDesign(
                OTHER,
                "Kerb mix 8",
                mix.batch(),
                mix.soakMinutes(),
                mix.airTolerancePercent(),
                mix.profileId(),
                "",
                Optional.empty()));
        bench.keep(BenchBook.determination(1, DAY));
        bench.keep(BenchBook.trial("K7-T1", 1, DAY, "6.4"));
        desk = bench.select().desk;
        start();
    }

    /** Begins as after a start of the program: nothing is known but what the lab book says and what is kept outside it. */
    private void start() {
        model = new TrialsModel(desk);
        entry = model.entry();
    }

    private void correct() {
        model.select(Optional.of(new TrialId("K7-T1")));
        model.correct();
    }

    @Test
    void eachMixHasItsOwnWhichIsThereAgain() {
        entry.type(TrialColumns.FINE, "4868");
        desk.select(OTHER);
        assertThat(entry.draft().text(TrialColumns.FINE)).isEmpty();
        entry.type(TrialColumns.FINE, "4900");
        desk.select(BenchBook.MIX);
        assertThat(entry.draft().text(TrialColumns.FINE)).isEqualTo("4868");
        assertThat(entry.history().isChanged()).isTrue();
        assertThat(desk.unsaved().names("trial/")).containsExactly("trial/K7", "trial/K8");
    }

    @Test
    void anotherStartGoesOnWithItAndItsDayAndUnits() {
        entry.type(TrialColumns.GAUGE, "6,");
        entry.chooseUnit(TrialColumns.WATER, "°F");
        var typed = entry.draft();
        start();
        assertThat(entry.draft()).isEqualTo(typed);
    }

    @Test
    void whatIsTakenBackIsKeptNoLonger() {
        entry.type(TrialColumns.GAUGE, "6");
        entry.history().undo();
        assertThat(desk.unsaved().names("")).isEmpty();
        entry.history().redo();
        assertThat(desk.unsaved().names("")).containsExactly("trial/K7");
    }

    @Test
    void undoReachesClear() {
        entry.type(TrialColumns.GAUGE, "6.4");
        entry.clear();
        assertThat(entry.draft().text(TrialColumns.GAUGE)).isEmpty();
        assertThat(desk.unsaved().names("")).isEmpty();
        assertThat(entry.history().undoLabel()).contains("Clear");
        // The lab book is looked at every two seconds.
        Books.correct(
                bench.book,
                bench.book.latest(MixDesign.class, "K8").orElseThrow().value());
        desk.refresh();
        entry.history().undo();
        assertThat(entry.draft().text(TrialColumns.GAUGE)).isEqualTo("6.4");
        assertThat(entry.history().isChanged()).isTrue();
        start();
        assertThat(entry.draft().text(TrialColumns.GAUGE)).isEqualTo("6.4");
    }

    @Test
    void aCorrectionIsGoneOnWithAndTheNextTrialAsFarAsItWasTypedStaysBesideIt() {
        entry.type(TrialColumns.FINE, "4868");
        correct();
        entry.type(TrialColumns.GAUGE, "6.3");
        model.begin("another determination");
        assertThat(entry.isNew()).isTrue();
        assertThat(entry.draft().text(TrialColumns.FINE)).isEqualTo("4868");
        entry.clear();
        start();
        assertThat(entry.base().map(Version::number)).contains(1);
        assertThat(entry.draft().text(TrialColumns.GAUGE)).isEqualTo("6.3");
        assertThat(entry.newer()).isEmpty();
        entry.clear();
        assertThat(entry.isNew()).isTrue();
        assertThat(desk.unsaved().names("")).isEmpty();
    }

    /** Both were begun when the program ended: it goes on with the trial, whose readings stand on nobody's paper yet. */
    @Test
    void ofANewTrialAndACorrectionTheNewTrialIsGoneOnWith() {
        entry.type(TrialColumns.FINE, "4868");
        correct();
        entry.type(TrialColumns.GAUGE, "6.3");
        start();
        assertThat(entry.isNew()).isTrue();
        assertThat(entry.draft().text(TrialColumns.FINE)).isEqualTo("4868");
    }

    @Test
    void aCorrectionOfAVersionThatIsNotTheNewestAnyMoreSaysSo() {
        correct();
        entry.type(TrialColumns.GAUGE, "6.3");
        Books.correct(bench.book, BenchBook.trial("K7-T1", 1, DAY, "6.2"));
        desk.refresh();
        start();
        assertThat(entry.draft().text(TrialColumns.GAUGE)).isEqualTo("6.3");
        assertThat(entry.base().map(Version::number)).contains(1);
        assertThat(entry.newer().map(Version::number)).contains(2);
    }

    /** Two people correct one trial; each changes another number, and both stand in the end. */
    @Test
    void whoComesSecondSeesBothVersionsAndLosesNothing() {
        DeskModel other = new DeskModel(desk.tools(), bench.book);
        other.setPerson("N. Orrin");
        other.select(BenchBook.MIX);
        TrialsModel there = new TrialsModel(other);
        correct();
        entry.type(TrialColumns.GAUGE, "6.3");
        there.select(Optional.of(new TrialId("K7-T1")));
        there.correct();
        there.entry().type(TrialColumns.REMARKS, "calm");
        assertThat(Refused.by(out -> there.entry().keep(Optional.empty(), "forgotten", out)))
                .isEmpty();
        desk.refresh();
        assertThat(entry.newer().map(version -> version.stamp().who())).contains("N. Orrin");
        TypedDraft typed = entry.draft();
        TwoVersions both = entry.beside(entry.newer().orElseThrow());
        assertThat(both.lines())
                .containsExactly(
                        new TwoVersions.Line("Gauge reading", "6.4 % air", "6.4 % air", "6.3 % air", false),
                        new TwoVersions.Line("Remarks", "", "calm", "", true));
        entry.goOnFrom(entry.newer().orElseThrow(), "both", both.chosen(List.of(false, true)));
        assertThat(entry.base().map(Version::number)).contains(2);
        assertThat(entry.newer()).isEmpty();
        entry.history().undo();
        assertThat(entry.draft()).isEqualTo(typed);
        assertThat(entry.base().map(Version::number)).contains(1);
        assertThat(entry.newer()).isPresent();
        entry.history().redo();
        assertThat(entry.base().map(Version::number)).contains(2);
        assertThat(Refused.by(out -> entry.keep(Optional.empty(), "misread", out)))
                .isEmpty();
        Trial kept = bench.book.latest(Trial.class, "K7-T1").orElseThrow().value();
        assertThat(kept.remarks()).isEqualTo("calm");
        assertThat(kept.readings().gaugePercent().orElseThrow().toPlainString()).isEqualTo("6.3");
    }

    @Test
    void whatIsSavedIsKeptNoLongerAndWhatIsRefusedIs() {
        correct();
        entry.type(TrialColumns.GAUGE, "6.3");
        Books.correct(bench.book, BenchBook.trial("K7-T1", 1, DAY, "6.2"));
        assertThat(Refused.by(out -> entry.keep(Optional.empty(), "misread", out)))
                .isNotEmpty();
        assertThat(desk.unsaved().names("")).containsExactly("trial/K7\tK7-T1");
        entry.clear();
        correct();
        entry.type(TrialColumns.GAUGE, "6.3");
        assertThat(Refused.by(out -> entry.keep(Optional.empty(), "misread", out)))
                .isEmpty();
        assertThat(desk.unsaved().names("")).isEmpty();
        assertThat(bench.book.latest(Trial.class, "K7-T1").orElseThrow().number())
                .isEqualTo(3);
    }

    @Test
    void whatAnotherPartOfTheWindowTypesStandsInTheForm() {
        entry.type(TrialColumns.FINE, "4868");
        BenchModel other = new TrialsModel(desk).entry();
        other.type(TrialColumns.GAUGE, "6.4");
        assertThat(entry.draft()).isEqualTo(other.draft());
        desk.unsaved().drop("trial/K7");
        assertThat(entry.history().isChanged()).isFalse();
    }
}
