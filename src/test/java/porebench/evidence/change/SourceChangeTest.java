package porebench.evidence.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import porebench.evidence.Evidence;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.TimeBook;
import porebench.method.Answer;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.record.MixDesign;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.id.DeterminationId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.statistics.comparison.BeforeAndAfter;
import porebench.statistics.comparison.ComparisonVerdict;

/** A laboratory of two mixes whose stone S-2 comes from another ledge one day. */
class SourceChangeTest {
    private static final LocalDate OLD = TimeBook.START;
    private static final LocalDate NEW = TimeBook.START.plusDays(60);

    private final TimeBook laboratory = new TimeBook();

    @BeforeEach
    void testTheOldLedge() {
        laboratory.begin("M-1/1", "M-1");
        laboratory.trials("M-1/1", "M-1", OLD, 0.4, 0.5, 0.4);
    }

    private void changeLedge(String ledge) {
        laboratory.correct(Source.class, Samples.source("S-2", Role.COARSE, ledge));
    }

    private Answer<SourceChange> compared() {
        Evidence evidence = Evidence.of(laboratory.book, new MixId("M-1")).orElseThrow();
        return SourceChange.of(
                evidence,
                LaboratoryScatter.ofDeterminations(Evidence.ofAll(laboratory.book).stream()
                        .flatMap(one -> one.determinations().stream())
                        .toList()));
    }

    private List<String> codes() {
        return compared().problems().stream().map(Problem::code).toList();
    }

    @Test
    void withoutAChangeThereIsNothingToCompare() {
        assertThat(codes()).containsExactly("change.no-change");
    }

    @Test
    void theNewLedgeHasToBeTestedFirst() {
        changeLedge("Ledge 2");
        assertThat(codes()).containsExactly("change.nothing-after");
        assertThat(compared().problems().get(0).values()).containsExactly("M-1", "S-2");
    }

    /** Means 0.43333 and 0.83333 by pencil. */
    @Test
    void comparesTheOldLedgeWithTheNew() {
        changeLedge("Ledge 2");
        laboratory.begin("M-1/2", "M-1");
        laboratory.trials("M-1/2", "M-1", NEW, 0.8, 0.9, 0.8);
        SourceChange change = compared().value().orElseThrow();
        assertThat(change.sources()).containsExactly(new SourceId("S-2"));
        assertThat(change.before()).containsExactly(new DeterminationId("M-1/1"));
        assertThat(change.after()).containsExactly(new DeterminationId("M-1/2"));
        Comparison comparison = change.comparison();
        assertThat(comparison.found().difference()).isCloseTo(0.4, within(1e-9));
        assertThat(comparison.marginPercent()).isEqualTo(0.05);
        assertThat(comparison.divisionPercent()).isEqualTo(0.1);
        assertThat(comparison.verdict()).isEqualTo(ComparisonVerdict.REPLACE);
        assertThat(comparison.found().unit()).isEqualTo(BeforeAndAfter.Unit.READINGS);
        assertThat(codes()).containsExactly("change.margin-below-division", "change.determinations-unseen");
    }

    /** The ledge before the last one is no longer what the factor stands on. */
    @Test
    void onlyTheStoneAsItWasLastIsBefore() {
        changeLedge("Ledge 2");
        laboratory.begin("M-1/2", "M-1");
        laboratory.trials("M-1/2", "M-1", NEW, 0.8, 0.9);
        laboratory.begin("M-1/3", "M-1");
        laboratory.trials("M-1/3", "M-1", NEW.plusDays(10), 0.7, 0.9);
        changeLedge("Ledge 3");
        laboratory.begin("M-1/4", "M-1");
        laboratory.trials("M-1/4", "M-1", NEW.plusDays(30), 0.6, 0.5, 0.5);
        SourceChange change = compared().value().orElseThrow();
        assertThat(change.before()).containsExactly(new DeterminationId("M-1/2"), new DeterminationId("M-1/3"));
        assertThat(change.after()).containsExactly(new DeterminationId("M-1/4"));
        assertThat(change.comparison().found().unit()).isEqualTo(BeforeAndAfter.Unit.DETERMINATIONS_OF_ONE_SIDE);
        assertThat(codes()).contains("change.determinations-borrowed");
    }

    @Test
    void aCorrectedNameIsNoChange() {
        Source named = Samples.source("S-2", Role.COARSE, "Ledge 1");
        laboratory.correct(
                Source.class,
                new Source(
                        named.id(),
                        "Other name",
                        named.role(),
                        named.place(),
                        named.ledge(),
                        named.relativeDensity(),
                        named.absorptionPercent(),
                        ""));
        assertThat(codes()).containsExactly("change.no-change");
    }

    /** What changes with the proportions of the mix is not the source's. */
    @Test
    void trialsOfOtherProportionsAreNotBefore() {
        laboratory.correct(
                MixDesign.class,
                Samples.mix(
                        "M-1",
                        Samples.constituent("Sand", Role.FINE, "S-1", "900"),
                        Samples.constituent("Stone", Role.COARSE, "S-2", "850")));
        changeLedge("Ledge 2");
        assertThat(codes()).containsExactly("change.no-change");
    }

    @Test
    void differentMetersAreRefusedInTheirOwnWords() {
        changeLedge("Ledge 2");
        laboratory.begin("M-1/2", "M-1");
        laboratory.keep(
                laboratory.trial("M-1/2", "M-1", NEW, "R. Vale", "B-2", 0.8),
                laboratory.trial("M-1/2", "M-1", NEW.plusDays(1), "R. Vale", "B-2", 0.9));
        assertThat(codes()).containsExactly("change.different-meters");
        assertThat(compared().problems().get(0).values()).containsExactly("B-1", "B-2");
    }

    @Test
    void onlyMetersThatBothSidesUsedCount() {
        changeLedge("Ledge 2");
        laboratory.begin("M-1/2", "M-1");
        laboratory.trials("M-1/2", "M-1", NEW, 0.8, 0.9, 0.8);
        laboratory.keep(laboratory.trial("M-1/2", "M-1", NEW.plusDays(5), "R. Vale", "B-2", 2.0));
        assertThat(compared().value().orElseThrow().comparison().found().difference())
                .isCloseTo(0.4, within(1e-9));
        assertThat(codes()).startsWith("change.other-meters");
        assertThat(compared().problems().get(0).values().get(2)).isEqualTo(1);
    }

    @Test
    void oneTrialShowsNoScatter() {
        changeLedge("Ledge 2");
        laboratory.begin("M-1/2", "M-1");
        laboratory.trials("M-1/2", "M-1", NEW, 0.8);
        assertThat(codes()).containsExactly("change.one-trial-after");
    }

    /**
     * Six other mixes of two determinations 0.2 apart let the laboratory say what determinations differ by. By pencil: a mean square of
     * 0.04 between two of two, 0.00458 within, so that a variance of 0.0177 is between; twice that and 2 / 3 of 0.00333 make 0.0376.
     */
    @Test
    void whatDeterminationsDifferByInTheLaboratoryIsAdded() {
        for (int mix = 3; mix < 9; mix++) {
            String name = "M-" + mix;
            laboratory.keep(Samples.mix(name, "S-1", "S-3"));
            for (int number = 1; number <= 2; number++) {
                laboratory.begin(name + "/" + number, name);
                laboratory.trials(
                        name + "/" + number, name, OLD, 0.3 * mix + 0.2 * number, 0.1 + 0.3 * mix + 0.2 * number);
            }
        }
        changeLedge("Ledge 2");
        laboratory.begin("M-1/2", "M-1");
        laboratory.trials("M-1/2", "M-1", NEW, 0.8, 0.9, 0.8);
        Comparison comparison = compared().value().orElseThrow().comparison();
        assertThat(comparison.found().unit()).isEqualTo(BeforeAndAfter.Unit.READINGS_WITH_LABORATORY);
        assertThat(comparison.found().standardError()).isCloseTo(0.1935, within(0.001));
        assertThat(comparison.verdict()).isEqualTo(ComparisonVerdict.TEST_MORE);
        assertThat(comparison.usualPercent()).isPresent();
        assertThat(codes()).containsExactly("change.margin-below-division");
    }

    @Test
    void metersOfAnotherTypeDoNotJoin() {
        laboratory.keep(Samples.meter("A-1", MeterType.A));
        changeLedge("Ledge 2");
        laboratory.begin("M-1/2", "M-1");
        laboratory.trials("M-1/2", "M-1", NEW, 0.4, 0.5, 0.4);
        assertThat(compared().value().orElseThrow().comparison().found().difference())
                .isCloseTo(0, within(1e-9));
    }
}
