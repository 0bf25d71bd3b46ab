package porebench.desk.trial;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.desk.BenchBook;
import porebench.desk.Refused;
import porebench.record.Meter;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.book.Version;
import porebench.record.column.TrialColumns;
import porebench.record.id.MeterId;
import porebench.record.id.TrialId;
import porebench.store.Books;

/** What the form for the next trial begins with, and what it says when the lab book refuses. */
class NextTrialFormTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private final BenchBook bench = new BenchBook();

    private TrialsModel model() {
        return new TrialsModel(bench.select().desk);
    }

    private static Trial onMeter(Trial trial, String meter) {
        return new Trial(
                trial.id(),
                trial.mixId(),
                trial.determinationId(),
                trial.testedAt(),
                trial.operator(),
                new MeterId(meter),
                trial.readings(),
                trial.remarks(),
                trial.keptBecause(),
                trial.struckBecause(),
                Optional.empty(),
                false);
    }

    private void outOfService(String id) {
        Meter meter = bench.book.latest(Meter.class, id).orElseThrow().value();
        Books.correct(
                bench.book,
                new Meter(
                        meter.id(),
                        meter.type(),
                        meter.serial(),
                        meter.bowl(),
                        meter.divisionPercent(),
                        meter.scaleTopPercent(),
                        false,
                        meter.remarks()));
        bench.desk.refresh();
    }

    private static List<String> offered(BenchModel entry) {
        return entry.meters().stream().map(meter -> meter.id().text()).toList();
    }

    @Test
    void theMeterOfTheLastTrialIsOfferedFirst() {
        bench.keep(BenchBook.determination(1, DAY));
        bench.keep(onMeter(BenchBook.trial("K7-T1", 1, DAY, "6.4"), "E-1"));
        assertThat(model().entry().draft().text(TrialColumns.METER)).isEqualTo("E-1");
        assertThat(offered(model().entry())).containsExactly("B-1", "E-1");
    }

    /** Who made a trial says nothing about which was the later one. */
    @Test
    void ofTwoTrialsOfOneMinuteTheOneNamedLaterIsTheLast() {
        bench.keep(BenchBook.determination(1, DAY));
        bench.keep(BenchBook.trial("K7-T2", 1, DAY, "6.4"));
        bench.keep(by("Z. Tansy", onMeter(BenchBook.trial("K7-T1", 1, DAY, "6.4"), "E-1")));
        assertThat(model().entry().draft().text(TrialColumns.METER)).isEqualTo("B-1");
    }

    private static Trial by(String operator, Trial trial) {
        return new Trial(
                trial.id(),
                trial.mixId(),
                trial.determinationId(),
                trial.testedAt(),
                operator,
                trial.meterId(),
                trial.readings(),
                trial.remarks(),
                trial.keptBecause(),
                trial.struckBecause(),
                Optional.empty(),
                false);
    }

    /** The meter goes out of service today, the trial of the day before was made on it. */
    @Test
    void aMeterOutOfServiceIsOfferedForNoNewTrialButForTheOneMadeOnIt() {
        bench.keep(BenchBook.determination(1, DAY));
        Trial made = BenchBook.trial("K7-T1", 1, BenchBook.TODAY, "6.4");
        bench.keep(onMeter(made, "E-1"));
        outOfService("E-1");
        TrialsModel model = model();
        assertThat(model.entry().draft().text(TrialColumns.METER)).isEqualTo("B-1");
        assertThat(offered(model.entry())).containsExactly("B-1");
        model.select(Optional.of(made.id()));
        model.correct();
        assertThat(offered(model.entry())).containsExactly("B-1", "E-1");
        assertThat(model.entry().meter().map(meter -> meter.id().text())).contains("E-1");
    }

    private static void typeWholeTrial(BenchModel entry) {
        entry.type(TrialColumns.FINE, "4900");
        entry.type(TrialColumns.COARSE, "7350");
        entry.type(TrialColumns.SOAK, "15");
        entry.type(TrialColumns.WATER, "21.5");
        entry.type(TrialColumns.WITHDRAWN, "420");
        entry.type(TrialColumns.GAUGE, "6.4");
    }

    @Test
    void aCorrectionThatComesTooLateIsRefusedAndItsDraftStays() {
        bench.keep(BenchBook.determination(1, DAY));
        Trial made = BenchBook.trial("K7-T1", 1, DAY, "6.4");
        bench.keep(made);
        TrialsModel model = model();
        model.select(Optional.of(made.id()));
        model.correct();
        model.entry().type(TrialColumns.GAUGE, "6.3");
        Books.correct(bench.book, BenchBook.trial("K7-T1", 1, DAY, "6.2"));
        assertThat(Books.codes(Refused.by(out -> model.entry().keep(Optional.empty(), "misread", out))))
                .containsExactly("book.changed-meanwhile");
        assertThat(model.entry().draft().text(TrialColumns.GAUGE)).isEqualTo("6.3");
        assertThat(model.entry().base().map(Version::number)).contains(1);
        assertThat(bench.book.history(Trial.class, "K7-T1")).hasSize(2);
    }

    @Test
    void strikingATrialThatSomebodyElseCorrectedIsRefused() {
        bench.keep(BenchBook.determination(1, DAY));
        bench.keep(BenchBook.trial("K7-T1", 1, DAY, "6.4"));
        TrialsModel model = model();
        model.select(Optional.of(new TrialId("K7-T1")));
        Version<Trial> seen = bench.book.latest(Trial.class, "K7-T1").orElseThrow();
        assertThat(bench.book.keep(
                        List.of(Draft.correcting(seen, BenchBook.trial("K7-T1", 1, DAY, "6.2"))),
                        "N. Orrin",
                        "misread"))
                .isEmpty();
        assertThat(Books.codes(Refused.by(out -> model.strike("spilled water", out))))
                .containsExactly("book.changed-meanwhile");
        assertThat(Books.codes(Refused.by(out -> model.strike("spilled water", out))))
                .isEmpty();
        assertThat(bench.book.history(Trial.class, "K7-T1"))
                .extracting(version -> version.stamp().why())
                .containsExactly("for a test", "misread", "spilled water");
    }

    @Test
    void determinationsAreToldApartByWhatBecameOfThem() {
        bench.keep(
                BenchBook.determination(1, DAY),
                BenchBook.trial("K7-T1", 1, DAY, "6.4"),
                BenchBook.determination(2, DAY.plusDays(1)),
                BenchBook.trial("K7-T2", 2, DAY.plusDays(1), "6.4"));
        bench.keep(BenchBook.issue(1, 1, DAY.plusDays(1), "0.4"));
        List<DeterminationsModel.Choice> choices = model().determinations().choices();
        assertThat(choices.get(0).words()).contains("K7/2").contains("open").doesNotContain("revision");
        assertThat(choices.get(1).words()).contains("K7/1").contains("factor issued as revision 1");
    }

    @Test
    void whoListensHearsOfEveryTurn() {
        bench.keep(
                BenchBook.determination(1, DAY),
                BenchBook.trial("K7-T1", 1, DAY, "6.4"),
                BenchBook.determination(2, DAY.plusDays(1)),
                BenchBook.trial("K7-T2", 2, DAY.plusDays(1), "6.4"));
        TrialsModel model = model();
        int[] heard = {0};
        model.onChange(() -> heard[0]++);
        model.choose(model.determinations().choices().get(1));
        assertThat(heard[0]).isEqualTo(1);
        model.lookAt(BenchBook.determination(1, DAY).id(), new TrialId("K7-T1"));
        assertThat(heard[0]).isEqualTo(2);
        model.begin("new source");
        assertThat(heard[0]).isGreaterThan(2);
        int before = heard[0];
        typeWholeTrial(model.entry());
        assertThat(heard[0]).isGreaterThanOrEqualTo(before + 6);
        before = heard[0];
        bench.desk.refresh();
        assertThat(heard[0]).isEqualTo(before);
        bench.desk.selectNone();
        assertThat(heard[0]).isGreaterThan(before);
    }
}
