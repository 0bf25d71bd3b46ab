package porebench.desk.register;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.desk.MixDesk;
import porebench.desk.Reading;
import porebench.desk.Settings;
import porebench.desk.meter.MeterStories;
import porebench.evidence.FactorState;
import porebench.evidence.RegisterRow;
import porebench.evidence.TrialsBehind;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.method.meter.MeterState;
import porebench.quantity.VolumeUnit;
import porebench.record.Meter;
import porebench.record.Samples;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.MemoryLabBook;
import porebench.record.column.MeterColumns;
import porebench.record.column.SourceColumns;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.store.Books;

/** What the registers show first, after a draft was dropped, and of another lab book. */
class RecordDraftTest {
    private final MixDesk mixDesk = new MixDesk(Locale.ENGLISH);

    private SourcesModel sources() {
        return new SourcesModel(mixDesk.desk, RecordPage.texts(mixDesk.desk));
    }

    private MetersModel meters() {
        return new MetersModel(mixDesk.desk, RecordPage.texts(mixDesk.desk));
    }

    private RegisterModel register() {
        return new RegisterModel(mixDesk.desk, RecordPage.texts(mixDesk.desk), Settings.inMemory());
    }

    private void turnTo(LabBook other) {
        mixDesk.desk.turnTo(Reading.of(other, mixDesk.desk.tools().now()));
    }

    @Test
    void aRegisterOpensOnItsFirstRecord() {
        assertThat(sources().draft().text(SourceColumns.ID)).isEqualTo("S-1");
        assertThat(sources().isBegun()).isFalse();
        assertThat(meters().draft().text(MeterColumns.ID)).isEqualTo("B-1");
    }

    @Test
    void aDroppedCorrectionShowsWhatTheLabBookSays() {
        SourcesModel model = sources();
        model.show("S-2");
        model.history().update("Name", model.draft().with(SourceColumns.NAME, "another"));
        model.dropDraft();
        assertThat(model.draft().text(SourceColumns.ID)).isEqualTo("S-2");
        assertThat(model.draft().text(SourceColumns.NAME)).isEqualTo("Pit of S-2");
        assertThat(model.history().isChanged()).isFalse();
    }

    @Test
    void aDroppedNewRecordGivesWayToTheFirstOne() {
        SourcesModel model = sources();
        model.begin();
        model.history().update("Name", model.draft().with(SourceColumns.NAME, "another"));
        assertThat(model.isBegun()).isTrue();
        model.dropDraft();
        assertThat(model.isBegun()).isFalse();
        assertThat(model.isNew()).isFalse();
        assertThat(model.draft().text(SourceColumns.ID)).isEqualTo("S-1");
    }

    @Test
    void inAnEmptyLabBookADroppedRecordLeavesABlankForm() {
        turnTo(new MemoryLabBook(Books.CLOCK));
        SourcesModel model = sources();
        model.begin();
        model.history().update("Name", model.draft().with(SourceColumns.NAME, "another"));
        assertThat(model.trySaving()).isFalse();
        model.dropDraft();
        assertThat(model.draft()).isEqualTo(SourcesModel.BLANK);
        assertThat(model.problems()).isEmpty();
    }

    @Test
    void anotherLabBookIsShownFromItsFirstRecordOn() {
        SourcesModel model = sources();
        model.show("S-2");
        LabBook other = new MemoryLabBook(Books.CLOCK);
        Books.keep(other, Samples.source("T-1", Role.FINE, "1"), Samples.source("T-2", Role.FINE, "1"));
        turnTo(other);
        model.follow();
        assertThat(model.draft().text(SourceColumns.ID)).isEqualTo("T-1");
        assertThat(model.isNew()).isFalse();
        turnTo(new MemoryLabBook(Books.CLOCK));
        model.follow();
        assertThat(model.draft()).isEqualTo(SourcesModel.BLANK);
        assertThat(model.isNew()).isTrue();
    }

    @Test
    void aNewMeterIsAskedForItsIdAndNotToldThatAFreeOneIsTaken() {
        MetersModel model = meters();
        model.begin();
        model.history()
                .update(
                        "Bowl",
                        model.draft()
                                .with(MeterColumns.BOWL, "7.05")
                                .with(MeterColumns.DIVISION, "0.1")
                                .with(MeterColumns.SCALE_TOP, "10"));
        assertThat(model.trySaving()).isFalse();
        assertThat(model.problems())
                .extracting(Problem::field, Problem::code)
                .containsExactly(tuple("id", "form.required"));
        model.history().update("Id", model.draft().with(MeterColumns.ID, "B-2"));
        assertThat(model.problems()).isEmpty();
        assertThat(model.trySaving()).isTrue();
    }

    @Test
    void aDivisionBeyondTheTopOfTheScaleIsRefused() {
        MetersModel model = meters();
        model.history()
                .update(
                        "Scale",
                        model.draft().with(MeterColumns.DIVISION, "1.0").with(MeterColumns.SCALE_TOP, "1.0"));
        assertThat(model.problems()).isEmpty();
        model.history().update("Scale", model.draft().with(MeterColumns.SCALE_TOP, "0.9"));
        assertThat(model.problems())
                .extracting(Problem::field, Problem::code)
                .containsExactly(tuple("scaleTop", "meter.division-beyond-top"));
        assertThat(model.trySaving()).isFalse();
    }

    /** C231 asks for 6.0 L at least. */
    @Test
    void aBowlOfTheLeastVolumeIsNoDoubt() {
        MetersModel model = meters();
        model.history()
                .update(
                        "Bowl",
                        model.draft()
                                .withUnit(MeterColumns.BOWL, VolumeUnit.LITRE.symbol())
                                .with(MeterColumns.BOWL, "6.0"));
        assertThat(model.problems()).isEmpty();
        model.history().update("Bowl", model.draft().with(MeterColumns.BOWL, "5.99"));
        assertThat(model.problems()).extracting(Problem::code).containsExactly("trial.bowl-small");
    }

    @Test
    void aRegisterOpensWithTheStatesOfItsMeters() {
        MeterId id = new MeterId("A-1");
        mixDesk.keepElsewhere(
                Draft.of(Samples.meter("A-1", MeterType.A)),
                Draft.of(MeterStories.ofTypeA("A-1", mixDesk.desk.tools().today())));
        mixDesk.desk.refresh();
        MetersModel model = meters();
        Meter meter = mixDesk.book.latest(Meter.class, id.text()).orElseThrow().value();
        assertThat(model.state(meter)).isEqualTo(MeterState.OK);
        assertThat(model.stateWords(meter)).isEqualTo("calibrated");
        assertThat(model.choiceWords(MeterColumns.TYPE, meter.type().name())).isEqualTo("Type A");
    }

    @Test
    void onlyTheMixesOfASourceAreNamedAsItsUsers() {
        mixDesk.keepElsewhere(
                Draft.of(Samples.source("S-3", Role.COARSE, "1")), Draft.of(Samples.mix("M-2", "S-1", "S-3")));
        mixDesk.desk.refresh();
        SourcesModel model = sources();
        model.show("S-2");
        assertThat(model.touch().orElseThrow().mixes())
                .extracting(mix -> mix.mixId().text())
                .containsExactly("M-1");
        model.show("S-1");
        assertThat(model.touch().orElseThrow().mixes())
                .extracting(mix -> mix.mixId().text())
                .containsExactly("M-1", "M-2");
        assertThat(model.choiceWords(SourceColumns.ROLE, Role.COARSE.symbol())).isEqualTo("coarse");
    }

    /** M-1 has a factor, M-2 and M-3 none; all have the sand S-1. */
    @Test
    void anotherLedgeMakesNoFactorUntrueThatWasNeverIssued() {
        mixDesk.keepElsewhere(
                Draft.of(Samples.mix("M-2", "S-1", "S-2")),
                Draft.of(Samples.determination("M-1/1", "M-1")),
                Draft.of(Samples.trial("T-1", "M-1", "M-1/1", "5.4")),
                Draft.of(Samples.issue("M-1", 1, "M-1/1", mixDesk.desk.tools().today())
                        .restingOn(1, Map.of(new SourceId("S-1"), 1, new SourceId("S-2"), 1))));
        mixDesk.desk.refresh();
        SourcesModel model = sources();
        model.show("S-1");
        model.history()
                .update(
                        "Ledge",
                        model.draft()
                                .with(SourceColumns.LEDGE, "lot 9")
                                .with(SourceColumns.STEP, "changed")
                                .with(
                                        SourceColumns.CHANGED_ON,
                                        mixDesk.desk.tools().today().plusDays(1).toString()));
        assertThat(model.touch().orElseThrow().madeUntrue())
                .extracting(mix -> mix.mixId())
                .containsExactly(new MixId("M-1"));
    }

    @Test
    void theChosenLineStaysChosenWhileItIsOnViewAndElseItIsTheFirst() {
        mixDesk.keepElsewhere(Draft.of(Samples.mix("M-2", "S-1", "S-2")), Draft.of(Samples.mix("M-3", "S-1", "S-2")));
        mixDesk.desk.refresh();
        RegisterModel model = register();
        assertThat(model.chosen().map(RegisterRow::mixId)).contains(new MixId("M-1"));
        model.choose(new MixId("M-2"));
        assertThat(model.chosen().map(RegisterRow::mixId)).contains(new MixId("M-2"));
        model.choose(new MixId("M-9"));
        assertThat(model.chosen().map(RegisterRow::mixId)).contains(new MixId("M-1"));
    }

    @Test
    void theSummaryCountsEveryStateThatThereIsAndNoOther() {
        mixDesk.keepElsewhere(
                Draft.of(Samples.mix("M-2", "S-1", "S-2")),
                Draft.of(Samples.mix("M-3", "S-1", "S-2")),
                Draft.of(Samples.determination("M-1/1", "M-1")),
                Draft.of(Samples.trial("T-1", "M-1", "M-1/1", "5.4")),
                Draft.of(Samples.issue("M-1", 1, "M-1/1", mixDesk.desk.tools().today())));
        mixDesk.desk.refresh();
        RegisterModel model = register();
        String first = model.stateWords(model.rows().get(0).state());
        assertThat(first).isNotEqualTo(model.stateWords(FactorState.NO_FACTOR));
        assertThat(model.summary()).isEqualTo("3 mixes: 1 " + first + ", 2 no factor.");
        turnTo(new MemoryLabBook(Books.CLOCK));
        assertThat(model.summary()).isEqualTo("No mix yet.");
    }

    @Test
    void whatIsMissingForAMixIsSaidInSentences() {
        RegisterModel model = register();
        RegisterRow bare = model.rows().get(0);
        assertThat(bare.missing()).isNotEmpty();
        assertThat(model.missingWords(bare))
                .isEqualTo(String.join(
                        "  ",
                        bare.missing().stream()
                                .map(mixDesk.desk.tools().problemText()::say)
                                .toList()));
        RegisterRow whole = new RegisterRow(
                bare.mixId(),
                "",
                "",
                FactorState.IN_FORCE,
                bare.factorPercent(),
                bare.revision(),
                bare.inForceFrom(),
                bare.recheckBy(),
                TrialsBehind.NONE,
                Optional.empty(),
                List.of());
        assertThat(model.missingWords(whole)).isEqualTo("nothing");
    }
}
