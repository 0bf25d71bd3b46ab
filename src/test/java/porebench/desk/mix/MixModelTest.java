package porebench.desk.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.desk.MixDesk;
import porebench.desk.Refused;
import porebench.desk.form.TypedDraft;
import porebench.desk.form.UnitSystem;
import porebench.method.MoistureState;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.Role;
import porebench.method.profile.Profiles;
import porebench.quantity.MassUnit;
import porebench.record.LaboratoryProfile;
import porebench.record.MixDesign;
import porebench.record.Samples;
import porebench.record.book.Draft;
import porebench.record.book.Version;
import porebench.record.column.MixColumns;
import porebench.store.Books;

/** Drafts, corrects and saves mix designs through the model of the page. */
class MixModelTest {
    private final MixDesk mixDesk = new MixDesk(Locale.ENGLISH);
    private final MixModel model = new MixModel(mixDesk.desk);

    private MixModel opened() {
        mixDesk.select("M-1");
        model.followDesk();
        return model;
    }

    private static List<String> fields(List<Problem> problems) {
        return problems.stream().filter(Problem::isError).map(Problem::field).toList();
    }

    private void fillNewMix() {
        model.begin();
        Constituents steps = model.constituents();
        model.type(MixColumns.ID, "N-7");
        model.type(MixColumns.TITLE, "New mix");
        model.type(MixColumns.TARGET_AIR, "6.0");
        steps.type(0, MixColumns.MASS, "350");
        steps.type(0, MixColumns.DENSITY, "3.15");
        steps.type(1, MixColumns.MASS, "160.50");
        steps.type(2, MixColumns.SOURCE, "S-1");
        steps.type(2, MixColumns.MASS, "700");
        steps.type(3, MixColumns.SOURCE, "S-2");
        steps.type(3, MixColumns.MASS, "1735 lb");
    }

    private SavingEffects effects() {
        List<SavingEffects> found = new ArrayList<>();
        model.effects(found::add);
        return found.get(0);
    }

    @Test
    void showsNothingUntilAMixIsSelectedOrBegun() {
        assertThat(model.isEmpty()).isTrue();
        model.begin();
        assertThat(model.isEmpty()).isFalse();
        model.dropDraft();
        assertThat(model.isEmpty()).isTrue();
    }

    @Test
    void keepsWhatWasTypedDigitByDigit() {
        fillNewMix();
        assertThat(model.reading().problems().stream().filter(Problem::isError)).isEmpty();
        assertThat(Refused.by(out -> model.save("entered", out))).isEmpty();
        MixDesign kept =
                mixDesk.book.latest(MixDesign.class, "N-7").orElseThrow().value();
        assertThat(kept.batch().constituents().get(1).mass()).hasToString("160.50 kg");
        assertThat(kept.batch().constituents().get(3).mass()).hasToString("1735 lb");
        assertThat(kept.batch().constituents().get(3).mass().unit()).isEqualTo(MassUnit.POUND);
        assertThat(kept.batch().targetAirPercent()).isEqualTo(new BigDecimal("6.0"));
        assertThat(mixDesk.desk.selected())
                .hasValueSatisfying(id -> assertThat(id.text()).isEqualTo("N-7"));
        assertThat(model.history().isChanged()).isFalse();
        assertThat(model.rows().get(1).text(MixColumns.MASS)).isEqualTo("160.50");
    }

    @Test
    void aSourceOffersItsFiguresOnlyWhereNothingIsTyped() {
        model.begin();
        model.constituents().type(2, MixColumns.ABSORPTION, "0.9");
        model.constituents().type(2, MixColumns.SOURCE, "S-1");
        TypedDraft row = model.rows().get(2);
        assertThat(row.text(MixColumns.ABSORPTION)).isEqualTo("0.9");
        assertThat(row.text(MixColumns.DENSITY)).isEqualTo("2.650");
        model.constituents().type(2, MixColumns.SOURCE, "");
        assertThat(model.rows().get(2).text(MixColumns.DENSITY)).isEmpty();
        assertThat(model.rows().get(2).text(MixColumns.ABSORPTION)).isEqualTo("0.9");
    }

    @Test
    void anOfferedRelativeDensityFollowsTheBasisOfTheMass() {
        model.begin();
        model.constituents().type(2, MixColumns.SOURCE, "S-1");
        model.constituents().type(2, MixColumns.STATE, MoistureState.OVEN_DRY.symbol());
        // 2.650 at SSD over 1 + 1.20 % = 2.61858..., so 2.619 oven-dry.
        assertThat(model.rows().get(2).text(MixColumns.DENSITY)).isEqualTo("2.619");
        model.constituents().type(2, MixColumns.STATE, MoistureState.SSD.symbol());
        assertThat(model.rows().get(2).text(MixColumns.DENSITY)).isEqualTo("2.650");
        model.constituents().type(2, MixColumns.DENSITY, "2.6");
        model.constituents().type(2, MixColumns.STATE, MoistureState.OVEN_DRY.symbol());
        assertThat(model.rows().get(2).text(MixColumns.DENSITY)).isEqualTo("2.6");
    }

    @Test
    void textThatIsNoNumberIsNamedWithItsFieldAndTheOtherProblemsStaySaid() {
        fillNewMix();
        model.constituents().type(3, MixColumns.MASS, "17x");
        model.constituents().type(0, MixColumns.DENSITY, "");
        model.type(MixColumns.SOAK, "9999");
        assertThat(fields(model.shownProblems()))
                .containsExactlyInAnyOrder("constituents.3.mass", "constituents.0.relativeDensity", "soakMinutes");
        Problem typed = model.shownProblems().stream()
                .filter(problem -> problem.code().equals("form.not-its-unit"))
                .findFirst()
                .orElseThrow();
        assertThat(mixDesk.desk.tools().problemText().say(typed))
                .isEqualTo("Coarse aggregate, mass: \"x\" is not one of its units. Type one of these: kg, g, lb, "
                        + "oz.");
        assertThat(model.reading().figures()).isEmpty();
    }

    @Test
    void whatIsMissingIsSaidOnlyOnceSavingWasTried() {
        model.begin();
        model.type(MixColumns.TITLE, "New mix");
        assertThat(model.shownProblems()).isEmpty();
        assertThat(model.errorsInTheWay()).isZero();
        model.trySaving();
        assertThat(fields(model.shownProblems())).contains("id", "targetAir", "constituents.0.mass");
        assertThat(model.errorsInTheWay())
                .isEqualTo(fields(model.shownProblems()).size());
    }

    @Test
    void aNewMixNeedsANameThatCanBeReadAndToldApart() {
        fillNewMix();
        model.type(MixColumns.ID, "M\u00A09");
        assertThat(model.shownProblems()).extracting(Problem::code).contains("text.unseen");
        assertThat(model.reading().mix()).isEmpty();
        model.type(MixColumns.ID, "m-1");
        assertThat(model.shownProblems()).extracting(Problem::code).contains("id.differs-in-case");
        assertThat(model.reading().mix()).isPresent();
    }

    @Test
    void aNewMixNeedsANewName() {
        fillNewMix();
        model.type(MixColumns.ID, "M-1");
        assertThat(model.shownProblems()).extracting(Problem::code).contains("book.already-there");
        assertThat(model.reading().mix()).isEmpty();
    }

    @Test
    void undoesAndRedoesByName() {
        opened();
        model.type(MixColumns.TITLE, "A");
        model.type(MixColumns.TITLE, "AB");
        model.constituents().type(1, MixColumns.MASS, "1060");
        assertThat(model.history().undoLabel()).contains("Change row 2, mass");
        model.history().undo();
        assertThat(model.rows().get(1).text(MixColumns.MASS)).isEqualTo("1050");
        assertThat(model.history().undoLabel()).contains("Change Title");
        model.history().undo();
        assertThat(model.draft().text(MixColumns.TITLE)).isEqualTo("Mix M-1");
        assertThat(model.history().isChanged()).isFalse();
        model.history().redo();
        assertThat(model.draft().text(MixColumns.TITLE)).isEqualTo("AB");
    }

    @Test
    void rowsAreAddedRemovedAndMovedOneStepEach() {
        opened();
        assertThat(model.constituents().addRow(0)).isEqualTo(1);
        assertThat(model.constituents().addRow(-1)).isEqualTo(3);
        model.history().undo();
        assertThat(model.rows()).hasSize(3);
        model.constituents().removeRow(1);
        model.constituents().moveRow(1, -1);
        assertThat(model.rows().get(0).text(MixColumns.NAME)).isEqualTo("Stone");
        model.history().undo();
        model.history().undo();
        model.history().undo();
        assertThat(model.history().isChanged()).isFalse();
    }

    @Test
    void switchingUnitsChangesTheFiguresUnitButNoDigitOfTheDraft() {
        opened();
        TypedDraft before = model.draft();
        mixDesk.desk.show(UnitSystem.US);
        model.followDesk();
        assertThat(model.draft()).isEqualTo(before);
        assertThat(model.rows().get(0).unit(MixColumns.MASS)).isEqualTo(MassUnit.KILOGRAM.symbol());
        model.constituents().addRow(-1);
        assertThat(model.rows().get(2).unit(MixColumns.MASS)).isEqualTo(MassUnit.POUND.symbol());
    }

    @Test
    void figuresAgreeWithAPencil() {
        opened();
        // 700 + 1050 = 1750 kg; both at 2.650: 1750 / 2650 = 0.660377 m3; stated 1.00 m3, so 66.0377 % and 1750 kg/m3.
        BatchFigures figures = model.reading().figures().orElseThrow();
        assertThat(figures.totalMass().kilograms()).isEqualTo(1750);
        assertThat(figures.airFree().orElseThrow().cubicMetres()).isCloseTo(0.660377, within(5e-7));
        assertThat(figures.concrete().orElseThrow().cubicMetres()).isEqualTo(1.0);
        assertThat(figures.density().orElseThrow().kilogramsPerCubicMetre()).isEqualTo(1750);
        assertThat(figures.airFreeSharePercent().orElseThrow()).isCloseTo(66.0377, within(5e-5));
        model.type(MixFields.VOLUME_FROM, VolumeFrom.CONSTITUENTS.symbol());
        // 0.660377 / (1 - 0.060) = 0.702529 m3
        figures = model.reading().figures().orElseThrow();
        assertThat(figures.concrete().orElseThrow().cubicMetres()).isCloseTo(0.702529, within(5e-7));
        model.constituents().type(1, MixColumns.RETAINED, "40");
        model.type(MixColumns.WET_SIEVED, "yes");
        // Passing: 0.264151 + 0.6 x 0.396226 = 0.501887; over 0.94 = 0.533922 m3, and 0.158491 m3 of stone is left out.
        figures = model.reading().figures().orElseThrow();
        assertThat(figures.passing().orElseThrow().cubicMetres()).isCloseTo(0.533922, within(5e-7));
        assertThat(figures.concrete().orElseThrow().cubicMetres()).isCloseTo(0.692413, within(1e-6));
    }

    @Test
    void aCorrectionThatChangesTheAggregatesSaysWhatBecomesUntrue() {
        Books.keep(
                mixDesk.book,
                Samples.determination("M-1/1", "M-1"),
                Samples.trial("T-1", "M-1", "M-1/1", "5.4"),
                Samples.issue("M-1", 1, "M-1/1", LocalDate.of(2026, 3, 1)),
                Samples.determination("M-1/2", "M-1"),
                Samples.trial("T-2", "M-1", "M-1/2", "5.5"));
        opened();
        model.type(MixColumns.TARGET_AIR, "5.5");
        assertThat(effects()).isEqualTo(new SavingEffects(Optional.empty(), Optional.empty()));
        model.constituents().type(1, MixColumns.MASS, "1060");
        assertThat(effects().untrueFactor()).isPresent();
        assertThat(effects().trialsLeftBehind().orElseThrow().trials()).hasSize(1);
    }

    @Test
    void versionsSayWhatChanged() {
        opened();
        model.type(MixColumns.TARGET_AIR, "5.5");
        model.constituents().type(1, MixColumns.MASS, "1060");
        assertThat(Refused.by(out -> model.save("Less air asked for", out))).isEmpty();
        List<Version<MixDesign>> versions = model.versions();
        assertThat(versions).extracting(Version::number).containsExactly(2, 1);
        assertThat(versions.get(0).stamp().why()).isEqualTo("Less air asked for");
        assertThat(model.changes(versions.get(1).value(), versions.get(0).value()))
                .containsExactly("Target air", "Stone");
    }

    @Test
    void droppingTheChangesCanBeUndone() {
        opened();
        String before = model.draft().text(MixColumns.TITLE);
        model.type(MixColumns.TITLE, "Mine");
        model.dropDraft();
        assertThat(model.draft().text(MixColumns.TITLE)).isEqualTo(before);
        assertThat(model.history().isChanged()).isFalse();
        assertThat(model.history().undoLabel()).contains("Drop the changes");
        model.history().undo();
        assertThat(model.draft().text(MixColumns.TITLE)).isEqualTo("Mine");
        assertThat(model.history().isChanged()).isTrue();
    }

    @Test
    void aDraftSurvivesACorrectionMadeElsewhereAndIsThenRefused() {
        opened();
        model.type(MixColumns.TITLE, "Mine");
        Version<MixDesign> version = mixDesk.book.latest(MixDesign.class, "M-1").orElseThrow();
        mixDesk.keepElsewhere(Draft.correcting(version, Samples.mix("M-1", "S-2", "S-2")));
        mixDesk.desk.refresh();
        model.followDesk();
        assertThat(model.draft().text(MixColumns.TITLE)).isEqualTo("Mine");
        assertThat(Refused.by(out -> model.save("mine", out)))
                .extracting(Problem::code)
                .containsExactly("book.changed-meanwhile");
        model.dropDraft();
        assertThat(model.base().orElseThrow().number()).isEqualTo(2);
    }

    @Test
    void aDecimalCommaIsReadWhereItIsWritten() {
        MixDesk german = new MixDesk(Locale.GERMAN);
        german.select("M-1");
        MixModel page = new MixModel(german.desk);
        assertThat(page.rows().get(0).text(MixColumns.DENSITY)).isEqualTo("2,650");
        page.type(MixColumns.TARGET_AIR, "5,5");
        assertThat(page.reading().mix().orElseThrow().batch().targetAirPercent())
                .isEqualTo(new BigDecimal("5.5"));
        page.type(MixColumns.TARGET_AIR, "5.75");
        assertThat(page.reading().mix().orElseThrow().batch().targetAirPercent())
                .isEqualTo(new BigDecimal("5.75"));
        page.type(MixColumns.TARGET_AIR, "5.750,0");
        assertThat(fields(page.shownProblems())).containsExactly("targetAir");
    }

    @Test
    void inSpanishAnswersAreSpanishAndNumbersHaveTheirComma() {
        MixDesk spanish = new MixDesk(Locale.forLanguageTag("es"));
        spanish.select("M-1");
        MixModel page = new MixModel(spanish.desk);
        assertThat(page.rows().get(0).text(MixColumns.DENSITY)).isEqualTo("2,650");
        page.type(MixColumns.TARGET_AIR, "60,5");
        assertThat(page.shownProblems().stream().map(spanish.desk.tools().problemText()::say))
                .anyMatch(said -> said.startsWith("El aire previsto, 60,5 %, debe estar entre 0 y "));
        page.type(MixColumns.TARGET_AIR, "5.5,0");
        assertThat(page.shownProblems().stream().map(spanish.desk.tools().problemText()::say))
                .containsExactly(
                        "Aire previsto: \"5.5,0\" no es un número. Escribir coma como signo decimal y nada entre "
                                + "los miles.");
    }

    @Test
    void aSourceThatIsNotInTheRegisterIsPointedOutWhereThereIsAggregate() {
        model.begin();
        model.constituents().type(0, MixColumns.SOURCE, "works");
        model.constituents().type(2, MixColumns.SOURCE, "S-1");
        model.constituents().type(3, MixColumns.SOURCE, "S-22");
        assertThat(model.reading().problems())
                .filteredOn(problem -> problem.code().equals("register.source-unknown"))
                .extracting(Problem::field)
                .containsExactly("constituents.3.source");
        model.constituents().type(3, MixColumns.SOURCE, "");
        assertThat(model.reading().problems()).extracting(Problem::code).doesNotContain("register.source-unknown");
    }

    @Test
    void aNewMixBeginsEmptyAlsoAfterOneThatWasOpen() {
        opened();
        mixDesk.desk.selectNone();
        model.begin();
        assertThat(model.base()).isEmpty();
        assertThat(model.versions()).isEmpty();
        assertThat(model.draft().text(MixColumns.ID)).isEmpty();
        assertThat(model.rows()).hasSize(4);
        model.followDesk();
        assertThat(model.isEmpty()).isFalse();
        assertThat(model.base()).isEmpty();
    }

    @Test
    void aNewMixOfWhichNothingIsTypedGivesWayToOneThatIsSelected() {
        model.begin();
        opened();
        assertThat(model.base().orElseThrow().value().recordId()).isEqualTo("M-1");
        mixDesk.desk.selectNone();
        model.followDesk();
        assertThat(model.isEmpty()).isTrue();
    }

    @Test
    void theLaboratorysOwnProfilesAreOfferedAfterThoseOfTheStandards() {
        Profile own = Profiles.standard().copyAs("own", "Own figures");
        mixDesk.keepElsewhere(Draft.of(new LaboratoryProfile(own)));
        mixDesk.desk.refresh();
        model.followDesk();
        assertThat(model.choices(MixColumns.PROFILE))
                .containsExactly("astm-c231", "aashto-t152", "en-12350-7", "jis-a1128", "own");
    }

    /** A file may bring in an own copy under the name of another standard; it is then the one that holds. */
    @Test
    void aProfileIsOfferedOnceByItsName() {
        Profile own = Profiles.find("aashto-t152").orElseThrow().copyAs("astm-c231", "Ours");
        mixDesk.keepElsewhere(Draft.of(new LaboratoryProfile(own)));
        mixDesk.desk.refresh();
        model.followDesk();
        assertThat(model.choices(MixColumns.PROFILE))
                .extracting(id -> model.choiceWords(MixColumns.PROFILE, id))
                .containsExactly("AASHTO T 152", "EN 12350-7", "JIS A 1128", "Ours");
    }

    @Test
    void onlySourcesOfTheRowsRoleAreOffered() {
        assertThat(model.sourcesFor(Role.FINE))
                .extracting(source -> source.id().text())
                .containsExactly("S-1");
        assertThat(model.sourcesFor(Role.CEMENT)).isEmpty();
    }
}
