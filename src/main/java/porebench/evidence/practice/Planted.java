package porebench.evidence.practice;

import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import porebench.method.simulate.Fault;
import porebench.quantity.Require;
import porebench.record.id.TrialId;

/**
 * What was planted in some simulated trials, to be told when the practice is over. It stands in no lab book and no sheet: who
 * practises has to find it.
 *
 * @param trueFactorPercent the factor G that the aggregate really has, in % air
 * @param faults what went wrong; none when nothing did
 * @param trials the trials in which it went wrong, in the order in which they were made; none when nothing did
 */
public record Planted(double trueFactorPercent, Set<Fault> faults, List<TrialId> trials) {
    private static final long FAULTS_APART = 0x5DEECE66DL;

    public Planted {
        faults = Set.copyOf(faults);
        trials = List.copyOf(trials);
    }

    /**
     * Draws in which trials a fault is planted.
     *
     * @param count how many trials there are, at least 1
     * @param faulty in how many of them, from 0 to the count
     * @param seed the seed of the trials
     * @return their numbers, counted from 1
     */
    public static Set<Integer> draw(int count, int faulty, long seed) {
        Require.within("faulty", faulty, 0, count);
        List<Integer> numbers = IntStream.rangeClosed(1, count).boxed().collect(Collectors.toList());
        Random random = new Random(seed ^ FAULTS_APART);
        Set<Integer> drawn = new TreeSet<>();
        while (drawn.size() < faulty) {
            drawn.add(numbers.remove(random.nextInt(numbers.size())));
        }
        return drawn;
    }
}
