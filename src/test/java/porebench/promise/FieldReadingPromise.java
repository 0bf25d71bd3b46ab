package porebench.promise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import porebench.method.FigureName;
import porebench.method.MeterType;
import porebench.method.budget.BudgetResult;
import porebench.method.budget.FactorBudget;
import porebench.method.budget.FieldBudget;
import porebench.method.budget.FieldInputs;
import porebench.method.profile.Profiles;

/** The uncertainty of a reading from the field that the factor on the card was subtracted from. */
final class FieldReadingPromise implements Promise {
    private static final int DRAWS = 2000;
    private static final double SAID = 0.95;
    private static final double DIVISION = 0.1;

    @Override
    public String name() {
        return "A corrected field reading";
    }

    @Override
    public String sentence() {
        return "the air lies within U, 95 %, of the corrected reading";
    }

    @Override
    public int fewRuns() {
        return 40;
    }

    @Override
    public int manyRuns() {
        return 1000;
    }

    @Override
    public List<Cell> simulate(int runs) {
        List<Cell> cells = new ArrayList<>();
        for (double sigma : new double[] {0.02, 0.05, 0.15}) {
            for (int trials : new int[] {2, 3, 10}) {
                for (BudgetBench.Others others : BudgetBench.Others.values()) {
                    cells.add(cell(sigma, trials, others, runs));
                }
            }
        }
        return cells;
    }

    /** Trials and reading on scales divided to 0.1 %, readings from the field with the scatter that the profile states. */
    private static Cell cell(double sigma, int trials, BudgetBench.Others others, int runs) {
        SplittableRandom random = new SplittableRandom(20_261_133L + trials + Math.round(1000 * sigma));
        double scatter = Profiles.standard().number(FigureName.FIELD_SCATTER);
        int hits = 0;
        for (int run = 0; run < runs; run++) {
            BudgetBench bench = BudgetBench.drawn(new Dial(MeterType.B, DIVISION), sigma, trials, others, random);
            double air = 5 + random.nextDouble();
            double reading = tenths(air + bench.factor() + scatter * random.nextGaussian());
            BudgetResult result = BudgetResult.drawn(
                    FieldBudget.of(new FieldInputs(
                            reading,
                            DIVISION,
                            Optional.empty(),
                            scatter,
                            tenths(bench.inputs().factors().mean()),
                            FactorBudget.of(bench.inputs()),
                            0,
                            false,
                            OptionalDouble.of(DIVISION))),
                    DRAWS,
                    run);
            hits += result.lowPercent() <= air && air <= result.highPercent() ? 1 : 0;
        }
        return Cell.counted(
                String.format(
                        Locale.ROOT,
                        "scatter %s, %d trials, others %s",
                        sigma,
                        trials,
                        others.name().toLowerCase(Locale.ROOT)),
                Cell.Way.AT_LEAST,
                SAID,
                hits,
                runs);
    }

    private static double tenths(double value) {
        return Math.rint(10 * value) / 10;
    }
}
