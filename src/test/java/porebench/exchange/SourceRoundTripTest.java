package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.evidence.intake.Sheet;
import porebench.exchange.sheet.Format;
import porebench.method.Role;
import porebench.record.FactorGroup;
import porebench.record.FactorIssue;
import porebench.record.GroupGround;
import porebench.record.Kept;
import porebench.record.Production;
import porebench.record.SampleGroups;
import porebench.record.SampleProduction;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.SourceMeasurement;
import porebench.record.SourceStep;
import porebench.record.id.MeasurementId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;
import porebench.store.Books;

/** A source with all that it may state, written and read back. */
class SourceRoundTripTest {
    @Test
    void aSourceWithItsProducerAndWhatItsVersionIsReadsBack() throws IOException {
        for (SourceStep step : SourceStep.values()) {
            Source full = new Source(
                    new SourceId("S-1"),
                    "Stone",
                    Role.COARSE,
                    "Quarry",
                    "ledge 5",
                    Optional.of(new BigDecimal("2.70")),
                    Optional.empty(),
                    "",
                    Optional.of("Ternstead Stone"),
                    Optional.of("No. 57"),
                    Optional.of("5 to 25 mm"),
                    Optional.of(new BigDecimal("0.50")),
                    Optional.of(step),
                    Optional.of(LocalDate.of(2026, 11, 9)),
                    Optional.of("Ledge 4, the old one, \"is\" worked out"));
            assertThat(RoundTripTest.written(SheetFormats.SOURCES, full)).isEqualTo(full);
        }
    }

    @Test
    void aMeasurementReadsBackWithItsDigitsAndIsNoSource() throws IOException {
        SourceMeasurement full = new SourceMeasurement(
                new MeasurementId("S-1/m1"),
                new SourceId("S-1"),
                LocalDate.of(2026, 11, 9),
                "R. Vale",
                "ledge 5",
                Optional.of(new BigDecimal("2.700")),
                Optional.of(new BigDecimal("1.0")),
                Optional.of(new BigDecimal("0")),
                "\"wet\", split");
        Format<?> format = RoundTripTest.formatOf(full);
        assertThat(RoundTripTest.written(format, full)).isEqualTo(full);
    }

    @Test
    void productionReadsBackWithItsDigitsAndUnits() throws IOException {
        LocalDate day = LocalDate.of(2026, 3, 2);
        Production days = SampleProduction.days("M-1/p1", "M-1", day, day.plusDays(6), 5);
        List<Production> all = List.of(
                days,
                SampleProduction.with(days, Optional.of(0), Optional.of("180.50"), Optional.empty()),
                SampleProduction.mass("M-1/p2", "M-1", day, day, "96.0"),
                SampleProduction.volume("M-1/p3", "M-1", day, day, "0"));
        Format<?> format = RoundTripTest.formatOf(days);
        for (Production made : all) {
            assertThat(RoundTripTest.written(format, made)).isEqualTo(made);
        }
    }

    @Test
    void aGroupAndAFactorOfItReadBackWithTheirMembers() throws IOException {
        FactorGroup group = SampleGroups.full();
        assertThat(RoundTripTest.written(RoundTripTest.formatOf(group), group)).isEqualTo(group);
        FactorIssue plain = Samples.issue("M-2", 1, "M-1/1", LocalDate.of(2026, 3, 9));
        FactorIssue lent = plain.on(plain.grounds().of(Optional.of(new GroupGround(group.id(), 7, group.testedMix()))));
        FactorIssue own = Samples.issue("M-1", 1, "M-1/1", LocalDate.of(2026, 3, 9))
                .on(plain.grounds().of(Optional.of(new GroupGround(group.id(), 7, group.testedMix()))));
        for (FactorIssue issue : List.of(plain, lent, own)) {
            assertThat(RoundTripTest.written(RoundTripTest.formatOf(issue), issue))
                    .isEqualTo(issue);
        }
    }

    /** The tested mix need not stand among the members: it always is one. */
    @Test
    void aGroupNamesItsTestedMixAndRefusesWhatIsNoListOfNames() {
        String head = "group_id,group_title,tested_mix_id,tolerance_pct,members,reason\n";
        assertThat(sheet(head + "G-1,,M-1,3,M-2;M-3,like\n").values())
                .extracting(kept -> ((FactorGroup) kept).members())
                .containsExactly(List.of(new MixId("M-1"), new MixId("M-2"), new MixId("M-3")));
        assertThat(sheet(head + "G-1,,M-1,3,M-2;M-1,like\n").values())
                .extracting(kept -> ((FactorGroup) kept).members())
                .containsExactly(List.of(new MixId("M-2"), new MixId("M-1")));
        assertThat(Books.codes(sheet(head + "G-1,,M-1,3,M-2;;M-3,like\n").problems()))
                .containsExactly("csv.not-names");
        assertThat(Books.codes(sheet(head + "G-1,,M-1,3,M-2;M-2,like\n").problems()))
                .containsExactly("group.member-twice");
        assertThat(Books.codes(sheet(head + "G-1,,M-1,0.09,M-2,like\nG-2,,M-1,10.1,M-2,like\n")
                        .problems()))
                .containsExactly("csv.out-of-range", "csv.out-of-range");
        assertThat(Books.codes(sheet(head + "G-1,,M-1,0.1,M-2,like\nG-2,,M-1,10,M-2,like\n")
                        .problems()))
                .isEmpty();
        assertThat(Books.codes(sheet(head + "G-1,,M-1,3,M-2,\n").problems())).containsExactly("csv.required");
    }

    private static Sheet<Kept> sheet(String text) {
        return CsvSheets.records("factor-groups.csv", text.getBytes(StandardCharsets.UTF_8));
    }
}
