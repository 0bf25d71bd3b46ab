package porebench.desk.frame.book;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.LongFunction;
import porebench.evidence.MeterStory;
import porebench.evidence.intake.Incoming;
import porebench.evidence.intake.Intake;
import porebench.evidence.practice.PracticeBench;
import porebench.evidence.practice.PracticeRun;
import porebench.evidence.practice.SimulatedSheet;
import porebench.method.Answer;
import porebench.method.Place;
import porebench.method.Problem;
import porebench.method.meter.MeterState;
import porebench.method.simulate.Bench;
import porebench.method.simulate.Fault;
import porebench.record.MixDesign;
import porebench.record.RecordKind;
import porebench.record.Trial;
import porebench.record.book.Belonging;
import porebench.record.book.Draft;
import porebench.record.book.LabBook;
import porebench.record.book.Version;
import porebench.record.id.DeterminationId;
import porebench.record.id.MeterId;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/**
 * Makes simulated trials in a training book, and tells afterwards what was planted in them. Knows no Swing; reads the lab book,
 * so its methods are for beside the event thread.
 *
 * @param book the training book
 * @param now the moment; the trials are made in the hours before it
 */
record PracticeModel(LabBook book, LocalDateTime now) {
    /** A fault nobody chose: chance draws whether there is one, and which. */
    static final int BY_LOT = -1;

    private static final long LOTS = 0xFFFF;

    /**
     * A meter to practise on.
     *
     * @param id the meter
     * @param type the type's letter
     * @param isSound whether a trial on it is free of doubts about the meter
     */
    record PracticeMeter(MeterId id, String type, boolean isSound) {}

    /**
     * What is to be simulated.
     *
     * @param mixId the mix
     * @param meterId the meter
     * @param trials how many trials
     * @param fault what goes wrong; empty for nothing, or for what chance draws
     * @param faulty in how many of the trials; {@link #BY_LOT} for what chance draws
     * @param operator who stands as operator
     * @param remark says what stands beside a trial of a seed
     */
    record Wish(
            MixId mixId,
            MeterId meterId,
            int trials,
            Optional<Fault> fault,
            int faulty,
            String operator,
            LongFunction<String> remark) {}

    /**
     * What one run of the bench was.
     *
     * @param seed the seed in the ids of its trials
     * @param run what the seed says; empty for a seed that somebody chose
     * @param trials its trials in the book, the first one first
     */
    record Told(long seed, Optional<PracticeRun> run, List<Trial> trials) {}

    /** Returns the meters of the book that are in service, the sound ones first. */
    List<PracticeMeter> meters() {
        return MeterStory.ofAll(book).stream()
                .filter(story -> story.meter().value().inService())
                .map(story -> new PracticeMeter(
                        story.meter().value().id(), story.meter().value().type().name(), isSound(story)))
                .sorted(Comparator.comparing(meter -> !meter.isSound()))
                .toList();
    }

    private boolean isSound(MeterStory story) {
        MeterState state = story.stateOn(today());
        return state == MeterState.OK || state == MeterState.DUE;
    }

    private LocalDate today() {
        return now.toLocalDate();
    }

    /** Returns the records of a new run, checked as an import is, or why there are none. */
    Answer<List<Draft>> simulated(Wish wish) {
        Optional<MixDesign> mix =
                book.latest(MixDesign.class, wish.mixId().text()).map(Version::value);
        Optional<MeterStory> story = MeterStory.of(book, wish.meterId(), MeterStory.usualProfile(book));
        if (mix.isEmpty()) {
            return notThere("mix", RecordKind.MIX, wish.mixId().text());
        }
        if (story.isEmpty()) {
            return notThere("meter", RecordKind.METER, wish.meterId().text());
        }
        Answer<Bench> bench =
                PracticeBench.of(mix.get(), story.get(), today(), PracticeRun.trueFactorPercent(wish.mixId()));
        return bench.value().map(there -> drafts(there, wish)).orElseGet(() -> Answer.refused(bench.problems()));
    }

    private static Answer<List<Draft>> notThere(String field, RecordKind kind, String id) {
        return Answer.refused(List.of(Problem.error(field, "book.not-there", kind.word(), id)));
    }

    private Answer<List<Draft>> drafts(Bench bench, Wish wish) {
        PracticeRun run = freeRun(wish);
        long seed = run.seed();
        SimulatedSheet sheet = new SimulatedSheet(
                wish.mixId(),
                determination(wish, seed),
                wish.meterId(),
                now.truncatedTo(ChronoUnit.HOURS).minusHours(wish.trials()),
                PracticeRun.MOST_TRIALS,
                seed,
                wish.operator(),
                wish.remark().apply(seed));
        List<Incoming> incoming = run.madeAt(bench).stream()
                .map(sheet::trial)
                .map(trial -> new Incoming(Place.of(trial.id().text()), trial))
                .toList();
        Intake.Result checked = Intake.check(book, incoming, now.toLocalDate());
        return Problem.anyError(checked.problems())
                ? Answer.refused(checked.problems())
                : Answer.of(checked.drafts(), List.of());
    }

    private static DeterminationId determination(Wish wish, long seed) {
        return new DeterminationId(wish.mixId().text() + "/SIM-" + seed);
    }

    /** Returns a run whose trials are not in the book yet; the moment draws the lot. */
    private PracticeRun freeRun(Wish wish) {
        int lot = (int) (now.toEpochSecond(ZoneOffset.UTC) & LOTS);
        PracticeRun run = run(lot, wish);
        while (book.latest(Trial.class, SimulatedSheet.idOf(run.seed(), 1).text())
                .isPresent()) {
            lot = (int) (lot + 1 & LOTS);
            run = run(lot, wish);
        }
        return run;
    }

    private static PracticeRun run(int lot, Wish wish) {
        return wish.faulty() == BY_LOT
                ? PracticeRun.byLot(lot, wish.trials())
                : new PracticeRun(lot, wish.trials(), wish.fault(), wish.faulty());
    }

    /** Returns the runs that trials of a mix were made in, the newest first. */
    List<Told> planted(MixId mixId) {
        Map<Long, List<Trial>> runs = new TreeMap<>();
        book.latestOf(Belonging.TRIALS_OF_MIX, mixId.text()).stream()
                .map(Version::value)
                .filter(Trial::simulated)
                .sorted(Comparator.comparing(Trial::testedAt).thenComparing(Trial::id))
                .forEach(trial -> PracticeRun.seedOf(trial.id())
                        .ifPresent(seed -> runs.computeIfAbsent(seed, any -> new ArrayList<>())
                                .add(trial)));
        return runs.entrySet().stream()
                .map(run -> new Told(run.getKey(), PracticeRun.ofSeed(run.getKey()), List.copyOf(run.getValue())))
                .sorted(Comparator.comparing((Told told) -> told.trials().get(0).testedAt())
                        .reversed())
                .toList();
    }

    /** Returns the first trial of some records. */
    static Optional<TrialId> firstTrial(List<Draft> drafts) {
        return drafts.stream()
                .map(Draft::value)
                .filter(Trial.class::isInstance)
                .map(value -> ((Trial) value).id())
                .findFirst();
    }
}
