package porebench.method.forecast;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import porebench.statistics.variance.RegressorColumns;

/**
 * What a laboratory's determinations found with which sources in the bowl, as columns.
 *
 * <p>Of each source it knows between which amounts the mixes hold it, and which mixes.
 */
public final class TestedBowls {
    private final List<String> sources;
    private final Map<String, Integer> places;
    private final RegressorColumns columns;
    private final List<Covered> covered;
    private final List<String> mixes;
    private final List<Tested> determinations;

    /**
     * A determination.
     *
     * @param mix the mix
     * @param determination its name
     * @param percent the mean of its trials, in % air
     */
    record Tested(String mix, String determination, double percent) {}

    /**
     * What the mixes cover of one source.
     *
     * @param low its least amount in a mix that has it
     * @param high its greatest
     * @param mixes how many mixes have it
     * @param onlyMix the first of them
     */
    record Covered(double low, double high, int mixes, String onlyMix) {
        private Covered and(double amount, boolean isNewMix) {
            return new Covered(Math.min(low, amount), Math.max(high, amount), isNewMix ? mixes + 1 : mixes, onlyMix);
        }
    }

    private TestedBowls(Builder built) {
        sources = List.copyOf(built.places.keySet().stream()
                .sorted((one, other) -> Integer.compare(built.place(one), built.place(other)))
                .toList());
        places = Map.copyOf(built.places);
        RegressorColumns.Builder groups = new RegressorColumns.Builder(Math.max(1, sources.size()));
        String mix = "";
        boolean isFirst = true;
        for (int i = 0; i < built.tested.size(); i++) {
            if (isFirst || !built.tested.get(i).mix().equals(mix)) {
                groups.outer();
                mix = built.tested.get(i).mix();
                isFirst = false;
            }
            groups.group(built.factors.get(i), built.held.get(i), built.amounts.get(i));
        }
        columns = groups.build();
        covered = List.copyOf(built.covered);
        mixes = List.copyOf(built.mixes);
        determinations = List.copyOf(built.tested);
    }

    /** Gathers determinations, those of one mix after the other. */
    public static final class Builder {
        private final Map<String, Integer> places = new HashMap<>();
        private final List<Covered> covered = new ArrayList<>();
        private final List<Integer> lastMix = new ArrayList<>();
        private final List<String> mixes = new ArrayList<>();
        private final List<Tested> tested = new ArrayList<>();
        private final List<double[]> factors = new ArrayList<>();
        private final List<int[]> held = new ArrayList<>();
        private final List<double[]> amounts = new ArrayList<>();

        /**
         * Adds a determination; those of one mix come one after the other.
         *
         * @param mix the name of the mix
         * @param determination its own name
         * @param bowl what the bowl held, on average of its trials
         * @param factorsPercent the factor of each trial that counts, in % air, at least one
         * @return this
         */
        public Builder add(String mix, String determination, Bowlful bowl, double... factorsPercent) {
            if (mixes.isEmpty() || !mixes.get(mixes.size() - 1).equals(mix)) {
                mixes.add(mix);
            }
            Map<String, Double> ofSources = bowl.amounts();
            int[] found = new int[ofSources.size()];
            double[] amount = new double[found.length];
            int at = 0;
            for (Map.Entry<String, Double> one : ofSources.entrySet()) {
                found[at] = cover(one.getKey(), one.getValue());
                amount[at++] = one.getValue();
            }
            held.add(found);
            amounts.add(amount);
            factors.add(factorsPercent.clone());
            tested.add(new Tested(
                    mix, determination, Arrays.stream(factorsPercent).average().orElseThrow()));
            return this;
        }

        private int place(String source) {
            return places.getOrDefault(source, -1);
        }

        private int cover(String source, double amount) {
            int mix = mixes.size() - 1;
            int place = places.computeIfAbsent(source, any -> places.size());
            if (place == covered.size()) {
                covered.add(new Covered(amount, amount, 1, mixes.get(mix)));
                lastMix.add(mix);
            } else {
                covered.set(place, covered.get(place).and(amount, lastMix.get(place) != mix));
                lastMix.set(place, mix);
            }
            return place;
        }

        /** Returns everything gathered. */
        public TestedBowls build() {
            return new TestedBowls(this);
        }
    }

    /** Returns all sources that were in a bowl. */
    List<String> sources() {
        return sources;
    }

    RegressorColumns columns() {
        return columns;
    }

    /** Returns where a source stands among them; empty when it was in no bowl. */
    Optional<Integer> place(String source) {
        return Optional.ofNullable(places.get(source));
    }

    /** Returns what the mixes cover of the source at a place. */
    Covered covered(int place) {
        return covered.get(place);
    }

    /** Returns the mixes, in the order in which they came. */
    List<String> mixes() {
        return mixes;
    }

    /** Returns the determinations, in the order in which they came. */
    List<Tested> determinations() {
        return determinations;
    }

    /** Returns the amounts of a bowl by place; what was in no bowl is left out. */
    double[] amounts(Bowlful bowl) {
        double[] all = new double[Math.max(1, sources.size())];
        bowl.amounts().forEach((source, amount) -> place(source).ifPresent(place -> all[place] = amount));
        return all;
    }
}
