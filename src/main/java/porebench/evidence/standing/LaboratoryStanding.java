package porebench.evidence.standing;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import porebench.evidence.CountedTrials;
import porebench.evidence.Evidence;
import porebench.evidence.EvidenceReader;
import porebench.evidence.LaboratoryEquipment;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.MixScatter;
import porebench.evidence.Moments;
import porebench.evidence.RegisterRow;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.book.Belonging;
import porebench.record.book.KeptSince;
import porebench.record.book.LabBook;
import porebench.record.book.Progress;
import porebench.record.book.Summaries;
import porebench.record.id.MixId;
import porebench.record.id.SourceId;

/**
 * How all mixes of a laboratory stand, read at one time.
 *
 * <p>What the lab book keeps of a mix counts as long as nothing touched that mix since. A mix that something touched is worked out
 * of its entries, and kept anew where the lab book can be written.
 */
public final class LaboratoryStanding {
    /**
     * The way in which summaries are worked out and written. It is counted up whenever either changes; those of another edition are
     * worked out anew.
     */
    public static final int EDITION = 6;

    /** So few mixes are rather worked out again at the next opening than kept at once: each keeping waits for the disk. */
    private static final int TOO_FEW_TO_KEEP = 50;

    /** Behind so many entries the number up to which summaries hold is moved on even where they touched no mix. */
    private static final int TOO_FAR_BEHIND = 1000;

    private final LabBook book;
    private final long upTo;
    private final EvidenceReader reader;
    private final TreeMap<MixId, ShortStanding> lines;
    private final long keptUpTo;
    private final Map<MixId, MixStanding> worked;
    private final Map<MixId, Evidence> known = new LastAsked<>();
    private final Object reading = new Object();
    private volatile Optional<List<Evidence>> all = Optional.empty();
    private Optional<Map<MixId, List<CountedTrials>>> trials = Optional.empty();
    private Optional<LaboratoryScatter> scatter = Optional.empty();

    /** The last few that were asked for. */
    private static final class LastAsked<K, V> extends LinkedHashMap<K, V> {
        private static final long serialVersionUID = 1;
        private static final int MOST = 30;

        @Override
        protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
            return size() > MOST;
        }
    }

    /**
     * Puts it together.
     *
     * @param upTo the number of the last entry when it was read
     * @param lines the line of every mix
     * @param keptUpTo the number of the entry up to which the lab book's own summaries hold
     * @param worked what was worked out since, which takes their place
     */
    private LaboratoryStanding(
            LabBook book,
            long upTo,
            EvidenceReader reader,
            TreeMap<MixId, ShortStanding> lines,
            long keptUpTo,
            Map<MixId, MixStanding> worked) {
        this.book = book;
        this.upTo = upTo;
        this.reader = reader;
        this.lines = lines;
        this.keptUpTo = keptUpTo;
        this.worked = worked;
    }

    /** Reads how the mixes of a lab book stand; what had to be worked out is kept. */
    public static LaboratoryStanding of(LabBook book) {
        return of(book, Progress.UNHEARD);
    }

    /** Reads how the mixes of a lab book stand, and says how far it is. */
    public static LaboratoryStanding of(LabBook book, Progress progress) {
        return of(book, progress, evidence -> {});
    }

    /**
     * Reads how the mixes of a lab book stand, and says how far it is.
     *
     * @param seen gets everything known about each mix that has to be worked out, one after the other
     */
    static LaboratoryStanding of(LabBook book, Progress progress, Consumer<Evidence> seen) {
        return read(book, book.summaries().upTo(EDITION), progress, seen);
    }

    /** Works out of the entries how all mixes stand, whatever is kept of them, and keeps that where the lab book can be written. */
    public static LaboratoryStanding anew(LabBook book, Progress progress) {
        book.summaries().forget();
        return read(book, 0, progress, evidence -> {});
    }

    private static LaboratoryStanding read(LabBook book, long keptUpTo, Progress progress, Consumer<Evidence> seen) {
        Summaries kept = book.summaries();
        long upTo = book.changeNumber();
        EvidenceReader reader = EvidenceReader.asking(book);
        List<MixId> mixes = book.ids(RecordKind.MIX).stream().map(MixId::new).toList();
        Map<MixId, String> said = keptUpTo == 0 ? Map.of() : kept.registerLines();
        Collection<MixId> touched =
                keptUpTo < upTo ? book.touchedSince(keptUpTo).mixes() : List.of();
        TreeMap<MixId, ShortStanding> lines = new TreeMap<>();
        List<MixId> unknown = new ArrayList<>();
        for (MixId mix : mixes) {
            Optional<ShortStanding> line = touched.contains(mix)
                    ? Optional.empty()
                    : Optional.ofNullable(said.get(mix)).flatMap(LaboratoryStanding::line);
            line.ifPresentOrElse(read -> lines.put(mix, read), () -> unknown.add(mix));
        }
        Map<MixId, MixStanding> worked = new HashMap<>();
        reader.readEach(unknown, progress, evidence -> {
            worked.put(evidence.mix().value().id(), MixStanding.of(evidence));
            seen.accept(evidence);
        });
        worked.forEach((mix, one) -> lines.put(mix, one.inShort()));
        LaboratoryStanding read = new LaboratoryStanding(book, upTo, reader, lines, keptUpTo, worked);
        return worked.isEmpty() && upTo - keptUpTo < TOO_FAR_BEHIND ? read : read.kept();
    }

    /** Returns a line as it was kept; empty where what stands there is none, so that it is worked out. */
    private static Optional<ShortStanding> line(String said) {
        try {
            return Optional.of(ShortStanding.read(said));
        } catch (RuntimeException noLine) {
            return Optional.empty();
        }
    }

    private static Optional<MixStanding> work(LabBook book, EvidenceReader reader, MixId mix) {
        return book.latest(MixDesign.class, mix.text()).map(reader::read).map(MixStanding::of);
    }

    private LaboratoryStanding kept() {
        boolean isKept = book.summaries()
                .renew(
                        EDITION,
                        keptUpTo,
                        upTo,
                        worked.values().stream().map(MixStanding::summary).toList());
        if (!isKept) {
            return this;
        }
        LaboratoryStanding kept = new LaboratoryStanding(book, upTo, reader, lines, upTo, Map.of());
        kept.known.putAll(known);
        kept.all = all;
        kept.trials = trials;
        return kept;
    }

    /** Returns how the mixes stand now: only those that something touched since are worked out. */
    public LaboratoryStanding renewed() {
        return renewed(Progress.UNHEARD);
    }

    /** Returns how the mixes stand now, and says how far it is with those that are worked out. */
    public LaboratoryStanding renewed(Progress progress) {
        long now = book.changeNumber();
        if (now == upTo) {
            return this;
        }
        KeptSince touched = book.touchedSince(upTo);
        EvidenceReader next = reader.after(touched);
        TreeMap<MixId, ShortStanding> nextLines = new TreeMap<>(lines);
        Map<MixId, MixStanding> nextWorked = new HashMap<>(worked);
        LaboratoryStanding renewed = new LaboratoryStanding(book, now, next, nextLines, keptUpTo, nextWorked);
        boolean areFew = touched.mixes().size() <= LastAsked.MOST;
        next.readEach(touched.mixes(), progress, evidence -> {
            MixId mix = evidence.mix().value().id();
            MixStanding one = MixStanding.of(evidence);
            nextLines.put(mix, one.inShort());
            nextWorked.put(mix, one);
            if (areFew) {
                renewed.known.put(mix, evidence);
            }
        });
        if (next.hasBenchOf(reader)) {
            known.forEach((mix, one) -> {
                if (!touched.mixes().contains(mix)) {
                    renewed.known.putIfAbsent(mix, one);
                }
            });
            renewed.all = all.map(before -> renewed.everything(before, touched.mixes()));
        }
        renewed.trials = trials.map(before -> {
            Map<MixId, List<CountedTrials>> nextTrials = new TreeMap<>(before);
            touched.mixes()
                    .forEach(mix -> Optional.ofNullable(nextWorked.get(mix))
                            .ifPresent(one -> nextTrials.put(mix, one.trials())));
            return nextTrials;
        });
        return nextWorked.size() < TOO_FEW_TO_KEEP ? renewed : renewed.kept();
    }

    /** Returns the number of the lab book's last entry when it was read. */
    public long upTo() {
        return upTo;
    }

    /** Returns the line of every mix in the register as it stands on a day, at its end, in the order of their ids. */
    public List<RegisterRow> rows(LocalDate day) {
        return rows(Moments.endOf(day));
    }

    /** Returns the line of every mix in the register as it stands at a moment, in the order of their ids. */
    public List<RegisterRow> rows(LocalDateTime moment) {
        return lines.values().stream().map(line -> line.register().at(moment)).toList();
    }

    /** Returns the first moment after one at which the line of any mix becomes another, though nothing is kept; empty for none. */
    public Optional<LocalDateTime> changesAfter(LocalDateTime moment) {
        return lines.values().stream()
                .flatMap(line -> line.register().changesAfter(moment).stream())
                .min(Comparator.naturalOrder());
    }

    /** Returns how many of the laboratory's mixes had a factor that might be used, over the days of its lab book. */
    public Coverage coverage() {
        return Coverage.of(lines.values().stream().map(ShortStanding::register).toList());
    }

    /**
     * Returns how trials scatter in the laboratory; what asks for the trials of all mixes reads them when it is first asked.
     */
    public synchronized LaboratoryScatter scatter() {
        LaboratoryScatter known = scatter.orElseGet(() -> {
            Map<MixId, MixScatter> mixes = new LinkedHashMap<>();
            lines.forEach((mix, line) -> mixes.put(mix, line.scatter()));
            return LaboratoryScatter.ofMixes(
                    mixes,
                    () -> trials().values().stream().flatMap(List::stream).toList());
        });
        scatter = Optional.of(known);
        return known;
    }

    /** Returns the trials that count of every mix, in the order of their ids; what was kept of them is read once. */
    private synchronized Map<MixId, List<CountedTrials>> trials() {
        if (trials.isEmpty()) {
            Map<MixId, List<CountedTrials>> read = new TreeMap<>();
            readTrials(read::put);
            trials = Optional.of(read);
        }
        return trials.get();
    }

    private void readTrials(BiConsumer<MixId, List<CountedTrials>> taker) {
        Map<MixId, String> said = worked.keySet().containsAll(lines.keySet())
                ? Map.of()
                : book.summaries().trials();
        lines.keySet()
                .forEach(mix -> Optional.ofNullable(worked.get(mix))
                        .map(MixStanding::trials)
                        .or(() -> Optional.ofNullable(said.get(mix)).flatMap(LaboratoryStanding::trials))
                        .or(() -> work(book, reader, mix).map(MixStanding::trials))
                        .ifPresent(counted -> taker.accept(mix, counted)));
    }

    /**
     * Hands out the trials that count of every mix, by determination, the mixes in the order of their ids; what is read for it is not
     * held.
     */
    public void eachCounted(Consumer<CountedTrials> taker) {
        Optional<Map<MixId, List<CountedTrials>>> held;
        synchronized (this) {
            held = trials;
        }
        held.ifPresentOrElse(
                read -> read.values().forEach(counted -> counted.forEach(taker)),
                () -> readTrials((mix, counted) -> counted.forEach(taker)));
    }

    private static Optional<List<CountedTrials>> trials(String said) {
        try {
            return Optional.of(WrittenTrials.read(said));
        } catch (RuntimeException noTrials) {
            return Optional.empty();
        }
    }

    /** Returns everything known about a mix; empty when the lab book has no such mix. */
    public synchronized Optional<Evidence> evidence(MixId mix) {
        if (!known.containsKey(mix)) {
            book.latest(MixDesign.class, mix.text()).map(reader::read).ifPresent(read -> known.put(mix, read));
        }
        return Optional.ofNullable(known.get(mix));
    }

    /** Hands out everything known about some mixes, in their order, one after the other; none of it is held. */
    public void each(Collection<MixId> mixes, Consumer<Evidence> taker) {
        reader.readEach(mixes, taker);
    }

    /** Returns everything known about every mix that has aggregate of a source, in the order of their ids. */
    public List<Evidence> ofSource(SourceId source) {
        return book.latestOf(Belonging.MIXES_OF_SOURCE, source.text()).stream()
                .flatMap(mix -> evidence(mix.value().id()).stream())
                .toList();
    }

    /** Returns everything known about every mix, in the order of their ids; it is read when it is first asked for. */
    public List<Evidence> everything() {
        // It takes a while in a large lab book: whoever asks about one mix meanwhile does not wait for it.
        synchronized (reading) {
            if (all.isEmpty()) {
                all = Optional.of(Evidence.ofAll(book));
            }
            return all.get();
        }
    }

    /** Puts the mixes that something touched in their place among everything known before. */
    private List<Evidence> everything(List<Evidence> before, Set<MixId> touched) {
        TreeMap<MixId, Evidence> now = new TreeMap<>();
        before.forEach(one -> now.put(one.mix().value().id(), one));
        touched.forEach(mix -> evidence(mix).ifPresent(one -> now.put(mix, one)));
        return List.copyOf(now.values());
    }

    /** Returns the laboratory's equipment with what held on earlier days. */
    public LaboratoryEquipment equipment() {
        return reader.equipment();
    }
}
