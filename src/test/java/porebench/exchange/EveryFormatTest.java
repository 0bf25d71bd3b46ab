package porebench.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static porebench.exchange.CsvText.bytes;
import static porebench.exchange.CsvText.found;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import porebench.evidence.intake.Sheet;
import porebench.exchange.sheet.Format;
import porebench.method.Problem;
import porebench.method.profile.Profiles;
import porebench.method.sample.CorrectionSample;
import porebench.method.trial.Expected;
import porebench.method.trial.TrialFactor;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;
import porebench.record.CardPrint;
import porebench.record.Kept;
import porebench.record.LaboratoryProfile;
import porebench.record.MixDesign;
import porebench.record.SampleCards;
import porebench.record.SampleDecisions;
import porebench.record.SampleGroups;
import porebench.record.SamplePhotos;
import porebench.record.SamplePlans;
import porebench.record.SampleProduction;
import porebench.record.SampleProposals;
import porebench.record.SampleReadings;
import porebench.record.SampleStudies;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.MemoryLabBook;
import porebench.record.book.Version;
import porebench.record.id.MixId;

/** The faults that any file can have, in a good file of every format; and that no file at all makes reading fail. */
class EveryFormatTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T08:00:00Z"), ZoneOffset.UTC);
    private static final LocalDate MARCH = LocalDate.of(2026, 3, 2);
    private static final LabBook BOOK = book();

    private static LabBook book() {
        LabBook book = new MemoryLabBook(CLOCK);
        new DemoYear().fill(book);
        assertThat(book.keep(
                        List.of(
                                Draft.of(new CardPrint(new MixId("HG-101"), 1, 1, "A6", "printer")),
                                Draft.of(SampleStudies.operators("O-1")),
                                Draft.of(SampleGroups.group("G-1", "M-2")),
                                new Draft(SampleProposals.full("HG-101", "HG-101/1"), 0, true),
                                Draft.of(SampleDecisions.keep("HG-101/c1", "HG-101")),
                                Draft.of(SampleCards.handedOut("HG-101", 1, "12")),
                                Draft.of(SampleReadings.full("f1", "HG-101", "B-1")),
                                Draft.of(SamplePhotos.photo("T-001/photo-1", "T-001", SamplePhotos.png(99, 1))),
                                Draft.of(SamplePlans.plan(MARCH, SamplePlans.row("HG-101", MARCH))),
                                Draft.of(SampleProduction.volume("p1", "HG-101", MARCH, MARCH, "40")),
                                Draft.of(new LaboratoryProfile(
                                        Profiles.standard().copyAs("own", "Our own figures")))),
                        "A",
                        "B"))
                .isEmpty();
        return book;
    }

    static List<Format<? extends Kept>> formats() {
        return CsvSheets.FORMATS;
    }

    private static <T extends Kept> String text(Format<T> format) {
        StringWriter text = new StringWriter();
        try {
            Export.write(
                    format,
                    BOOK.latest(format.type()).stream().map(Version::value).toList(),
                    text);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }

    private static List<String> codes(Sheet<?> sheet) {
        return sheet.problems().stream().map(Problem::code).distinct().toList();
    }

    @ParameterizedTest
    @MethodSource("formats")
    void namesEachColumnThatIsMissing(Format<? extends Kept> format) {
        for (String column : format.columns().needed()) {
            String renamed = text(format).replaceFirst("(^|,)" + column + "(,|\r)", "$1other$2");
            Sheet<? extends Kept> sheet = CsvSheets.one("f.csv", renamed.getBytes(StandardCharsets.UTF_8), format);
            assertThat(found(sheet)).as(column).contains("1:0 " + column + " csv.column-missing");
            assertThat(sheet.rows()).as(column).isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("formats")
    void readsWithoutTheColumnsThatMayBeAbsent(Format<? extends Kept> format) {
        String heading = String.join(",", format.columns().needed());
        assertThat(CsvSheets.one("f.csv", bytes(heading), format).problems()).isEmpty();
        assertThat(CsvSheets.records("f.csv", bytes(heading)).problems()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("formats")
    void readsAMarkedFileAndNamesBytesThatAreNotUtf8(Format<? extends Kept> format) {
        String text = text(format);
        byte[] marked = ("\uFEFF" + text).getBytes(StandardCharsets.UTF_8);
        assertThat(CsvSheets.one("f.csv", marked, format).problems()).isEmpty();
        int second = text.indexOf("\r\n") + 2;
        byte[] latin = (text.substring(0, second) + "é" + text.substring(second)).getBytes(StandardCharsets.ISO_8859_1);
        Sheet<? extends Kept> sheet = CsvSheets.one("f.csv", latin, format);
        String column = format.columns().needed().get(0);
        assertThat(found(sheet)).contains("2:1 " + column + " csv.not-utf8");
        assertThat(sheet.rows().size())
                .isLessThan(CsvSheets.one("f.csv", marked, format).rows().size());
    }

    @ParameterizedTest
    @MethodSource("formats")
    void namesTheSecondOfTwoRowsThatSayTheSame(Format<? extends Kept> format) {
        String text = text(format);
        String lastRow = text.substring(text.lastIndexOf("\r\n", text.length() - 3) + 2);
        // A reading may well be repeated; what is about a whole calibration, as its first row is, stands once.
        String row = format == SheetFormats.CALIBRATIONS ? text.lines().toList().get(1) + "\r\n" : lastRow;
        Sheet<? extends Kept> sheet = CsvSheets.one("f.csv", (text + row).getBytes(StandardCharsets.UTF_8), format);
        assertThat(codes(sheet))
                .containsAnyOf(
                        "csv.duplicate",
                        "csv.constituent-twice",
                        "csv.row-twice",
                        "plan.mix-twice",
                        "study.repeat-twice");
        long lines = text.chars().filter(c -> c == '\n').count();
        assertThat(found(sheet)).anySatisfy(found -> assertThat(found).startsWith(lines + 1 + ":"));
    }

    @ParameterizedTest
    @MethodSource("formats")
    void passesOverALineOfTenMegabytes(Format<? extends Kept> format) {
        Sheet<? extends Kept> sheet = CsvSheets.one(
                "f.csv", (text(format) + "x".repeat(10_000_000)).getBytes(StandardCharsets.UTF_8), format);
        boolean oneRowEach = format instanceof Format.RowByRow<?>;
        assertThat(codes(sheet))
                .containsOnly("csv.line-too-long", oneRowEach ? "csv.line-too-long" : "csv.left-out-beside");
        int records = BOOK.latest(format.type()).size();
        assertThat(sheet.rows()).hasSize(oneRowEach ? records : records - 1);
    }

    @ParameterizedTest
    @MethodSource("formats")
    void asksForWhatMustBeFilledIn(Format<? extends Kept> format) {
        String blank = "\"\t\"" + ",".repeat(format.columns().all().size() - 1);
        String full = blank.substring(0, blank.length() - 1) + ",x";
        Sheet<? extends Kept> sheet =
                CsvSheets.one("f.csv", bytes(String.join(",", format.columns().all()), full), format);
        assertThat(codes(sheet)).contains("csv.required");
        assertThat(sheet.rows()).isEmpty();
    }

    @Test
    void mutatedFilesGiveRowsAndProblemsAndNeverFail() {
        Random random = new Random(20261125);
        String pieces = "\",;\n\r\t 09.-eE:/éx\u0000\uFFFF";
        for (Format<? extends Kept> format : CsvSheets.FORMATS) {
            byte[] good = text(format).getBytes(StandardCharsets.UTF_8);
            for (int round = 0; round < 150; round++) {
                byte[] bad = good.clone();
                int changes = 1 + random.nextInt(12);
                for (int change = 0; change < changes; change++) {
                    bad[random.nextInt(bad.length)] = random.nextBoolean()
                            ? (byte) random.nextInt(256)
                            : (byte) pieces.charAt(random.nextInt(pieces.length()));
                }
                check(bad);
            }
        }
    }

    @Test
    void randomBytesGiveProblemsAndNeverFail() {
        Random random = new Random(7);
        for (int round = 0; round < 400; round++) {
            byte[] noise = new byte[1 + random.nextInt(3000)];
            random.nextBytes(noise);
            assertThat(check(noise).problems()).isNotEmpty();
            byte[] underHeading = bytes(CsvText.TRIAL_HEADING, new String(noise, StandardCharsets.ISO_8859_1));
            check(underHeading);
        }
    }

    @Test
    void oddNumbersAndTextsInEveryCellNeverFail() {
        List<String> odd = List.of(
                "",
                "-1",
                "1e300",
                "1e-300",
                "-0",
                "9".repeat(39),
                "1E+99",
                "NaN",
                "\"1,5\"",
                "%",
                "a:0;:1",
                "0000-00-00");
        for (Format<? extends Kept> format : CsvSheets.FORMATS) {
            List<String> lines = new ArrayList<>(List.of(text(format).split("\r\n")));
            if (format instanceof Format.RowByRow<?> && lines.size() > 3) {
                lines.subList(1, lines.size() - 2).clear();
            }
            for (int row = Math.max(1, lines.size() - 2); row < lines.size(); row++) {
                String[] cells = lines.get(row).split(",", -1);
                for (int cell = 0; cell < cells.length; cell++) {
                    for (String one : odd) {
                        String[] changed = cells.clone();
                        changed[cell] = one;
                        List<String> bad = new ArrayList<>(lines);
                        bad.set(row, String.join(",", changed));
                        compute(check(bytes(bad.toArray(new String[0]))));
                    }
                }
            }
        }
    }

    /** What passes reading must pass computing, too: with a doubt or a refusal, but without failing. */
    private static void compute(Sheet<Kept> sheet) {
        for (Kept record : sheet.values()) {
            if (record instanceof MixDesign mix) {
                CorrectionSample.of(mix.batch(), Volume.of(7, VolumeUnit.LITRE));
                CorrectionSample.of(mix.batch().withWetSieved(true), Volume.of(7, VolumeUnit.LITRE));
            } else if (record instanceof Trial trial) {
                TrialFactor.of(trial.readings(), Expected.UNKNOWN, Profiles.standard());
            }
        }
    }

    private static Sheet<Kept> check(byte[] bytes) {
        Sheet<Kept> sheet = CsvSheets.records("f.csv", bytes);
        assertThat(CsvText.said(sheet)).doesNotContain("");
        CsvSheets.values("f.csv", bytes);
        CsvSheets.one("f.csv", bytes, SheetFormats.MIX_DESIGNS);
        CsvSheets.one("f.csv", bytes, SheetFormats.TRIALS);
        return sheet;
    }
}
