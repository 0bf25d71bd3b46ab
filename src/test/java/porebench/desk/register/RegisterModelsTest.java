package porebench.desk.register;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.desk.DeskModel;
import porebench.desk.Refused;
import porebench.desk.ScriptedAsker;
import porebench.desk.Tools;
import porebench.desk.form.Tasks;
import porebench.desk.form.TypedDraft;
import porebench.desk.form.UnitSystem;
import porebench.desk.meter.MeterStories;
import porebench.exchange.CsvSheets;
import porebench.exchange.DemoYear;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.print.PdfPress;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.Meter;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.SourceStep;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.MemoryLabBook;
import porebench.record.book.Version;
import porebench.record.column.MeterColumns;
import porebench.record.column.SourceColumns;
import porebench.record.id.MeterId;
import porebench.store.SqliteShelf;

/** The registers' models on the demo laboratory, without a display. */
class RegisterModelsTest {
    private static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);

    private DeskModel desk;

    @BeforeEach
    void fillBook() {
        desk = desk(Locale.ENGLISH);
    }

    static DeskModel desk(Locale locale) {
        MemoryLabBook book = new MemoryLabBook(DAY);
        new DemoYear().fill(book);
        return desk(locale, book);
    }

    static DeskModel desk(LabBook book) {
        return desk(Locale.ENGLISH, book);
    }

    private static DeskModel desk(Locale locale, LabBook book) {
        Tools tools = new Tools(
                new SqliteShelf(DAY),
                new CsvSheets(),
                new PdfPress("Porebench", DAY, ZoneOffset.UTC),
                Tasks.direct(),
                new ScriptedAsker(),
                DAY,
                ZoneOffset.UTC,
                locale);
        DeskModel desk = new DeskModel(tools, book);
        desk.setPerson("M. Quist");
        return desk;
    }

    private SourcesModel sources() {
        return new SourcesModel(desk, RecordPage.texts(desk));
    }

    private MetersModel meters() {
        return new MetersModel(desk, RecordPage.texts(desk));
    }

    /** The draft as another stone: its ledge, the first day, why. */
    static void another(SourcesModel model, String ledge, String day) {
        model.history()
                .update(
                        "Ledge",
                        model.draft()
                                .with(SourceColumns.LEDGE, ledge)
                                .with(SourceColumns.STEP, SourceStep.CHANGED.symbol())
                                .with(SourceColumns.CHANGED_ON, day)
                                .with(SourceColumns.REASON, "the quarry moved"));
    }

    static List<String> untrue(SourcesModel model) {
        return model.touch().orElseThrow().madeUntrue().stream()
                .map(mix -> mix.mixId().text())
                .toList();
    }

    @Test
    void aNewSourceIsAskedForItsIdAndNameOnlyWhenSomebodyWantsToSaveIt() {
        SourcesModel model = sources();
        model.begin();
        assertThat(model.problems()).isEmpty();
        assertThat(model.trySaving()).isFalse();
        assertThat(model.problems()).extracting(Problem::field).containsExactly("id", "name");
    }

    @Test
    void aSourceThatIsThereAlreadyIsNamedUnderItsId() {
        SourcesModel model = sources();
        model.begin();
        model.history()
                .update("Id", model.draft().with(SourceColumns.ID, "S-02").with(SourceColumns.NAME, "twin"));
        assertThat(model.problems())
                .extracting(Problem::field, Problem::code)
                .containsExactly(tuple("id", "book.already-there"));
    }

    @Test
    void aNameNobodyCanReadIsRefusedAndOneThatDiffersInCaseIsADoubt() {
        SourcesModel model = sources();
        model.begin();
        model.history()
                .update("Id", model.draft().with(SourceColumns.ID, "S-\u202E20").with(SourceColumns.NAME, "sand"));
        assertThat(model.problems())
                .extracting(Problem::field, Problem::code)
                .containsExactly(tuple("id", "text.unseen"));
        assertThat(model.trySaving()).isFalse();
        model.history().update("Id", model.draft().with(SourceColumns.ID, "s-02"));
        assertThat(model.problems())
                .extracting(Problem::field, Problem::code)
                .containsExactly(tuple("id", "id.differs-in-case"));
        assertThat(model.trySaving()).isTrue();
    }

    @Test
    void numbersThatAreNoneAndNumbersOutOfRangeStandUnderTheirFields() {
        SourcesModel model = sources();
        model.show("S-02");
        model.history()
                .update(
                        "Density",
                        model.draft()
                                .with(SourceColumns.RELATIVE_DENSITY, "2,6x")
                                .with(SourceColumns.ABSORPTION, "61"));
        assertThat(model.problems())
                .extracting(Problem::field, Problem::code)
                .containsExactly(
                        tuple("relativeDensity", "form.not-a-number"), tuple("absorption", "form.out-of-range"));
        model.history().undo();
        assertThat(model.problems()).isEmpty();
    }

    @Test
    void aSourceSaysWhatFactorsItsMixesHave() {
        SourcesModel model = sources();
        model.show("S-02");
        assertThat(model.factors().orElseThrow())
                .startsWith("Mixes with trials on it as it is now: 3, factors from 0.")
                .endsWith(" %. From 5 mixes on a range for further ones can be given.");
        model.show("S-01");
        assertThat(model.factors().orElseThrow())
                .startsWith("Mixes with trials on it as it is now: 6, factors from 0.24 to 0.91 %. Nine of ten"
                        + " determinations with this source lie between ")
                .endsWith(" %; 95 of 100 such ranges are right, if factors scatter as normal values do.");
        model.begin();
        assertThat(model.factors()).isEmpty();
        model.show("S-02");
        desk.setPerson("M. Quist");
        another(model, "bench 9", "2026-11-25");
        assertThat(Refused.by(out -> model.save("the quarry moved", out))).isEmpty();
        assertThat(model.factors()).isEmpty();
    }

    @Test
    void anotherNameChangesNoFactorButAnotherLedgeDoes() {
        SourcesModel model = sources();
        model.show("S-02");
        model.history().update("Name", model.draft().with(SourceColumns.NAME, "Drennick granite, washed"));
        assertThat(untrue(model)).isEmpty();
        assertThat(model.effects()).isEmpty();
        assertThat(model.touchWords()).isEqualTo("The factors in force today and their cards on paper.");
        model.history().update("Ledge", model.draft().with(SourceColumns.LEDGE, "bench 9"));
        assertThat(model.problems()).extracting(Problem::code).containsExactly("source.step-wanting");
        assertThat(model.trySaving()).isFalse();
        another(model, "bench 9", "2026-11-25");
        assertThat(untrue(model)).contains("HG-101");
        assertThat(model.trySaving()).isTrue();
        assertThat(model.reasonTyped()).contains("the quarry moved");
        assertThat(model.effects().orElseThrow()).contains("the material of S-02 changes on 2026-11-25.");
    }

    @Test
    void droppingTheChangesOfARecordCanBeUndone() {
        SourcesModel model = sources();
        model.show("S-02");
        String before = model.draft().text(SourceColumns.LEDGE);
        model.history().update("Ledge", model.draft().with(SourceColumns.LEDGE, "bench 9"));
        model.dropDraft();
        assertThat(model.draft().text(SourceColumns.LEDGE)).isEqualTo(before);
        assertThat(model.base().orElseThrow().value().recordId()).isEqualTo("S-02");
        model.history().undo();
        assertThat(model.draft().text(SourceColumns.LEDGE)).isEqualTo("bench 9");
    }

    @Test
    void aCorrectionIsANewVersionWithWhoWhyAndWhatChanged() {
        SourcesModel model = sources();
        model.show("S-02");
        Source before = model.base().orElseThrow().value();
        int versions = model.versions().size();
        another(model, "bench 9", "2026-11-25");
        assertThat(Refused.by(out -> model.save("the quarry moved", out))).isEmpty();
        assertThat(model.history().isChanged()).isFalse();
        assertThat(model.versions()).hasSize(versions + 1);
        assertThat(model.versions().get(0).stamp().why()).isEqualTo("the quarry moved");
        assertThat(model.versions().get(0).stamp().who()).isEqualTo("M. Quist");
        assertThat(model.changes(before, model.versions().get(0).value()))
                .containsExactly("Other material since 2026-11-25", "Ledge or lot: bench 2 → bench 9");
    }

    @Test
    void aDraftMadeFromAnOldVersionIsNotKeptOverANewerOne() {
        SourcesModel here = sources();
        DeskModel other = desk(Locale.ENGLISH, desk.book());
        SourcesModel there = new SourcesModel(other, RecordPage.texts(other));
        here.show("S-02");
        there.show("S-02");
        another(here, "bench 9", "2026-11-25");
        another(there, "bench 10", "2026-11-25");
        assertThat(Refused.by(out -> there.save("seen first", out))).isEmpty();
        assertThat(Refused.by(out -> here.save("seen later", out)))
                .extracting(Problem::code)
                .containsExactly("book.changed-meanwhile");
        assertThat(here.draft().text(SourceColumns.LEDGE)).isEqualTo("bench 9");
    }

    @Test
    void aMeterHasItsStateAndTheDayItIsDue() {
        MeterId id = new MeterId("N-1");
        assertThat(Refused.by(out -> desk.keep(List.of(Draft.of(Samples.meter("N-1", MeterType.A))), "new", out)))
                .isEmpty();
        MetersModel model = meters();
        Meter meter = desk.book().latest(Meter.class, id.text()).orElseThrow().value();
        assertThat(model.stateWords(meter)).isEqualTo("never calibrated");
        assertThat(model.nextDueWords(meter)).isEmpty();
        LocalDate day = LocalDate.of(2026, 9, 20);
        assertThat(Refused.by(out -> desk.keep(List.of(Draft.of(MeterStories.ofTypeA("N-1", day))), "calibrated", out)))
                .isEmpty();
        // Three months on, of which the last 14 days are the notice.
        assertThat(model.stateWords(meter)).isEqualTo("calibrated");
        assertThat(model.nextDueWords(meter)).isEqualTo("2026-12-20");
    }

    @Test
    void aDecimalCommaIsReadWhereItIsUsed() {
        desk = desk(Locale.GERMANY);
        SourcesModel model = sources();
        model.show("S-02");
        assertThat(model.draft().text(SourceColumns.RELATIVE_DENSITY)).isEqualTo("2,69");
        model.history().update("Density", model.draft().with(SourceColumns.RELATIVE_DENSITY, "2,70"));
        model.type(SourceColumns.STEP, "corrected");
        model.type(SourceColumns.REASON, "tested again");
        assertThat(Refused.by(out -> model.save("tested again", out))).isEmpty();
        assertThat(model.base().orElseThrow().value().relativeDensity().orElseThrow())
                .isEqualByComparingTo("2.70");
    }

    @Test
    void aBowlKeepsItsDigitsAndUnitWhileRegisterAndFormShowTheOtherSystem() {
        MetersModel model = meters();
        Meter meter = model.rows().get(0).value();
        assertThat(model.bowlWords(meter)).isEqualTo("7.98 L");
        desk.show(UnitSystem.US);
        // 7.98 L / 28.316846592 L = 0.281811... ft3, by NIST SP 811 (2008), appendix B: recalled.
        assertThat(model.bowlWords(meter)).isEqualTo("0.2818 ft3");
        model.show(meter.recordId());
        assertThat(model.draft().text(MeterColumns.BOWL)).isEqualTo("0.2818");
        assertThat(model.draft().unit(MeterColumns.BOWL)).isEqualTo(VolumeUnit.CUBIC_FOOT.symbol());
        assertThat(model.history().isChanged()).isFalse();

        model.history().update("Remarks", model.draft().with(MeterColumns.REMARKS, "new gasket"));
        assertThat(Refused.by(out -> model.save("gasket", out))).isEmpty();
        assertThat(model.base().orElseThrow().value().bowl()).isEqualTo(meter.bowl());

        model.history().update("Bowl", model.draft().with(MeterColumns.BOWL, "0.2820"));
        assertThat(Refused.by(out -> model.save("weighed", out))).isEmpty();
        assertThat(model.base().orElseThrow().value().bowl()).isEqualTo(Typed.of("0.2820", VolumeUnit.CUBIC_FOOT));
        desk.show(UnitSystem.SI);
        model.follow();
        assertThat(model.draft().unit(MeterColumns.BOWL)).isEqualTo(VolumeUnit.LITRE.symbol());
    }

    @Test
    void aBowlOfTheWrongUnitIsRefusedAndASmallOneIsDoubtful() {
        MetersModel model = meters();
        model.show("A-1");
        model.history().update("Bowl", model.draft().withUnit(MeterColumns.BOWL, VolumeUnit.CUBIC_METRE.symbol()));
        assertThat(model.problems()).extracting(Problem::code).containsExactly("csv.bowl-impossible");
        model.history()
                .update(
                        "Bowl",
                        model.draft()
                                .withUnit(MeterColumns.BOWL, VolumeUnit.LITRE.symbol())
                                .with(MeterColumns.BOWL, "5.5"));
        assertThat(model.problems()).extracting(Problem::code).containsExactly("trial.bowl-small");
        assertThat(model.trySaving()).isTrue();
    }

    @Test
    void aMeterThatIsThereAlreadyIsNamedUnderItsId() {
        MetersModel model = meters();
        model.begin();
        model.history()
                .update("Id", model.draft().with(MeterColumns.ID, " A-1 ").with(MeterColumns.BOWL, "7.05"));
        assertThat(model.problems())
                .extracting(Problem::field, Problem::code)
                .contains(tuple("id", "book.already-there"));
        model.show("A-1");
        assertThat(model.problems()).isEmpty();
    }

    @Test
    void theVersionsOfAMeterSayWhatChanged() {
        MetersModel model = meters();
        model.show("A-1");
        model.history()
                .update(
                        "Out of service",
                        model.draft()
                                .with(MeterColumns.IN_SERVICE, false)
                                .with(MeterColumns.BOWL, "7.99")
                                .with(MeterColumns.REMARKS, "the lid is bent"));
        assertThat(Refused.by(out -> model.save("dropped", out))).isEmpty();
        assertThat(said(model, model.base().orElseThrow().value())).contains("7.99 L", "out of service");
        assertThat(model.rows().get(0).value().inService()).isFalse();
        assertThat(said(model, Samples.meter("N-1", MeterType.A)))
                .contains(model.choiceWords(MeterColumns.TYPE, MeterType.A.name()), "in service");
    }

    private static List<String> said(MetersModel model, Meter meter) {
        TypedDraft draft = model.draftOf(meter);
        return MeterColumns.ALL.all().stream()
                .map(column -> model.said(column, draft))
                .toList();
    }

    @Test
    void aRecordThatSomebodyElseCorrectsIsShownAnewUnlessADraftIsOpen() {
        SourcesModel model = sources();
        model.show("S-02");
        Version<Source> before = desk.book().latest(Source.class, "S-02").orElseThrow();
        Source renamed = new Source(
                before.value().id(),
                "renamed elsewhere",
                before.value().role(),
                before.value().place(),
                before.value().ledge(),
                before.value().relativeDensity(),
                before.value().absorptionPercent(),
                before.value().remarks());
        assertThat(Refused.by(out -> desk.keep(List.of(Draft.correcting(before, renamed)), "renamed", out)))
                .isEmpty();
        model.follow();
        assertThat(model.draft().text(SourceColumns.NAME)).isEqualTo("renamed elsewhere");
        model.begin();
        model.follow();
        assertThat(model.isBegun()).isTrue();
        assertThat(model.base()).isEmpty();
    }
}
