package porebench.desk.register;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import porebench.desk.DeskModel;
import porebench.desk.Refused;
import porebench.desk.ScriptedAsker;
import porebench.desk.Tools;
import porebench.desk.form.Tasks;
import porebench.exchange.CsvSheets;
import porebench.exchange.DemoYear;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Problem;
import porebench.method.profile.Profiles;
import porebench.print.PdfPress;
import porebench.record.LaboratoryProfile;
import porebench.record.MixDesign;
import porebench.record.Production;
import porebench.record.SampleProduction;
import porebench.record.book.Draft;
import porebench.record.book.MemoryLabBook;
import porebench.record.book.Version;
import porebench.record.column.Column;
import porebench.record.column.ProductionColumns;
import porebench.record.id.MixId;
import porebench.store.SqliteShelf;

/** Production typed in for a mix of the demo laboratory, without a display; today is 2026-11-25. */
class ProductionModelTest {
    private static final Clock DAY = Clock.fixed(Instant.parse("2026-11-25T09:00:00Z"), ZoneOffset.UTC);
    private static final LocalDate NOV_16 = LocalDate.of(2026, 11, 16);

    private final MemoryLabBook book = new MemoryLabBook(DAY);
    private DeskModel desk;
    private ProductionModel model;

    @BeforeEach
    void open() {
        new DemoYear().fill(book);
        Tools tools = new Tools(
                new SqliteShelf(DAY),
                new CsvSheets(),
                new PdfPress("Porebench", DAY, ZoneOffset.UTC),
                Tasks.direct(),
                new ScriptedAsker(),
                DAY,
                ZoneOffset.UTC,
                Locale.ENGLISH);
        desk = new DeskModel(tools, book);
        desk.setPerson("M. Quist");
        desk.select(new MixId("HG-101"));
        model = new ProductionModel(desk, RecordPage.texts(desk));
    }

    private void keep(Production spell) {
        assertThat(book.keep(List.of(Draft.of(spell)), "M. Quist", "reported")).isEmpty();
        desk.refresh();
    }

    private void type(Column<Production, ?> column, String text) {
        model.history().update("any", model.draft().with(column, text));
    }

    private void typeSpell(String first, String last, String days) {
        model.begin();
        type(ProductionColumns.FIRST_DAY, first);
        type(ProductionColumns.LAST_DAY, last);
        type(ProductionColumns.PRODUCTION_DAYS, days);
        type(ProductionColumns.REPORTED_BY, "Plant 2");
    }

    private List<String> codes() {
        return model.problems().stream().map(Problem::code).toList();
    }

    @Test
    void aNewSpellIsOfTheMixOnViewAndCalledAfterItsLastDay() {
        typeSpell("2026-11-16", "2026-11-22", "5");
        type(ProductionColumns.LOADS, "24");
        assertThat(model.draft().text(ProductionColumns.MIX)).isEqualTo("HG-101");
        assertThat(model.trySaving()).isTrue();
        assertThat(Refused.by(outcome -> model.save("first", outcome))).isEmpty();
        Production kept =
                book.latest(Production.class, "HG-101/2026-11-22").orElseThrow().value();
        assertThat(kept.mixId()).isEqualTo(new MixId("HG-101"));
        assertThat(kept.firstDay()).isEqualTo(NOV_16);
        assertThat(kept.productionDays()).contains(5);
        assertThat(kept.loads()).contains(24);
        assertThat(kept.volume()).isEmpty();
        assertThat(model.base()).isPresent();
        assertThat(model.rows()).hasSize(1);
    }

    @Test
    void whatIsMissingIsSaidOnceSomebodySaves() {
        model.begin();
        assertThat(model.problems()).isEmpty();
        assertThat(model.trySaving()).isFalse();
        assertThat(model.problems()).extracting(Problem::field).containsExactly("firstDay", "reportedBy");
        typeSpell("2026-11-16", "2026-11-22", "");
        assertThat(model.trySaving()).isFalse();
        assertThat(codes()).containsExactly("production.no-amount");
    }

    @ParameterizedTest
    @ValueSource(strings = {"5.5", "-1", "five", "5 days", "1000000000"})
    void daysAreCountedInWholeNumbers(String days) {
        typeSpell("2026-11-16", "2026-11-22", days);
        assertThat(model.trySaving()).isFalse();
        assertThat(model.problems())
                .containsExactly(Problem.error("productionDays", "form.not-whole", "Days of production", days, 0));
    }

    @Test
    void aSpellThatOverlapsIsRefusedUnderItsFirstDay() {
        keep(SampleProduction.days("p1", "HG-101", NOV_16, NOV_16.plusDays(6), 5));
        typeSpell("2026-11-22", "2026-11-24", "2");
        assertThat(model.trySaving()).isFalse();
        assertThat(model.problems())
                .containsExactly(
                        Problem.error("firstDay", "production.overlaps", "HG-101", "p1", "2026-11-16", "2026-11-22"));
        type(ProductionColumns.FIRST_DAY, "2026-11-23");
        assertThat(model.trySaving()).isTrue();
        type(ProductionColumns.LAST_DAY, "2026-11-26");
        assertThat(model.trySaving()).isFalse();
        assertThat(codes()).containsExactly("production.to-come");
    }

    /** What another program kept after the form was last looked at is seen when it is kept. */
    @Test
    void nothingThatOverlapsIsKeptWhateverTheFormKnows() {
        Production one = SampleProduction.days("p1", "HG-101", NOV_16, NOV_16.plusDays(6), 5);
        Production two = SampleProduction.days("p2", "HG-101", NOV_16.plusDays(6), NOV_16.plusDays(7), 1);
        keep(one);
        assertThat(book.keep(List.of(Draft.of(two)), "M. Quist", "reported"))
                .extracting(Problem::code)
                .containsExactly("production.overlaps");
        assertThat(book.keep(List.of(Draft.of(SampleProduction.days("p3", "HG-999", NOV_16, NOV_16, 1))), "A", "b"))
                .extracting(Problem::code)
                .containsExactly("production.unknown-mix");
    }

    /** The list is that of the mix in the form: typing another shows what is known of it. */
    @Test
    void anotherMixIsListedAsSoonAsItIsTyped() {
        keep(SampleProduction.days("p1", "HG-101", NOV_16, NOV_16, 1));
        keep(SampleProduction.days("p2", "HG-102", NOV_16, NOV_16, 1));
        keep(SampleProduction.days("p3", "HG-102", NOV_16.plusDays(1), NOV_16.plusDays(1), 1));
        model.begin();
        assertThat(ids()).containsExactly("p1");
        type(ProductionColumns.MIX, "HG-102");
        assertThat(ids()).as("the last spell first").containsExactly("p3", "p2");
        type(ProductionColumns.MIX, "HG-777");
        assertThat(ids()).isEmpty();
        type(ProductionColumns.FIRST_DAY, "2026-11-20");
        type(ProductionColumns.PRODUCTION_DAYS, "1");
        type(ProductionColumns.REPORTED_BY, "Plant 2");
        assertThat(model.trySaving()).isFalse();
        assertThat(codes()).containsExactly("production.unknown-mix");
    }

    private List<String> ids() {
        return model.rows().stream().map(version -> version.value().recordId()).toList();
    }

    @Test
    void theMixOnViewIsFollowedUntilSomethingIsTyped() {
        keep(SampleProduction.days("p2", "HG-102", NOV_16, NOV_16, 1));
        desk.select(new MixId("HG-102"));
        model.follow();
        assertThat(model.base().map(Version::value).map(Production::recordId)).contains("p2");
        type(ProductionColumns.LOADS, "3");
        desk.select(new MixId("HG-101"));
        model.follow();
        assertThat(model.base().map(Version::value).map(Production::recordId)).contains("p2");
        assertThat(model.draft().text(ProductionColumns.LOADS)).isEqualTo("3");
    }

    @Test
    void aCorrectionIsANewVersion() {
        keep(SampleProduction.volume("p1", "HG-101", NOV_16, NOV_16, "60.0"));
        model.follow();
        assertThat(model.concreteWords(model.base().orElseThrow().value())).isEqualTo("60.0 m3");
        type(ProductionColumns.VOLUME, "50");
        assertThat(model.trySaving()).isTrue();
        assertThat(Refused.by(outcome -> model.save("misread", outcome))).isEmpty();
        assertThat(book.history(Production.class, "p1"))
                .extracting(version -> version.value().volume().orElseThrow().toString())
                .containsExactly("60.0 m3", "50 m3");
        keep(SampleProduction.mass("p4", "HG-101", NOV_16.plusDays(1), NOV_16.plusDays(1), "12"));
        model.follow();
        assertThat(model.concreteWords(model.rows().get(0).value())).isEqualTo("12 t");
    }

    /** HG-101 has 670 kg of sand and 1050 kg of stone: 500 m3 are 860 t. Its newest trial is of June 2026. */
    @Test
    void whatTheRulesAskOfTheMixIsSaidBelow() {
        assertThat(model.note()).contains("no day counts twice");
        assertThat(book.keep(
                        List.of(Draft.of(new LaboratoryProfile(Profiles.standard()
                                .copyAs("own", "Own")
                                .with(FigureName.RECHECK_TONNES, new Figure("800", "our rule", Mark.LABORATORY))))),
                        "A",
                        "b"))
                .isEmpty();
        Version<MixDesign> mix = book.latest(MixDesign.class, "HG-101").orElseThrow();
        MixDesign design = mix.value();
        MixDesign own = new MixDesign(
                design.id(),
                design.title(),
                design.batch(),
                design.soakMinutes(),
                design.airTolerancePercent(),
                "own",
                design.remarks(),
                design.plant());
        assertThat(book.keep(List.of(Draft.correcting(mix, own)), "A", "b")).isEmpty();
        keep(SampleProduction.with(
                SampleProduction.days("p1", "HG-101", NOV_16, NOV_16, 1),
                Optional.empty(),
                Optional.of("500"),
                Optional.empty()));
        assertThat(model.note()).startsWith("HG-101: 860 t of 800 t of aggregate since the newest trial, 2026-06-");
    }
}
