package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.evidence.intake.Incoming;
import porebench.evidence.intake.Intake;
import porebench.evidence.intake.Sheet;
import porebench.exchange.text.CsvRows;
import porebench.exchange.text.Findings;
import porebench.method.MeterType;
import porebench.method.Problem;
import porebench.method.Role;
import porebench.port.OutputFolder;
import porebench.record.CardPrint;
import porebench.record.EquipmentKind;
import porebench.record.FactorOrigin;
import porebench.record.FactorProposal;
import porebench.record.Grounds;
import porebench.record.Laboratory;
import porebench.record.MeterCalibration;
import porebench.record.SampleCards;
import porebench.record.SampleDecisions;
import porebench.record.SampleEquipment;
import porebench.record.SampleGroups;
import porebench.record.SamplePhotos;
import porebench.record.SamplePlans;
import porebench.record.SampleProduction;
import porebench.record.SampleProposals;
import porebench.record.SampleReadings;
import porebench.record.SampleSources;
import porebench.record.SampleStudies;
import porebench.record.Samples;
import porebench.record.book.LabBook;
import porebench.record.id.CalibrationId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.store.Books;

/** Every file of an exported training book says that it is simulated, and none of it gets into a real book. */
class TrainingExportTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
    private static final Laboratory TRAINING = new Laboratory("Tarn Beck training", "", true);

    @TempDir
    Path folder;

    private LabBook book;

    @BeforeEach
    void begin() {
        book = Books.fresh(folder.resolve("training.porebench"));
        Books.keep(
                book,
                TRAINING,
                Samples.profile(),
                Samples.source("S-1", Role.FINE, "1"),
                Samples.source("S-2", Role.COARSE, "1"),
                SampleEquipment.equipment("BAL-1", EquipmentKind.BALANCE, "0.1", "0.2"),
                Samples.meter("B-1", MeterType.B),
                repaired(),
                Samples.mix("M-1", "S-1", "S-2"),
                Samples.determination("M-1/1", "M-1").simulated(true),
                Samples.determination("M-1/2", "M-1").simulated(true),
                Samples.trial("T-1", "M-1", "M-1/1", "5.4").asSimulated(),
                Samples.issue("M-1", 1, "M-1/1", DAY)
                        .on(new Grounds(java.util.Map.of(), java.util.Map.of(), List.of(), FactorOrigin.HERE, true)),
                new CardPrint(new MixId("M-1"), 1, 1, "A6", "printer"),
                SampleStudies.operators("O-1"),
                SamplePhotos.photo("T-1/photo-1", "T-1", SamplePhotos.png(99, 1)),
                SampleSources.measurement("S-1/m1", "S-1", DAY, "2.65"),
                SampleProduction.days("M-1/p1", "M-1", DAY, DAY, 1),
                SampleGroups.group("G-1", "M-2"),
                SamplePlans.plan(DAY, SamplePlans.row("M-1", DAY)));
        FactorProposal draft = SampleProposals.full("M-1", "M-1/1");
        Books.keep(book, draft.on(draft.grounds().simulated(true)), SampleDecisions.keep("M-1/c1", "M-1"));
        Books.keep(book, SampleCards.handedOut("M-1", 1, "12"));
        Books.keep(book, SampleReadings.plain("f1", "M-1", "5.5"));
    }

    private static MeterCalibration repaired() {
        return new MeterCalibration(
                new CalibrationId("K-1"),
                new MeterId("B-1"),
                MeterType.B,
                DAY,
                "R. Vale",
                MeterCalibration.Reason.REPAIR,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "new gasket");
    }

    @AfterEach
    void end() {
        book.close();
    }

    /** A photo is no table: what says so of it is its row in sheet-photos.csv. What describes the tables is none either. */
    private List<Path> exported(LabBook from, String name) {
        return new CsvSheets()
                .export(from, OutputFolder.fresh(folder.resolve(name))).stream()
                        .filter(file -> file.toString().endsWith(".csv"))
                        .toList();
    }

    private static List<CsvRows.Raw> rows(Path file) throws IOException {
        CsvRows rows = new CsvRows(Files.readAllBytes(file), new Findings("f.csv"));
        List<CsvRows.Raw> all = new ArrayList<>();
        for (Optional<CsvRows.Raw> row = rows.next(); row.isPresent(); row = rows.next()) {
            all.add(row.get());
        }
        return all;
    }

    @Test
    void everyRowOfEveryFileSaysSo() throws IOException {
        List<Path> files = exported(book, "out");
        assertThat(files).hasSize(CsvSheets.FORMATS.size());
        for (Path file : files) {
            List<CsvRows.Raw> rows = rows(file);
            assertThat(rows).as(file.toString()).hasSizeGreaterThan(1);
            List<String> heading = rows.get(0).fields();
            int column = Math.max(heading.indexOf("simulated"), heading.indexOf("training"));
            assertThat(column).as(file.toString()).isNotNegative();
            assertThat(rows.subList(1, rows.size()))
                    .as(file.toString())
                    .allSatisfy(row -> assertThat(row.fields().get(column)).isEqualTo("yes"));
        }
    }

    @Test
    void itComesBackIntoATrainingBookAndIntoNoOther() {
        List<Incoming> incoming = new ArrayList<>();
        List<Problem> problems = new ArrayList<>();
        for (Path file : exported(book, "out")) {
            var sheet = new CsvSheets().records(file);
            incoming.addAll(Sheet.incoming(sheet));
            problems.addAll(sheet.problems());
        }
        // Profile, source, equipment, meter, calibration, mix, card print, study, photo, measurement, production,
        // group, plan, decision, step of a card and field reading do not know it of themselves.
        assertThat(problems).extracting(Problem::code).hasSize(16).containsOnly("csv.simulated");
        Intake.Result again = Intake.check(book, incoming, porebench.record.SampleCalibrations.TODAY);
        assertThat(again.drafts()).isEmpty();
        assertThat(again.problems()).noneMatch(Problem::isError);
        try (LabBook real = Books.fresh(folder.resolve("real.porebench"))) {
            incoming.removeIf(one -> one.value() instanceof Laboratory);
            Books.keep(real, new Laboratory("Tarnwick Materials Laboratory", "4 Kiln Road"));
            Intake.Result refused = Intake.check(real, incoming, porebench.record.SampleCalibrations.TODAY);
            assertThat(refused.drafts()).isEmpty();
            Set<String> codes = new HashSet<>();
            refused.problems().forEach(problem -> codes.add(problem.code()));
            assertThat(codes).contains("import.simulated");
            assertThat(refused.problems().stream().filter(one -> one.code().equals("import.simulated")))
                    .hasSizeGreaterThanOrEqualTo(11);
        }
    }

    private static List<String> heading(Path file) {
        return CsvSheets.FORMATS.stream()
                .filter(format -> file.endsWith(format.fileName()))
                .map(format -> format.columns().all())
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aRealBooksFilesHaveNoColumnForIt() throws IOException {
        try (LabBook real = Books.fresh(folder.resolve("real.porebench"))) {
            Books.keep(real, Samples.laboratory(), Samples.meter("B-1", MeterType.B));
            for (Path file : exported(real, "real")) {
                for (CsvRows.Raw row : rows(file)) {
                    assertThat(row.fields()).as(file.toString()).hasSameSizeAs(heading(file));
                }
            }
        }
    }

    @Test
    void aWholeExportSaysSoWhereItSaysWhatItIs() throws IOException {
        new CsvSheets().exportWhole(book, OutputFolder.fresh(folder.resolve("whole")));
        String outline = Files.readString(folder.resolve("whole").resolve("book.csv"), StandardCharsets.UTF_8);
        assertThat(outline).contains("simulated,yes");
        assertThat(new CsvSheets().readWhole(folder.resolve("whole")).outline().head())
                .isEqualTo(book.head());
    }
}
