package porebench.desk;

import java.awt.image.BufferedImage;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import porebench.desk.form.Tasks;
import porebench.evidence.paper.Printed;
import porebench.exchange.CsvSheets;
import porebench.method.Answer;
import porebench.method.MeterType;
import porebench.method.MoistureState;
import porebench.method.Role;
import porebench.method.sample.Batch;
import porebench.method.sample.BatchVolume;
import porebench.method.sample.Constituent;
import porebench.method.trial.Readings;
import porebench.method.trial.Withdrawal;
import porebench.port.BookCopy;
import porebench.port.ChainSource;
import porebench.port.LabBookShelf;
import porebench.port.OutputFile;
import porebench.port.Paper;
import porebench.port.Picture;
import porebench.port.Press;
import porebench.port.Waiting;
import porebench.print.PdfPress;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.Determination;
import porebench.record.FactorIssue;
import porebench.record.Grounds;
import porebench.record.Kept;
import porebench.record.Meter;
import porebench.record.MixDesign;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.MemoryLabBook;
import porebench.record.book.Progress;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/**
 * A lab book with one mix and two meters, and a desk on it, for tests of the bench's pages.
 *
 * <p>Mix K7: 700 kg of sand and 1050 kg of stone, SSD, in 1 m3; target air 6 %; soak 15 min. Both bowls hold 7.000 L, so
 * the sample is 7/1000 of the batch: 4.900 kg of sand and 7.350 kg of stone, and 6 % of the bowl is 420 mL.
 */
public final class BenchBook {
    public static final MixId MIX = new MixId("K7");
    public static final LocalDate TODAY = LocalDate.of(2026, 3, 4);

    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-04T09:30:20Z"), ZoneOffset.UTC);

    public final MemoryLabBook book = new MemoryLabBook(CLOCK);
    public final ScriptedAsker asker = new ScriptedAsker();
    public final DeskModel desk;

    public BenchBook() {
        this(Locale.ENGLISH);
    }

    public BenchBook(Locale locale) {
        this(locale, CLOCK);
    }

    /** Lays out a desk whose clock is another than the one that always shows the same moment. */
    public BenchBook(Locale locale, Clock clock) {
        keep(mix(), meter("B-1", MeterType.B), meter("E-1", MeterType.A));
        desk = new DeskModel(
                new Tools(noShelf(), new CsvSheets(), noPress(), Tasks.direct(), asker, clock, ZoneOffset.UTC, locale),
                book);
        asker.serve(desk);
        desk.setPerson("R. Vane");
    }

    /** Selects the mix, with what was kept until now. */
    public BenchBook select() {
        desk.select(MIX);
        return this;
    }

    public void keep(Kept... records) {
        List<Draft> drafts = new ArrayList<>();
        for (Kept each : records) {
            drafts.add(Draft.of(each));
        }
        if (!book.keep(drafts, "R. Vane", "for a test").isEmpty()) {
            throw new IllegalStateException("the test's own records must fit together");
        }
    }

    private static MixDesign mix() {
        return new MixDesign(
                MIX,
                "Kerb mix 7",
                new Batch(
                        List.of(aggregate("Sand", Role.FINE, "700"), aggregate("Stone", Role.COARSE, "1050")),
                        new BatchVolume.Stated(Typed.of("1", VolumeUnit.CUBIC_METRE)),
                        new BigDecimal("6.0"),
                        false),
                Optional.of(new BigDecimal("15")),
                Optional.empty(),
                "astm-c231",
                "",
                Optional.empty());
    }

    private static Constituent aggregate(String name, Role role, String kilograms) {
        return new Constituent(
                name,
                role,
                Optional.empty(),
                Typed.of(kilograms, MassUnit.KILOGRAM),
                MoistureState.SSD,
                Optional.empty(),
                Optional.empty(),
                Optional.of(new BigDecimal("2.65")),
                BigDecimal.ZERO);
    }

    private static Meter meter(String id, MeterType type) {
        return new Meter(
                new MeterId(id),
                type,
                "",
                Typed.of("7.000", VolumeUnit.LITRE),
                new BigDecimal("0.1"),
                new BigDecimal("10"),
                true,
                "");
    }

    public static Determination determination(int number, LocalDate on) {
        return new Determination(new DeterminationId("K7/" + number), MIX, 1, Map.of(), on, "yearly test");
    }

    /** A faultless Type B trial with 420 mL, that is 6 %, withdrawn: its factor is the gauge less 6. */
    public static Trial trial(String id, int determination, LocalDate day, String gauge) {
        return new Trial(
                new TrialId(id),
                MIX,
                new DeterminationId("K7/" + determination),
                LocalDateTime.of(day, LocalTime.of(9, 0)),
                "M. Sorrel",
                new MeterId("B-1"),
                readings(gauge, false),
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    /** A trial whose meter leaked before the dial was read. */
    public static Trial leaked(String id, int determination, LocalDate day) {
        Trial whole = trial(id, determination, day, "6.4");
        return new Trial(
                whole.id(),
                MIX,
                whole.determinationId(),
                whole.testedAt(),
                whole.operator(),
                whole.meterId(),
                readings("", true),
                "the gasket was worn",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    private static Readings readings(String gauge, boolean leak) {
        return new Readings(
                MeterType.B,
                Typed.of("7.000", VolumeUnit.LITRE),
                Optional.of(Typed.of("4900", MassUnit.GRAM)),
                Optional.of(Typed.of("7350", MassUnit.GRAM)),
                Optional.of(new BigDecimal("15")),
                Optional.of(new BigDecimal("21.5")),
                Optional.of(new Withdrawal(new BigDecimal("420"), Withdrawal.Unit.MILLILITRE)),
                gauge.isEmpty() ? Optional.empty() : Optional.of(new BigDecimal(gauge)),
                Optional.empty(),
                Optional.empty(),
                leak);
    }

    public static FactorIssue issue(int revision, int determination, LocalDate from, String factor) {
        return new FactorIssue(
                MIX,
                revision,
                FactorIssue.Action.ISSUED,
                new BigDecimal(factor),
                new DeterminationId("K7/" + determination),
                MeterType.B,
                from,
                from.plusMonths(12),
                "Q. Ash",
                "",
                "yearly test",
                1,
                Map.of(),
                "astm-c231",
                "",
                "",
                Grounds.NONE);
    }

    private static LabBookShelf noShelf() {
        return new LabBookShelf() {
            @Override
            public LabBook open(Path file) {
                throw new UnsupportedOperationException("these pages open no lab book");
            }

            @Override
            public LabBook rebuild(Path file, ChainSource source) {
                throw new UnsupportedOperationException("these pages begin no lab book");
            }

            @Override
            public LabBook create(Path file) {
                throw new UnsupportedOperationException("these pages begin no lab book");
            }

            @Override
            public Optional<LabBook> create(Path file, Predicate<LabBook> filling) {
                throw new UnsupportedOperationException("these pages begin no lab book");
            }

            @Override
            public Answer<BookCopy> backUp(Path book, Path folder, Progress progress) {
                throw new UnsupportedOperationException("these pages back nothing up");
            }

            @Override
            public Answer<BookCopy> restore(Path backup, Path book, Progress progress) {
                throw new UnsupportedOperationException("these pages restore nothing");
            }

            @Override
            public Answer<Path> setAside(Path book) {
                throw new UnsupportedOperationException("these pages set nothing aside");
            }
        };
    }

    private static Press noPress() {
        return new Press() {
            @Override
            public Waiting ready(Printed what, Paper paper, Locale locale, OutputFile file) {
                throw new UnsupportedOperationException("these pages print nothing");
            }

            @Override
            public List<BufferedImage> preview(Printed what, Paper paper, Locale locale, int dotsPerInch) {
                throw new UnsupportedOperationException("these pages print nothing");
            }

            @Override
            public void draw(Picture picture, Locale locale, OutputFile file) {
                new PdfPress("Porebench", CLOCK, ZoneOffset.UTC).draw(picture, locale, file);
            }

            @Override
            public Optional<Waiting> readyForPrinter(Printed what, Paper paper, Locale locale) {
                throw new UnsupportedOperationException("these pages print nothing");
            }
        };
    }
}
