package porebench.evidence.practice;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import porebench.method.simulate.Bench;
import porebench.method.simulate.Fault;
import porebench.method.simulate.SimulatedTrial;
import porebench.quantity.Require;
import porebench.record.id.MixId;
import porebench.record.id.TrialId;

/**
 * One run of the simulated bench in a training book. What was planted in it is written nowhere: the seed, which stands in the
 * ids of its trials, says it to whoever asks for it afterwards, in every copy, backup and export of the book.
 *
 * <p>The seed is a number of 36 bits: a one, so that a seed somebody chose is not taken for one; 16 bits of lot; 11 bits of
 * what is planted (4 of how many trials there are, 4 of in how many of them it goes wrong, 3 of the fault), mixed with the
 * lot so that equal faults do not look alike; and 8 bits of check. This form must not change: seeds stand in training books.
 *
 * @param lot what chance draws the readings by, from 0 to 65535
 * @param trials how many trials are made, from 1 to 15
 * @param fault what goes wrong; empty when nothing does
 * @param faulty in how many of the trials it goes wrong; 0 exactly when nothing does
 */
public record PracticeRun(int lot, int trials, Optional<Fault> fault, int faulty) {
    /** The most trials of a run. */
    public static final int MOST_TRIALS = 15;

    private static final int LOT_BITS = 16;
    private static final int PLANTED_BITS = 11;
    private static final int CHECK_BITS = 8;
    private static final long MARK = 1L << (LOT_BITS + PLANTED_BITS + CHECK_BITS);
    private static final long MIXING = 0x9E3779B97F4A7C15L;

    /** The order is part of the form of a seed; 0 stands for no fault. */
    private static final List<Fault> FAULTS = List.of(Fault.LEAK, Fault.LINE, Fault.FOAM, Fault.SOAK);

    private static final Pattern TRIAL_ID = Pattern.compile("SIM-(-?\\d{1,18})-\\d+");

    /** The true factors of mixes are from 0.20 to 0.45 % air: dense stone, so that no scatter reaches a limit of the method. */
    private static final int LEAST_HUNDREDTHS = 20;

    private static final int HUNDREDTHS = 26;

    public PracticeRun {
        Require.within("lot", lot, 0, (1 << LOT_BITS) - 1);
        Require.within("trials", trials, 1, MOST_TRIALS);
        Require.within("faulty", faulty, fault.isPresent() ? 1 : 0, fault.isPresent() ? trials : 0);
    }

    /** Returns a run in which chance decides whether something goes wrong, what, and in up to half of the trials. */
    public static PracticeRun byLot(int lot, int trials) {
        Random random = new Random(lot * MIXING);
        int drawn = random.nextInt(FAULTS.size() + 1);
        int faulty = 1 + random.nextInt(Math.max(1, trials / 2));
        return new PracticeRun(lot, trials, fault(drawn), drawn == 0 ? 0 : faulty);
    }

    private static Optional<Fault> fault(int number) {
        return number == 0 ? Optional.empty() : Optional.of(FAULTS.get(number - 1));
    }

    /** Returns the seed of the run's readings, which also says what is planted. */
    public long seed() {
        int number = fault.map(FAULTS::indexOf).orElse(-1) + 1;
        long planted = trials << 7 | faulty << 3 | number;
        long payload = (long) lot << PLANTED_BITS | planted ^ mask(lot);
        return MARK | payload << CHECK_BITS | check(payload);
    }

    private static long mask(int lot) {
        return (lot + 1) * MIXING >>> (Long.SIZE - PLANTED_BITS);
    }

    private static long check(long payload) {
        return (payload + 1) * MIXING >>> (Long.SIZE - CHECK_BITS);
    }

    /** Returns the run that a seed says; empty for a seed that somebody chose, which says nothing. */
    public static Optional<PracticeRun> ofSeed(long seed) {
        if (seed < MARK || seed >= 2 * MARK) {
            return Optional.empty();
        }
        long payload = (seed ^ MARK) >>> CHECK_BITS;
        int lot = (int) (payload >>> PLANTED_BITS);
        int planted = (int) ((payload ^ mask(lot)) & (1 << PLANTED_BITS) - 1);
        int trials = planted >>> 7;
        int faulty = planted >>> 3 & 0xF;
        int number = planted & 0x7;
        boolean isRun = check(payload) == (seed & (1 << CHECK_BITS) - 1)
                && trials >= 1
                && number <= FAULTS.size()
                && (number == 0) == (faulty == 0)
                && faulty <= trials;
        return isRun ? Optional.of(new PracticeRun(lot, trials, fault(number), faulty)) : Optional.empty();
    }

    /** Returns the seed that stands in the id of a simulated trial; empty when the id is not one of the bench's. */
    public static Optional<Long> seedOf(TrialId id) {
        Matcher matcher = TRIAL_ID.matcher(id.text());
        return matcher.matches() ? Optional.of(Long.valueOf(matcher.group(1))) : Optional.empty();
    }

    /** Returns the factor G that the aggregate of a mix really has in practice, in % air: always the same for a mix. */
    public static double trueFactorPercent(MixId mixId) {
        // The hash of a text is part of Java's specification, so it is the same on every machine.
        long mixed = mixId.text().hashCode() * MIXING >>> Integer.SIZE;
        return (LEAST_HUNDREDTHS + mixed % HUNDREDTHS) / 100.0;
    }

    /** Returns what is planted when the run is made of a mix. */
    public Planted planted(MixId mixId) {
        return new Planted(
                trueFactorPercent(mixId),
                fault.map(Set::of).orElse(Set.of()),
                wrong().stream()
                        .map(number -> SimulatedSheet.idOf(seed(), number))
                        .toList());
    }

    private Set<Integer> wrong() {
        return Planted.draw(trials, faulty, seed());
    }

    /** Returns what a bench on which nothing goes wrong by itself does in this run. */
    public List<SimulatedTrial> madeAt(Bench bench) {
        return fault.map(bench::with).orElse(bench).trials(trials, seed(), wrong());
    }
}
