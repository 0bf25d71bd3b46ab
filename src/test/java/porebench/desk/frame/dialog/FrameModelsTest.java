package porebench.desk.frame.dialog;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.desk.Refused;
import porebench.desk.frame.DemoDesk;
import porebench.desk.frame.rail.NextStep;
import porebench.evidence.Evidence;
import porebench.method.Figure;
import porebench.method.FigureName;
import porebench.method.Mark;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Profile;
import porebench.method.profile.Profiles;
import porebench.record.LaboratoryProfile;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/** What the window knows, on the demo laboratory in a real file, without a display. */
class FrameModelsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    @TempDir
    Path folder;

    private DemoDesk demo;

    @BeforeEach
    void openDemo() {
        demo = DemoDesk.filled(folder);
    }

    @AfterEach
    void closeDemo() {
        demo.desk.book().close();
    }

    // The demo's sheets say so: issue and recheck dates, two trials of HG-103 in a recheck, the later ledge of S-09.
    @ParameterizedTest
    @CsvSource({
        "HG-101, next.in-force, 0",
        "HG-102, next.recheck-due.begin, 2",
        "HG-103, next.lapsed.go-on, 3",
        "HG-106, next.source-changed.begin, 2",
        "HG-108, next.no-factor.issue, 4",
    })
    void everyStateSaysWhatIsNext(String mix, String key, int step) {
        Evidence evidence = Evidence.of(demo.desk.book(), new MixId(mix)).orElseThrow();
        NextStep next = NextStep.of(evidence, DAY.atTime(12, 0), Problem::code);
        assertThat(next.key()).isEqualTo(key);
        assertThat(next.step()).isEqualTo(step);
        assertThat(FrameTexts.in(Locale.ENGLISH).get(next.key(), next.values().toArray()))
                .doesNotContain("{");
    }

    /** HG-101 was tested in June 2026; a season begins in November. */
    @Test
    void theRuleThatAsksForANewTestIsNamed() {
        LabBook book = demo.desk.book();
        LaboratoryProfile own = new LaboratoryProfile(Profiles.standard()
                .copyAs("own", "Own")
                .with(FigureName.RECHECK_SEASONS, new Figure("11-01", "our rule", Mark.LABORATORY)));
        Version<MixDesign> mix = book.latest(MixDesign.class, "HG-101").orElseThrow();
        MixDesign design = mix.value();
        MixDesign ours = new MixDesign(
                design.id(),
                design.title(),
                design.batch(),
                design.soakMinutes(),
                design.airTolerancePercent(),
                "own",
                design.remarks(),
                design.plant());
        assertThat(book.keep(List.of(Draft.of(own), Draft.correcting(mix, ours)), "M. Sorrel", "our rules"))
                .isEmpty();
        NextStep next = NextStep.of(
                Evidence.of(book, design.id()).orElseThrow(), DAY.atTime(12, 0), ProblemText.in(Locale.ENGLISH)::say);
        assertThat(next.key()).isEqualTo("next.recheck-rule.begin");
        assertThat(FrameTexts.in(Locale.ENGLISH).get(next.key(), next.values().toArray()))
                .isEqualTo("A season began on 2026-11-01; the newest trial is of 2026-06-10. Test again. Weigh "
                        + "out a new sample and make at least 3 trials.");
    }

    @Test
    void theChangedSourceIsNamed() {
        Evidence evidence = Evidence.of(demo.desk.book(), new MixId("HG-106")).orElseThrow();
        assertThat(NextStep.of(evidence, DAY.atTime(12, 0), Problem::code).values())
                .first()
                .isEqualTo("S-09");
    }

    @Test
    void aSheetWithGoodAndBadRowsShowsBothAndKeepsNothingByItself() throws Exception {
        Path sheet = folder.resolve("sources.csv");
        String heading = Files.readAllLines(Path.of("demo-data/sources.csv"), StandardCharsets.UTF_8)
                .get(0);
        List<String> rows = Files.readAllLines(Path.of("demo-data/sources.csv"), StandardCharsets.UTF_8);
        String good = rows.get(1).replaceFirst("^[^,]*", "S-90");
        String bad = rows.get(1).replaceFirst("^[^,]*", "S-91").replaceFirst("fine|coarse", "gravelly");
        Files.write(sheet, List.of(heading, good, bad), StandardCharsets.UTF_8);
        long before = demo.desk.book().changeNumber();
        ImportModel incoming = ImportModel.of(
                demo.desk.book(),
                List.of(demo.desk.tools().sheets().records(sheet)),
                demo.desk.tools().now(),
                Progress.UNHEARD);
        assertThat(incoming.counts()).isEqualTo(Map.of(RecordKind.SOURCE, 1));
        assertThat(incoming.hasSomethingToKeep()).isTrue();
        assertThat(incoming.errors()).isPositive();
        assertThat(incoming.warnings()).isEqualTo(incoming.problems().size() - incoming.errors());
        assertThat(incoming.problems())
                .filteredOn(Problem::isError)
                .allSatisfy(problem ->
                        assertThat(problem.place().flatMap(Place::line)).contains(3));
        assertThat(demo.desk.book().changeNumber()).isEqualTo(before);
    }

    /** The demo has a source S-01. */
    @Test
    void whatIsOnlyDoubtfulIsCountedAsAWarning() throws Exception {
        Path sheet = folder.resolve("sources.csv");
        List<String> rows = Files.readAllLines(Path.of("demo-data/sources.csv"), StandardCharsets.UTF_8);
        String doubtful = rows.get(1).replaceFirst("^[^,]*", "s-01");
        Files.write(sheet, List.of(rows.get(0), doubtful), StandardCharsets.UTF_8);
        ImportModel incoming = ImportModel.of(
                demo.desk.book(),
                List.of(demo.desk.tools().sheets().records(sheet)),
                demo.desk.tools().now(),
                Progress.UNHEARD);
        assertThat(incoming.errors()).isZero();
        assertThat(incoming.warnings()).isEqualTo(1);
        assertThat(incoming.hasSomethingToKeep()).isTrue();
    }

    @Test
    void whatIsInTheLabBookUnchangedIsPassedOver() {
        ImportModel incoming = ImportModel.of(
                demo.desk.book(),
                List.of(demo.desk.tools().sheets().records(Path.of("demo-data/meters.csv"))),
                demo.desk.tools().now(),
                Progress.UNHEARD);
        assertThat(incoming.hasSomethingToKeep()).isFalse();
        assertThat(incoming.result().alreadyThere()).isEqualTo(3);
        assertThat(incoming.problems()).isEmpty();
    }

    @Test
    void anOwnCopyOfAProfileIsMarkedAsTheLaboratorysAndKept() {
        ProfileModel model = new ProfileModel(List.of(), FrameTexts.in(Locale.ENGLISH), "astm-c231");
        assertThat(model.isOwn()).isFalse();
        assertThat(model.canSave()).isFalse();
        model.copy();
        model.change(FigureName.LEAST_TRIALS, "5");
        assertThat(model.figures().get(FigureName.LEAST_TRIALS).mark()).isEqualTo(Mark.LABORATORY);
        assertThat(model.canSave()).isTrue();
        demo.desk.setPerson("M. Quist");
        assertThat(Refused.by(out -> demo.desk.keep(List.of(model.record().orElseThrow()), "five trials here", out)))
                .isEmpty();
        LaboratoryProfile kept = demo.desk
                .book()
                .latest(LaboratoryProfile.class, "astm-c231-own")
                .orElseThrow()
                .value();
        assertThat(kept.profile().count(FigureName.LEAST_TRIALS)).isEqualTo(5);
        assertThat(kept.profile().basedOn()).contains("astm-c231");
    }

    @Test
    void aFigureThatDoesNotFitIsNamedAndNotKept() {
        ProfileModel model = new ProfileModel(List.of(), FrameTexts.in(Locale.ENGLISH), "astm-c231");
        model.copy();
        model.change(FigureName.RECHECK_MONTHS, "0");
        assertThat(model.problems()).extracting(Problem::code).containsExactly("profile.out-of-range");
        assertThat(model.canSave()).isFalse();
        model.history().undo();
        assertThat(model.problems()).isEmpty();
    }

    @Test
    void theFiguresOfAProfileAreTypedAsTheLanguageWritesThemAndKeptAlike() {
        FigureWords spanish = new FigureWords(FrameTexts.in(Locale.forLanguageTag("es")));
        assertThat(spanish.show(FigureName.FACTOR_STEP, "0.1")).isEqualTo("0,1");
        assertThat(spanish.keep(FigureName.FACTOR_STEP, " 0,05 ")).isEqualTo("0.05");
        assertThat(spanish.show(FigureName.FACTOR_TIES, "even")).isEqualTo("al par");
        assertThat(spanish.keep(FigureName.FACTOR_TIES, "Lejos de cero")).isEqualTo("away");
        assertThat(spanish.unit(FigureName.FACTOR_TIES)).isEqualTo("al par / lejos de cero");
        assertThat(spanish.unit(FigureName.LEAST_TRIALS)).isEqualTo("ensayos");
        assertThat(spanish.unit(FigureName.LEAST_BOWL)).isEqualTo("L");
        FigureWords english = new FigureWords(FrameTexts.in(Locale.ENGLISH));
        assertThat(english.show(FigureName.FACTOR_STEP, "0.1")).isEqualTo("0.1");
        assertThat(english.keep(FigureName.FACTOR_TIES, "away")).isEqualTo("away");
    }

    /** The comma between two days is no decimal sign, in no language. */
    @Test
    void seasonsAreTypedAsDaysOrAsTheWordForNone() {
        FigureWords spanish = new FigureWords(FrameTexts.in(Locale.forLanguageTag("es")));
        assertThat(spanish.keep(FigureName.RECHECK_SEASONS, " 04-01,10-01 ")).isEqualTo("04-01,10-01");
        assertThat(spanish.show(FigureName.RECHECK_SEASONS, "04-01,10-01")).isEqualTo("04-01,10-01");
        assertThat(spanish.show(FigureName.RECHECK_SEASONS, "none")).isEqualTo("ninguna");
        assertThat(spanish.keep(FigureName.RECHECK_SEASONS, "Ninguna")).isEqualTo("none");
        assertThat(spanish.unit(FigureName.RECHECK_SEASONS)).isEqualTo("MM-DD,MM-DD o ninguna");
        Problem wrong = FigureName.RECHECK_SEASONS.check("abril").orElseThrow();
        assertThat(ProblemText.in(Locale.forLanguageTag("es")).say(spanish.named(wrong)))
                .isEqualTo("Ensayo nuevo al empezar temporada: abril no son días del año. Escribir días como "
                        + "04-01,10-01, cada uno una vez, o ninguno.");
    }

    @Test
    void aPointWhereTheLanguageWritesACommaIsRefusedInItsWords() {
        FigureWords spanish = new FigureWords(FrameTexts.in(Locale.forLanguageTag("es")));
        String kept = spanish.keep(FigureName.FACTOR_STEP, "0.1");
        Problem wrong = FigureName.FACTOR_STEP.check(kept).orElseThrow();
        assertThat(ProblemText.in(Locale.forLanguageTag("es")).say(spanish.named(wrong)))
                .isEqualTo("Redondeo del factor informado: 0.1 debe ser un número entre 0,01 y 1 % de aire. "
                        + "Corregirlo.");
        Problem noChoice = FigureName.AIR_TIES
                .check(spanish.keep(FigureName.AIR_TIES, "arriba"))
                .orElseThrow();
        assertThat(ProblemText.in(Locale.forLanguageTag("es")).say(spanish.named(noChoice)))
                .isEqualTo("Los empates del aire van a: arriba debe ser uno de estos: al par, lejos de cero. "
                        + "Elegir uno de ellos.");
        Problem missing = Profile.check(Map.of()).stream()
                .filter(problem -> problem.field().equals(FigureName.AIR_TIES.symbol()))
                .findFirst()
                .orElseThrow();
        assertThat(ProblemText.in(Locale.forLanguageTag("es")).say(spanish.named(missing)))
                .contains("Los empates del aire van a");
    }

    @Test
    void everyFigureHasItsNameAndUnitInWords() {
        for (Locale language : List.of(Locale.ENGLISH, Locale.forLanguageTag("es"))) {
            FigureWords words = new FigureWords(FrameTexts.in(language));
            for (FigureName name : FigureName.values()) {
                assertThat(words.unit(name)).as(name.symbol()).isNotBlank();
                assertThat(FrameTexts.in(language).get(ProfileModel.wordsOf(name)))
                        .as(name.symbol())
                        .isNotBlank();
            }
        }
    }

    @Test
    void theReasonOfAFailureNamesEveryCauseOnce() {
        Exception failure = new IllegalStateException("writing the copy", new IOException("disk full"));
        assertThat(SwingAsker.reasonOf(failure, Locale.ENGLISH)).isEqualTo("writing the copy\ndisk full");
    }
}
