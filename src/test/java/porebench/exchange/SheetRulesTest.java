package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static porebench.exchange.CsvText.TRIAL;
import static porebench.exchange.CsvText.bytes;
import static porebench.exchange.CsvText.found;

import java.io.IOException;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.evidence.TimeBook;
import porebench.evidence.intake.Sheet;
import porebench.exchange.sheet.FactorIssueFormat;
import porebench.exchange.sheet.ProfileFormat;
import porebench.exchange.text.ExchangeException;
import porebench.method.FigureName;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Profile;
import porebench.method.Role;
import porebench.method.profile.Profiles;
import porebench.port.OpenBooks;
import porebench.port.OutputFile;
import porebench.port.OutputFolder;
import porebench.record.FactorIssue;
import porebench.record.LaboratoryProfile;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.Trial;
import porebench.record.id.SourceId;

/** What holds a sheet together: rows that state one thing, rows that stand twice, and what the lab book adds to its own. */
class SheetRulesTest {
    private static final String LABORATORY = "laboratory_name,laboratory_address";
    private static final String PRINTS = "mix_id,revision,number,paper,destination";

    @TempDir
    private Path folder;

    /** A laboratory's own profile as it is written: the heading, then a row a figure. */
    private static List<String> profile() {
        List<String> lines = new ArrayList<>();
        ProfileFormat format = new ProfileFormat();
        lines.add(String.join(",", format.columns().all()));
        format.write(new LaboratoryProfile(Profiles.standard().copyAs("own", "Own"))).stream()
                .map(row -> String.join(
                        ",", row.stream().map(cell -> '"' + cell + '"').toList()))
                .forEach(lines::add);
        return lines;
    }

    private static Sheet<LaboratoryProfile> profiles(List<String> lines) {
        return CsvSheets.one("profiles.csv", bytes(lines.toArray(String[]::new)), new ProfileFormat());
    }

    private static int lineOf(List<String> lines, String figure) {
        return 1
                + lines.indexOf(lines.stream()
                        .filter(line -> line.contains('"' + figure + '"'))
                        .findFirst()
                        .orElseThrow());
    }

    @Test
    void aProfileHasEveryFigureOnceAndEachInItsRange() {
        List<String> lines = profile();
        assertThat(profiles(lines).problems()).isEmpty();
        assertThat(profiles(lines).rows()).hasSize(1);
        int step = lineOf(lines, "factor-step");

        List<String> twice = new ArrayList<>(lines);
        twice.add(lines.get(step - 1));
        assertThat(found(profiles(twice))).contains(lines.size() + 1 + ":5 figure csv.duplicate");
        assertThat(profiles(twice).rows()).isEmpty();

        List<String> beyond = new ArrayList<>(lines);
        beyond.set(step - 1, lines.get(step - 1).replaceFirst("\"factor-step\",\"[^\"]*\"", "\"factor-step\",\"7\""));
        assertThat(found(profiles(beyond))).contains(step + ":6 value profile.out-of-range");
        assertThat(profiles(beyond).rows()).isEmpty();

        List<String> missing = new ArrayList<>(lines);
        missing.remove(step - 1);
        assertThat(found(profiles(missing))).contains("2:5 figure profile.figure-missing");
        assertThat(profiles(missing).rows()).isEmpty();
    }

    /** As those are that were written before the figures were known: they stand as in the standard it started from. */
    @Test
    void aProfileMayBeWithoutTheRulesForRechecking() {
        List<String> lines = profile();
        int all = lines.size();
        lines.removeIf(line -> line.matches(".*\"(recheck-(?!months|notice-days)|proportion-)[a-z-]+\".*"));
        assertThat(lines).hasSize(all - 6);
        assertThat(profiles(lines).problems()).isEmpty();
        Profile read = profiles(lines).rows().get(0).value().profile();
        assertThat(read.figure(FigureName.RECHECK_SEASONS))
                .isEqualTo(Profiles.standard().figure(FigureName.RECHECK_SEASONS));
    }

    @Test
    void aProfileWithoutAColumnItNeedsIsNotRead() {
        List<String> lines = profile();
        lines.set(0, lines.get(0).replace("clause", "paragraph"));
        assertThat(profiles(lines).rows()).isEmpty();
        assertThat(found(profiles(lines))).contains("1:0 clause csv.column-missing");
    }

    @Test
    void aFileHoldsOneLaboratory() {
        Sheet<?> sheet = CsvText.records("l.csv", bytes(LABORATORY, "One,There", "Two,Elsewhere"));
        assertThat(found(sheet)).containsExactly("3:1 laboratory_name csv.duplicate");
        assertThat(sheet.rows()).hasSize(1);
        assertThat(found(CsvText.records("l.csv", bytes(LABORATORY, ",There"))))
                .containsExactly("2:1 laboratory_name csv.required");
    }

    @Test
    void aPrintIsKnownByItsMixItsRevisionAndItsNumber() {
        Sheet<?> sheet = CsvText.records(
                "p.csv",
                bytes(PRINTS, "M-1,1,1,A6,printer", "M-1,1,2,A6,printer", "M-1,2,1,A6,printer", "M-1,1,1,A6,x"));
        assertThat(found(sheet)).containsExactly("5:1 mix_id csv.duplicate");
        assertThat(sheet.rows()).hasSize(3);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "trial_versions | T-1 | csv.not-versions",
                "trial_versions | T-1:0 | csv.not-versions",
                "trial_versions | T-1:1;T-1:2 | csv.not-versions",
                "doubts_taken_on | T-1;trial.leak | csv.not-doubts",
                "doubts_taken_on | T-1;;it leaked;M. Ash;looked | csv.not-doubts",
                "doubts_taken_on | T-1;trial.leak;it leaked;;looked | csv.not-doubts",
                "doubts_taken_on | T-1;trial.leak;it leaked;M. Ash; | csv.not-doubts",
            })
    void aFactorNamesVersionsAndDoubtsInFull(String column, String cell, String code) {
        FactorIssueFormat format = new FactorIssueFormat(issue -> false);
        List<String> heading = format.columns().all();
        List<String> row = new ArrayList<>(format.write(Samples.issue("M-1", 1, "M-1/1", LocalDate.of(2026, 3, 9)))
                .get(0));
        int place = heading.indexOf(column);
        row.set(place, column.equals("doubts_taken_on") ? cell.replace(';', '|') : cell);
        Sheet<FactorIssue> sheet =
                CsvSheets.one("factor-issues.csv", bytes(String.join(",", heading), String.join(",", row)), format);
        assertThat(sheet.rows()).isEmpty();
        assertThat(found(sheet)).containsOnly("2:" + (place + 1) + " " + column + " " + code);
    }

    /** A source that changed after the issue is said of its factor, and of no other. */
    @Test
    void theExportSaysWhichFactorsRestOnChangedGround() throws IOException {
        TimeBook time = new TimeBook();
        for (String mix : List.of("M-1", "M-2")) {
            time.begin(mix + "/1", mix);
            time.trials(mix + "/1", mix, TimeBook.START, 0.4, 0.4, 0.4);
            SourceId stone = new SourceId(mix.equals("M-1") ? "S-2" : "S-3");
            time.book.holdAsBefore(Samples.issue(mix, 1, mix + "/1", TimeBook.START.plusDays(3))
                    .restingOn(1, Map.of(new SourceId("S-1"), 1, stone, 1)));
        }
        time.correct(Source.class, Samples.source("S-3", Role.COARSE, "Ledge 2"));
        new CsvSheets().export(time.book, OutputFolder.fresh(folder));
        List<String> lines = Files.readAllLines(folder.resolve("factor-issues.csv"), StandardCharsets.UTF_8);
        FactorIssueFormat format = new FactorIssueFormat(issue -> false);
        int place = format.columns().all().indexOf("changed_since");
        assertThat(lines.stream().skip(1).map(line -> line.split(",", -1)))
                .extracting(cells -> cells[0] + " " + cells[place])
                .containsExactly("M-1 ", "M-2 yes");
    }

    @Test
    void trialsAreWrittenAsTheirSheet() throws IOException {
        Path file = folder.resolve("trials.csv");
        Trial trial = Samples.trial("T-1", "M-1", "M-1/1", "5.4");
        new CsvSheets().writeTrials(OutputFile.fresh(file), List.of(trial));
        assertThat(new CsvSheets().trials(file).values()).containsExactly(trial);
    }

    @Test
    void aLabBookThatIsOpenHereIsNotReadAsASheet() throws IOException {
        Path file = Files.write(folder.resolve("t.csv"), bytes(CsvText.TRIAL_HEADING, TRIAL));
        Path real = file.toRealPath();
        OpenBooks.opened(real);
        try {
            assertThat(found(new CsvSheets().trials(file))).containsExactly("0:0  csv.lab-book");
        } finally {
            OpenBooks.closed(real);
        }
        assertThat(new CsvSheets().trials(file).rows()).hasSize(1);
    }

    /** As a shell hands over what another program writes: the file is there and can be read, but has no path of its own. */
    @Test
    void aFileThatIsReachedByItsNumberOnlyIsRead() throws IOException {
        Path file = Files.write(folder.resolve("t.csv"), bytes(CsvText.TRIAL_HEADING, TRIAL));
        try (SeekableByteChannel open = Files.newByteChannel(file)) {
            Files.delete(file);
            Path numbered = numbered(file);
            assertThat(open.size()).isPositive();
            assertThatThrownBy(numbered::toRealPath).isInstanceOf(IOException.class);
            assertThat(new CsvSheets().trials(numbered).rows()).hasSize(1);
        }
    }

    /** Returns the place under which Linux keeps an open file whose name is gone. */
    private static Path numbered(Path gone) throws IOException {
        try (Stream<Path> numbers = Files.list(Path.of("/proc/self/fd"))) {
            return numbers.filter(Files::isSymbolicLink)
                    .filter(number -> leadsTo(number, gone))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private static boolean leadsTo(Path number, Path gone) {
        try {
            return Files.readSymbolicLink(number).toString().startsWith(gone.toString());
        } catch (IOException closed) {
            return false;
        }
    }

    @Test
    void aFailureSaysInTheReadersLanguageWhatIsSafe() {
        ExchangeException failure =
                new ExchangeException(ExchangeException.Task.EXPORT, "/the/folder", new IOException("full"));
        assertThat(failure.say(Locale.ENGLISH)).startsWith("The records could not be exported to /the/folder.");
        assertThat(failure.say(Locale.forLanguageTag("es"))).startsWith("No se pudieron exportar las fichas");
    }

    @Test
    void aTypeAMeterOfAnotherHeadingIsNamedByItsColumns() {
        Sheet<?> sheet = CsvText.records(
                "m.csv",
                bytes("meter_id,meter_type,serial,bowl_volume,bowl_volume_unit", "B-1," + MeterType.B + ",,7,L"));
        assertThat(sheet.rows()).isEmpty();
        assertThat(sheet.problems()).extracting(Problem::code).containsOnly("csv.column-missing");
    }

    @Test
    void aCalibrationHasOneRowOfAKindButForItsFillsAndPoints() {
        String heading =
                "calibration_id,meter_id,meter_type,calibrated_on,by,reason,row,empty_mass,plate_mass,full_mass,"
                        + "mass_unit,water_temp_c,buoyancy";
        String fill = "C-1,B-1,B,2026-03-02,,routine,fill,3.45,0.72,11.207,kg,20,";
        assertThat(CsvSheets.one(
                                "c.csv",
                                bytes(heading, fill, "C-1,,,,,,bowl,,,,,,yes", "C-1,,,,,,bowl,,,,,,no"),
                                SheetFormats.CALIBRATIONS)
                        .problems())
                .extracting(Problem::code)
                .contains("csv.row-twice");
        assertThat(Stream.of("", "no")
                        .map(word -> CsvSheets.one(
                                        "c.csv",
                                        bytes(heading, fill, "C-1,,,,,,bowl,,,,,," + word),
                                        SheetFormats.CALIBRATIONS)
                                .values()))
                .allSatisfy(values -> assertThat(values)
                        .singleElement()
                        .satisfies(one -> assertThat(one.bowl().orElseThrow().buoyancyCorrected())
                                .isFalse()));
    }
}
