package porebench.desk.trial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JLabel;
import org.junit.jupiter.api.Test;
import porebench.chart.look.TrialPoint;
import porebench.desk.BenchBook;
import porebench.desk.Refused;
import porebench.desk.table.RowTable;
import porebench.record.Determination;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.book.Version;
import porebench.record.column.TrialColumns;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;
import porebench.store.Books;

class TrialsModelTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private final BenchBook bench = new BenchBook();

    private TrialsModel model() {
        return new TrialsModel(bench.select().desk);
    }

    private void oneDetermination() {
        bench.keep(BenchBook.determination(1, DAY));
        bench.keep(
                BenchBook.trial("K7-T1", 1, DAY, "6.4"),
                BenchBook.trial("K7-T2", 1, DAY.plusDays(1), "7.4"),
                BenchBook.leaked("K7-T3", 1, DAY.plusDays(2)));
    }

    private static TrialRow row(TrialsModel model, String id) {
        return model.rows().stream()
                .filter(row -> row.id().text().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyTrialShowsItsFactorStateAndDoubts() {
        oneDetermination();
        TrialsModel model = model();
        assertThat(model.rows())
                .extracting(row -> row.factor(), row -> row.stateWord(), row -> row.doubts())
                .containsExactly(tuple("0.40", "counts", "-"), tuple("1.40", "counts", "1"), tuple("-", "void", "-"));
    }

    /** After each trial the stop rule is asked anew; with the trial in the form as well, before it is kept. */
    @Test
    void saysAfterEachTrialWhetherTheyAreEnough() {
        TrialsModel model = model();
        assertThat(model.stop().sentence()).isEmpty();
        bench.keep(BenchBook.determination(1, DAY), BenchBook.trial("K7-T1", 1, DAY, "6.4"));
        bench.desk.refresh();
        assertThat(model.stop().sentence().orElseThrow())
                .startsWith("At least 2 more trials: a single one shows no scatter");
        assertThat(model.stop().basis()).isEmpty();
        bench.keep(BenchBook.trial("K7-T2", 1, DAY, "6.4"), BenchBook.trial("K7-T3", 1, DAY, "6.4"));
        bench.desk.refresh();
        // 4.3027 x 0.0289 / sqrt(3) = 0.0717; with a fourth 3.1824 x 0.0289 / 2 = 0.0459.
        assertThat(model.stop().sentence())
                .contains(
                        "1 more trial is expected, 4 in all: the 95 % interval of the mean reaches 0.072 % to either side,"
                                + " and 0.050 % is wanted.");
        assertThat(model.stop().basis().orElseThrow()).startsWith("The scatter is smaller than the scale can show");
        BenchModel entry = model.entry();
        assertThat(model.stop().withTyped(entry.read().figures())).isEmpty();
        entry.type(TrialColumns.FINE, "4900");
        entry.type(TrialColumns.COARSE, "7350");
        entry.type(TrialColumns.SOAK, "15");
        entry.type(TrialColumns.WATER, "21.5");
        entry.type(TrialColumns.WITHDRAWN, "420");
        entry.type(TrialColumns.GAUGE, "6.4");
        assertThat(model.stop().withTyped(entry.read().figures()))
                .contains(
                        "With this trial: Enough: the 95 % interval of the mean reaches 0.048 % to either side, no more"
                                + " than the 0.050 % wanted.");
        assertThat(Refused.by(out -> entry.keep(Optional.empty(), "entered", out)))
                .isEmpty();
        assertThat(model.stop().sentence().orElseThrow()).startsWith("Enough:");
        model.select(Optional.of(new TrialId("K7-T2")));
        assertThat(Refused.by(out -> model.strike("spilled water", out))).isEmpty();
        assertThat(model.stop().sentence().orElseThrow()).startsWith("1 more trial is expected");
        model.correct();
        assertThat(model.stop().withTyped(model.entry().read().figures())).isEmpty();
    }

    @Test
    void aStruckTrialStaysVisibleWithItsReasonAndCanStandAgain() {
        oneDetermination();
        TrialsModel model = model();
        model.select(Optional.of(new TrialId("K7-T2")));
        assertThat(Refused.by(out -> model.strike("spilled water", out))).isEmpty();
        assertThat(row(model, "K7-T2").state()).isEqualTo(TrialPoint.State.STRUCK);
        assertThat(row(model, "K7-T2").factor()).isEqualTo("1.40");
        assertThat(model.story()).contains("It was struck: spilled water");
        assertThat(model.determinations().judged().orElseThrow().counted()).isEqualTo(1);

        assertThat(Refused.by(out -> model.restore("it was another trial", out)))
                .isEmpty();
        assertThat(row(model, "K7-T2").state()).isEqualTo(TrialPoint.State.COUNTED);
        assertThat(bench.book.history(Trial.class, "K7-T2"))
                .extracting(version -> version.stamp().why())
                .containsExactly("for a test", "spilled water", "it was another trial");
    }

    @Test
    void theStoryTellsHowTheFactorCameAboutAndWhatIsDoubtful() {
        oneDetermination();
        TrialsModel model = model();
        model.select(Optional.of(new TrialId("K7-T2")));
        assertThat(model.story())
                .startsWith("G = 1.40 % air: the gauge read 7.4 %, less 6.00 % of the bowl withdrawn as water.")
                .anyMatch(line -> line.startsWith("Doubtful: The factor 1.4 % reaches 0.8 %"))
                .anyMatch(line -> line.equals("Version 1, saved by R. Vane on 2026-03-04 09:30: for a test"));
        model.select(Optional.of(new TrialId("K7-T3")));
        assertThat(model.story())
                .startsWith("This trial has no factor.")
                .contains("Remarks: the gasket was worn")
                .anyMatch(line -> line.startsWith("Wrong: The meter leaked"));
    }

    /** h1 0.7 % less h2 0.3 % is 0.40 %. */
    @Test
    void theStoryOfATypeATrialTellsBothReadingsInTheirOrder() {
        TrialsModel model = model();
        BenchModel entry = model.entry();
        entry.type(TrialColumns.METER, "E-1");
        entry.type(TrialColumns.FINE, "4900");
        entry.type(TrialColumns.COARSE, "7350");
        entry.type(TrialColumns.SOAK, "15");
        entry.type(TrialColumns.H1, "0.7");
        entry.type(TrialColumns.H2, "0.3");
        assertThat(Refused.by(out -> entry.keep(Optional.of("known"), "entered", out)))
                .isEmpty();
        model.select(Optional.of(new TrialId("K7-T1")));
        assertThat(model.story()).startsWith("G = 0.40 % air: h1 was 0.7 %, less h2 of 0.3 %.");
        assertThat(row(model, "K7-T1").reading()).isEqualTo("0.7 / 0.3");
    }

    /** Corrected twice, each time another reading: each version tells what it changed of the one before it. */
    @Test
    void eachVersionTellsWhatItChangedOfTheOneBefore() {
        oneDetermination();
        Books.correct(bench.book, BenchBook.trial("K7-T1", 1, DAY, "6.2"));
        Books.correct(bench.book, BenchBook.trial("K7-T1", 1, DAY, "6.2").struck("spilled water"));
        TrialsModel model = model();
        model.select(Optional.of(new TrialId("K7-T1")));
        List<String> versions = model.story().stream()
                .filter(line -> line.startsWith("Version "))
                .toList();
        assertThat(versions).hasSize(3);
        assertThat(versions.get(1)).contains("6.4").contains("6.2");
        assertThat(versions.get(2)).doesNotContain("6.4");
        assertThat(model.story()).doesNotContain("Its own readings void it as well.");
    }

    @Test
    void eachColumnOfTheTableShowsItsOwnReading() {
        oneDetermination();
        TrialsModel model = model();
        TrialRow row = row(model, "K7-T1");
        RowTable<TrialRow> table =
                new RowTable<>("trials", "Trials", TrialRow.columns(model.texts(), () -> row.units()));
        table.show(List.of(row));
        assertThat(IntStream.range(0, table.getColumnCount())
                        .mapToObj(column -> table.prepareRenderer(table.getCellRenderer(0, column), 0, column))
                        .map(cell -> ((JLabel) cell).getText()))
                .containsExactly(
                        "K7-T1",
                        "0.40",
                        "counts",
                        "-",
                        "6.4",
                        "420 mL",
                        "2026-03-02 09:00",
                        "M. Sorrel",
                        "B-1",
                        "4900",
                        "7350",
                        "15",
                        "21.5",
                        "no");
    }

    /** Issued twice from the same trials, such as after a correction of the card: the later revision is named. */
    @Test
    void aDeterminationIsNamedByTheLastFactorIssuedFromIt() {
        oneDetermination();
        bench.keep(BenchBook.issue(1, 1, DAY, "0.4"));
        bench.keep(BenchBook.issue(2, 1, DAY, "0.4"));
        assertThat(model().determinations().choices())
                .singleElement()
                .satisfies(choice -> assertThat(choice.words()).contains("revision 2"));
    }

    @Test
    void newTrialsJoinTheOpenDeterminationAndNoOther() {
        oneDetermination();
        bench.keep(BenchBook.issue(1, 1, DAY.plusDays(3), "0.4"));
        TrialsModel model = model();
        assertThat(model.entry().determination()).isEmpty();
        model.begin("new source");
        assertThat(model.entry().determination().map(Determination::purpose)).contains("new source");
        assertThat(model.rows()).isEmpty();
        assertThat(bench.book.latest(Determination.class)).hasSize(1);
        List<DeterminationsModel.Choice> choices = model.determinations().choices();
        assertThat(choices).hasSize(2);
        assertThat(choices.get(0).words()).contains("not saved yet");
        assertThat(choices.get(1).words()).contains("trials: 3", "factor issued as revision 1");
        model.choose(choices.get(1));
        assertThat(model.rows()).hasSize(3);
        assertThat(model.entry().determination()).isEmpty();
    }

    @Test
    void aBegunDeterminationIsKeptWithItsFirstTrialAndItsPurpose() {
        oneDetermination();
        bench.keep(BenchBook.issue(1, 1, DAY.plusDays(3), "0.4"));
        TrialsModel model = model();
        model.begin(" new source ");
        BenchModel entry = model.entry();
        entry.type(TrialColumns.FINE, "4900");
        entry.type(TrialColumns.COARSE, "7350");
        entry.type(TrialColumns.SOAK, "15");
        entry.type(TrialColumns.WITHDRAWN, "420");
        entry.type(TrialColumns.GAUGE, "6.5");
        long before = bench.book.changeNumber();
        assertThat(Refused.by(out -> entry.keep(Optional.empty(), "entered", out)))
                .isEmpty();
        assertThat(bench.book.changeNumber()).isEqualTo(before + 2);
        assertThat(bench.book.latest(Determination.class, "K7/2").map(Version::value))
                .contains(new Determination(
                        BenchBook.determination(2, DAY).id(),
                        BenchBook.MIX,
                        1,
                        Map.of(),
                        BenchBook.TODAY,
                        "new source"));
        assertThat(model.determinations().begun()).isEmpty();
        assertThat(model.rows()).hasSize(1);
    }

    @Test
    void anotherMixShowsNothingOfTheOneBefore() {
        oneDetermination();
        TrialsModel model = model();
        model.entry().type(TrialColumns.FINE, "4900");
        model.select(Optional.of(new TrialId("K7-T1")));
        bench.desk.selectNone();
        assertThat(model.rows()).isEmpty();
        assertThat(model.story()).isEmpty();
        assertThat(model.entry().history().isChanged()).isFalse();
    }

    private TrialsModel correctingOne() {
        oneDetermination();
        bench.keep(BenchBook.issue(1, 1, DAY.plusDays(3), "0.4"));
        TrialsModel model = model();
        model.select(Optional.of(new TrialId("K7-T1")));
        model.correct();
        assertThat(model.entry().base()).isPresent();
        return model;
    }

    @Test
    void aCorrectionEndsWhenAnotherDeterminationIsLookedAtOrBegun() {
        TrialsModel model = correctingOne();
        model.choose(model.determinations().choices().get(0));
        assertThat(model.entry().base()).isEmpty();
        assertThat(model.selected()).isEmpty();

        model.select(Optional.of(new TrialId("K7-T1")));
        model.correct();
        model.begin("new source");
        assertThat(model.entry().base()).isEmpty();
        assertThat(model.selected()).isEmpty();

        model.lookAt(BenchBook.determination(1, DAY).id(), new TrialId("K7-T2"));
        assertThat(model.selected().orElseThrow().id().text()).isEqualTo("K7-T2");
        model.correct();
        model.lookAt(BenchBook.determination(1, DAY).id(), new TrialId("K7-T1"));
        assertThat(model.entry().base()).isPresent();
        assertThat(model.selected().orElseThrow().id().text()).isEqualTo("K7-T1");
    }

    @Test
    void lookingAtATrialOfAnotherDeterminationEndsTheCorrection() {
        oneDetermination();
        bench.keep(BenchBook.determination(2, DAY.plusDays(1)), BenchBook.trial("K7-T9", 2, DAY.plusDays(1), "6.4"));
        TrialsModel model = model();
        model.lookAt(BenchBook.determination(1, DAY).id(), new TrialId("K7-T1"));
        model.correct();
        assertThat(model.entry().base()).isPresent();
        model.lookAt(BenchBook.determination(2, DAY).id(), new TrialId("K7-T9"));
        assertThat(model.entry().base()).isEmpty();
        assertThat(model.rows()).hasSize(1);
        assertThat(model.selected()).isPresent();
    }

    @Test
    void nothingIsStruckWhileNothingIsSelectedAndTheSameSelectionIsNoChange() {
        oneDetermination();
        TrialsModel model = model();
        long before = bench.book.changeNumber();
        assertThat(Refused.by(out -> model.strike("spilled water", out))).isEmpty();
        model.correct();
        assertThat(model.entry().base()).isEmpty();
        assertThat(bench.book.changeNumber()).isEqualTo(before);
        int[] changes = {0};
        model.select(Optional.of(new TrialId("K7-T1")));
        model.onChange(() -> changes[0]++);
        model.select(Optional.of(new TrialId("K7-T1")));
        assertThat(changes[0]).isZero();
        model.select(Optional.empty());
        assertThat(changes[0]).isEqualTo(1);
    }

    private TrialsModel withTwoDeterminations() {
        bench.keep(
                BenchBook.determination(1, DAY),
                BenchBook.trial("K7-T1", 1, DAY, "6.4"),
                BenchBook.determination(2, DAY.plusDays(1)),
                BenchBook.trial("K7-T2", 2, DAY.plusDays(1), "6.4"));
        bench.keep(Samples.mix("M-2"));
        return model();
    }

    private static String lookedAt(TrialsModel model) {
        return model.determinations().chosen().orElseThrow().text();
    }

    @Test
    void whatIsLookedAtStaysWhenTheLabBookGrowsAndNotWhenAnotherMixIsSelected() {
        TrialsModel model = withTwoDeterminations();
        assertThat(lookedAt(model)).isEqualTo("K7/2");
        model.lookAt(BenchBook.determination(1, DAY).id(), new TrialId("K7-T1"));
        bench.keep(BenchBook.trial("K7-T3", 2, DAY.plusDays(1), "6.4"));
        bench.desk.refresh();
        assertThat(lookedAt(model)).isEqualTo("K7/1");
        assertThat(model.selected()).isPresent();
        bench.desk.select(new MixId("M-2"));
        bench.select();
        assertThat(lookedAt(model)).isEqualTo("K7/2");
        model.choose(model.determinations().choices().get(1));
        assertThat(model.selected()).isEmpty();
    }

    @Test
    void aDeterminationLeftForANewerOneIsSaidToBeClosed() {
        List<DeterminationsModel.Choice> choices =
                withTwoDeterminations().determinations().choices();
        assertThat(choices)
                .map(Object::toString)
                .containsExactly(
                        "K7/2, begun 2026-03-03, trials: 1; open",
                        "K7/1, begun 2026-03-02, trials: 1; closed, no factor issued");
    }

    @Test
    void whoListensHearsOfTheLabBookAlsoWhileADraftIsOpen() {
        TrialsModel model = withTwoDeterminations();
        model.entry().type(TrialColumns.FINE, "4900");
        int[] heard = {0};
        model.onChange(() -> heard[0]++);
        bench.keep(BenchBook.trial("K7-T3", 2, DAY.plusDays(1), "6.4"));
        bench.desk.refresh();
        assertThat(heard[0]).isEqualTo(1);
    }

    @Test
    void lettingATrialStandThatSomebodyElseCorrectedIsRefused() {
        oneDetermination();
        TrialsModel model = model();
        model.select(Optional.of(new TrialId("K7-T1")));
        assertThat(Refused.by(out -> model.strike("spilled water", out))).isEmpty();
        Books.correct(bench.book, BenchBook.trial("K7-T1", 1, DAY, "6.2").struck("spilled water"));
        assertThat(Books.codes(Refused.by(out -> model.restore("it was another trial", out))))
                .containsExactly("book.changed-meanwhile");
        assertThat(row(model, "K7-T1").state()).isEqualTo(TrialPoint.State.STRUCK);
    }
}
