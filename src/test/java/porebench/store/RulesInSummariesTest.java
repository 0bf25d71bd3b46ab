package porebench.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.Evidence;
import porebench.evidence.RegisterRow;
import porebench.evidence.standing.LaboratoryStanding;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.method.Role;
import porebench.method.profile.Profiles;
import porebench.record.LaboratoryProfile;
import porebench.record.MixDesign;
import porebench.record.SampleProduction;
import porebench.record.SampleSources;
import porebench.record.Samples;
import porebench.record.book.LabBook;
import porebench.record.id.MixId;

/** What the rules for rechecking count is kept beside the entries as working it out of them gives it. */
class RulesInSummariesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 10);

    @TempDir
    Path folder;

    private static List<RegisterRow> workedOut(List<Evidence> all, LocalDate day) {
        return all.stream().map(evidence -> RegisterRow.of(evidence, day)).toList();
    }

    private static int nextRevision(LabBook book, String mix) {
        return Evidence.of(book, new MixId(mix)).orElseThrow().issues().size() + 1;
    }

    /** What the rules of a profile count is kept in any order, too; the register says of every day what working it out gives. */
    @Test
    void theSummariesFollowWhatTheRulesOfAProfileCount() {
        Random random = new Random(41);
        try (LabBook book = Books.fresh(folder.resolve("book.porebench"))) {
            Books.keep(
                    book,
                    Samples.source("S-1", Role.FINE, "Ledge 1"),
                    Samples.source("S-2", Role.COARSE, "Ledge 1"),
                    Samples.meter("B-1", MeterType.B),
                    new LaboratoryProfile(rules("0")));
            for (String mix : List.of("M-1", "M-2", "M-3")) {
                Books.keep(
                        book,
                        ofProfile(Samples.mix(mix, "S-1", "S-2"), "rules"),
                        Samples.determination(mix + "/1", mix),
                        Samples.trial("T-" + mix, mix, mix + "/1", "5.4"));
            }
            LaboratoryStanding renewed = LaboratoryStanding.of(book);
            for (int i = 0; i < 40; i++) {
                keepReported(book, random, i);
                renewed = renewed.renewed();
                List<Evidence> all = Evidence.ofAll(book);
                LaboratoryStanding anew = i % 10 == 0 ? LaboratoryStanding.of(book) : renewed;
                for (int day = -10; day < 70; day++) {
                    assertThat(renewed.rows(DAY.plusDays(day))).isEqualTo(workedOut(all, DAY.plusDays(day)));
                    assertThat(anew.rows(DAY.plusDays(day))).isEqualTo(renewed.rows(DAY.plusDays(day)));
                }
            }
            assertThat(renewed.rows(DAY.plusDays(60)))
                    .as("what is compared says something")
                    .anyMatch(row -> row.due().size() > 1);
            assertThat(book.check(Optional.empty()).faults()).isEmpty();
        }
    }

    private static void keepReported(LabBook book, Random random, int step) {
        String mix = "M-" + (1 + random.nextInt(3));
        LocalDate day = DAY.plusDays(step);
        switch (random.nextInt(6)) {
            case 0 -> Books.keep(book, Samples.issue(mix, nextRevision(book, mix), mix + "/1", day));
            case 1 -> Books.keep(book, Samples.trial("N-" + step, "M-1", "M-1/1", "5.5"));
            case 2 -> Books.keep(book, SampleSources.measured("S-1/m" + step, "S-1", day, "Lot " + step));
            case 3 -> Books.correct(book, new LaboratoryProfile(rules(Integer.toString(step % 3))));
            default -> Books.keep(book, SampleProduction.volume("p" + step, mix, day, day, "60"));
        }
    }

    private static Profile rules(String lots) {
        return Profiles.standard()
                .copyAs("rules", "Rules")
                .with(FigureName.RECHECK_LOTS, new Figure(lots, "our rule", Mark.LABORATORY))
                .with(FigureName.RECHECK_TONNES, new Figure("400", "our rule", Mark.LABORATORY))
                .with(FigureName.RECHECK_NOTICE_SHARE, new Figure("50", "our rule", Mark.LABORATORY))
                .with(FigureName.RECHECK_SEASONS, new Figure("04-01,05-01", "our rule", Mark.LABORATORY));
    }

    private static MixDesign ofProfile(MixDesign mix, String profile) {
        return new MixDesign(
                mix.id(),
                mix.title(),
                mix.batch(),
                mix.soakMinutes(),
                mix.airTolerancePercent(),
                profile,
                mix.remarks(),
                mix.plant());
    }
}
