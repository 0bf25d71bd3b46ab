package porebench.evidence;

import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import porebench.method.MeterType;
import porebench.method.Role;
import porebench.record.Determination;
import porebench.record.Kept;
import porebench.record.Laboratory;
import porebench.record.MixDesign;
import porebench.record.Samples;
import porebench.record.Source;
import porebench.record.Trial;
import porebench.record.book.Draft;
import porebench.record.book.MemoryLabBook;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;

/** A small laboratory whose trials are made day by day: two mixes that share a sand, two meters. */
public final class TimeBook {
    public static final LocalDate START = LocalDate.of(2026, 1, 5);

    public final MemoryLabBook book =
            new MemoryLabBook(Clock.fixed(Instant.parse("2026-12-01T09:00:00Z"), ZoneOffset.UTC));
    private final boolean isTraining;
    private int trials;

    public TimeBook() {
        this(false);
    }

    public TimeBook(boolean isTraining) {
        this.isTraining = isTraining;
        keep(
                new Laboratory("Hawmere Gate Materials Laboratory", "", isTraining),
                Samples.source("S-1", Role.FINE, "Ledge 1"),
                Samples.source("S-2", Role.COARSE, "Ledge 1"),
                Samples.source("S-3", Role.COARSE, "Ledge 1"),
                Samples.meter("B-1", MeterType.B),
                Samples.meter("B-2", MeterType.B),
                Samples.mix("M-1", "S-1", "S-2"),
                Samples.mix("M-2", "S-1", "S-3"));
    }

    public void keep(Kept... records) {
        List<Draft> drafts = Arrays.stream(records).map(Draft::of).toList();
        if (!book.keep(drafts, "R. Vale", "for a test").isEmpty()) {
            throw new IllegalStateException("the test's own records must fit together");
        }
    }

    public <T extends Kept> void correct(Class<T> kind, T corrected) {
        Draft draft = Draft.correcting(book.latest(kind, corrected.recordId()).orElseThrow(), corrected);
        if (!book.keep(List.of(draft), "R. Vale", "for a test").isEmpty()) {
            throw new IllegalStateException("the test's own correction must fit");
        }
    }

    /** Begins a determination of a mix with the mix and the sources as they stand now. */
    public void begin(String id, String mix) {
        MixDesign design = book.latest(MixDesign.class, mix).orElseThrow().value();
        Map<SourceId, Integer> versions = new HashMap<>();
        for (SourceId source : design.sources()) {
            versions.put(
                    source,
                    book.latest(Source.class, source.text()).orElseThrow().number());
        }
        keep(new Determination(
                new DeterminationId(id),
                new MixId(mix),
                book.latest(MixDesign.class, mix).orElseThrow().number(),
                versions,
                START,
                "for a test",
                isTraining));
    }

    /** Keeps trials of a determination, one a day, each with the factor given in % air; returns the day after the last. */
    public LocalDate trials(String determination, String mix, LocalDate first, double... factors) {
        LocalDate day = first;
        for (double factor : factors) {
            keep(trial(determination, mix, day, "R. Vale", "B-1", factor));
            day = day.plusDays(1);
        }
        return day;
    }

    public Trial trial(String determination, String mix, LocalDate day, String operator, String meter, double factor) {
        trials++;
        String gauge = BigDecimal.valueOf(Math.round(1000 * (5 + factor)), 3).toString();
        Trial plain = Samples.trial(String.format(Locale.ROOT, "T-%03d", trials), mix, determination, gauge);
        return new Trial(
                plain.id(),
                plain.mixId(),
                plain.determinationId(),
                LocalDateTime.of(day, LocalTime.of(9, 0)),
                operator,
                new MeterId(meter),
                plain.readings(),
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                isTraining);
    }

    public FactorHistory history() {
        return FactorHistory.of(Evidence.ofAll(book));
    }
}
