package porebench.promise;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import porebench.evidence.JudgedDetermination;
import porebench.evidence.JudgedTrial;
import porebench.evidence.LaboratoryEquipment;
import porebench.evidence.LaboratoryScatter;
import porebench.evidence.budget.BudgetInputs;
import porebench.method.MeterType;
import porebench.method.Profile;
import porebench.method.budget.BudgetResult;
import porebench.method.budget.FactorBudget;
import porebench.method.profile.Profiles;
import porebench.record.Samples;
import porebench.record.Trial;
import porebench.record.book.Stamp;
import porebench.record.book.Version;

/** The quoted uncertainty in a laboratory where days and operators differ, once its lab book can tell by how much. */
final class OccasionsPromise implements Promise {
    private static final Profile PROFILE = Profiles.standard();
    private static final Stamp STAMP = new Stamp("R. Vale", Instant.EPOCH, "bench");
    private static final int OTHERS = 12;
    private static final int DRAWS = 2000;
    private static final double SAID = 0.95;

    /** Far enough up the dial that water and factor never meet at 0. */
    private static final double GAUGE = 5;

    @Override
    public String name() {
        return "The quoted uncertainty where days differ";
    }

    @Override
    public String sentence() {
        return "G lies within U, 95 %, of the mean, where days and operators differ too";
    }

    @Override
    public int fewRuns() {
        return 10;
    }

    @Override
    public int manyRuns() {
        return 400;
    }

    /** Twelve other determinations of two trials on each of two days, each day another operator. */
    @Override
    public List<Cell> simulate(int runs) {
        List<Cell> cells = new ArrayList<>();
        for (double division : new double[] {0.01, 0.1}) {
            for (double sigma : new double[] {0.05, 0.1}) {
                for (double between : new double[] {0.05, 0.1}) {
                    for (int days : new int[] {1, 2}) {
                        cells.add(cell(new Dial(MeterType.B, division), sigma, between, days, runs));
                    }
                }
            }
        }
        return cells;
    }

    private static Cell cell(Dial dial, double sigma, double between, int days, int runs) {
        SplittableRandom random = new SplittableRandom(20_261_145L + days + Math.round(1000 * (sigma + between)));
        int hits = 0;
        for (int run = 0; run < runs; run++) {
            List<JudgedDetermination> all = new ArrayList<>();
            for (int i = 1; i <= OTHERS; i++) {
                all.add(determination(i, GAUGE + dial.anyFactor(random), dial, sigma, between, 2, 2, random));
            }
            double gauge = GAUGE + dial.anyFactor(random);
            JudgedDetermination own = determination(0, gauge, dial, sigma, between, days, 4 / days, random);
            all.add(own);
            JudgedTrial first = own.trials().get(0);
            double water = first.trial()
                            .value()
                            .readings()
                            .gaugePercent()
                            .orElseThrow()
                            .doubleValue()
                    - first.factorPercent().orElseThrow();
            BudgetResult result = BudgetResult.drawn(
                    FactorBudget.of(BudgetInputs.of(
                                    own,
                                    Map.of(),
                                    dial.division(),
                                    PROFILE,
                                    LaboratoryEquipment.NONE,
                                    LaboratoryScatter.ofDeterminations(all))
                            .orElseThrow()),
                    DRAWS,
                    run);
            double factor = gauge - water;
            hits += result.lowPercent() <= factor && factor <= result.highPercent() ? 1 : 0;
        }
        return Cell.counted(
                String.format(
                        Locale.ROOT,
                        "division %s, scatter %s, days differ by %s, four trials on %s",
                        dial.division(),
                        sigma,
                        between,
                        days == 1 ? "one day" : "two days"),
                Cell.Way.AT_LEAST,
                SAID,
                hits,
                runs);
    }

    private static JudgedDetermination determination(
            int number,
            double gauge,
            Dial dial,
            double sigma,
            double between,
            int days,
            int ofOneDay,
            SplittableRandom random) {
        String id = "M-1/" + number;
        List<JudgedTrial> trials = new ArrayList<>();
        for (int day = 0; day < days; day++) {
            double own = gauge + between * random.nextGaussian();
            for (double read : dial.read(own, sigma, ofOneDay, random)) {
                trials.add(trial(id, day, trials.size(), String.format(Locale.ROOT, "%.2f", read)));
            }
        }
        return JudgedDetermination.of(
                new Version<>(Samples.determination(id, "M-1"), 1, STAMP), trials, dial.division(), PROFILE);
    }

    private static JudgedTrial trial(String determination, int day, int number, String gauge) {
        Trial plain = Samples.trial(determination + "/" + number, "M-1", determination, gauge);
        Trial moved = new Trial(
                plain.id(),
                plain.mixId(),
                plain.determinationId(),
                plain.testedAt().plusDays(day),
                Stream.of("R. Vale", "T. Ash").skip(day % 2).findFirst().orElseThrow(),
                plain.meterId(),
                plain.readings(),
                "",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);
        return JudgedTrial.of(new Version<>(moved, 1, STAMP), Optional.empty(), Optional.empty(), PROFILE);
    }
}
