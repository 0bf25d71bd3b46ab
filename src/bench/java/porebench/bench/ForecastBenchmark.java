package porebench.bench;

import java.lang.management.ManagementFactory;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import porebench.method.forecast.Bowlful;
import porebench.method.forecast.Forecast;
import porebench.method.forecast.PoreAir;
import porebench.method.forecast.TestedBowls;
import porebench.quantity.Mass;
import porebench.quantity.Volume;

/**
 * What it costs to forecast a mix from 1,000,000 trials of 20,000 mixes with 500 sources: from the trials to the interval, and the
 * normal equations of the same trials formed by a plain loop and solved, which knows no mixes and no determinations.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 2, jvmArgsAppend = "-Xmx1g")
@Warmup(iterations = 1)
@Measurement(iterations = 3)
public class ForecastBenchmark {
    static final int SOURCES = 500;
    static final int MIXES = 20_000;
    static final int DETERMINATIONS = 10;
    static final int TRIALS = 5;

    private static final int SANDS = 150;
    private static final int HELD = 3;
    private static final long SEED = 20_261_128L;
    private static final Volume BOWL = new Volume(0.007);

    /** 0.1 % over the root of 12. */
    private static final double DIAL = 0.0288675;

    private int[] sources = {};
    private double[] kilograms = {};
    private double[] factors = {};

    /** Draws trials of mixes with one sand and two stones each. */
    @Setup
    public void draw() {
        SplittableRandom random = new SplittableRandom(SEED);
        double[] air = random.doubles(SOURCES, 0.5, 5).toArray();
        sources = new int[MIXES * HELD];
        kilograms = new double[MIXES * HELD];
        factors = new double[MIXES * DETERMINATIONS * TRIALS];
        int trial = 0;
        for (int mix = 0; mix < MIXES; mix++) {
            int at = mix * HELD;
            sources[at] = random.nextInt(SANDS);
            sources[at + 1] = SANDS + random.nextInt((SOURCES - SANDS) / 2);
            sources[at + 2] = SANDS + (SOURCES - SANDS) / 2 + random.nextInt((SOURCES - SANDS) / 2);
            kilograms[at] = 3.8 + 1.6 * random.nextDouble();
            kilograms[at + 1] = 3 + 1.5 * random.nextDouble();
            kilograms[at + 2] = 3 + 1.5 * random.nextDouble();
            double ofMix = 0.04 * random.nextGaussian();
            for (int held = 0; held < HELD; held++) {
                ofMix += air[sources[at + held]] * kilograms[at + held] / 70;
            }
            for (int determination = 0; determination < DETERMINATIONS; determination++) {
                double own = ofMix + 0.03 * random.nextGaussian();
                for (int i = 0; i < TRIALS; i++) {
                    factors[trial++] = Math.rint((own + 0.05 * random.nextGaussian()) * 10) / 10;
                }
            }
        }
    }

    @Benchmark
    public Forecast forecast() {
        TestedBowls.Builder tested = new TestedBowls.Builder();
        double[] five = new double[TRIALS];
        for (int mix = 0; mix < MIXES; mix++) {
            Bowlful bowl = bowl(mix);
            for (int determination = 0; determination < DETERMINATIONS; determination++) {
                System.arraycopy(factors, (mix * DETERMINATIONS + determination) * TRIALS, five, 0, TRIALS);
                tested.add("M" + mix, "D" + determination, bowl, five);
            }
        }
        return PoreAir.of(tested.build(), DIAL)
                .value()
                .orElseThrow()
                .forecast(bowl(0), TRIALS)
                .value()
                .orElseThrow();
    }

    private Bowlful bowl(int mix) {
        int at = mix * HELD;
        return new Bowlful(
                Map.of(
                        "S" + sources[at], new Mass(kilograms[at]),
                        "S" + sources[at + 1], new Mass(kilograms[at + 1]),
                        "S" + sources[at + 2], new Mass(kilograms[at + 2])),
                BOWL);
    }

    /** Trial after trial, whole rows of 500 amounts as a plain loop takes them, then elimination. */
    @Benchmark
    public double[] plainNormalEquations() {
        double[][] products = new double[SOURCES][SOURCES + 1];
        double[] row = new double[SOURCES];
        for (int trial = 0; trial < factors.length; trial++) {
            int at = trial / (DETERMINATIONS * TRIALS) * HELD;
            for (int held = 0; held < HELD; held++) {
                row[sources[at + held]] = kilograms[at + held] / 70;
            }
            for (int i = 0; i < SOURCES; i++) {
                if (row[i] != 0) {
                    for (int j = 0; j < SOURCES; j++) {
                        products[i][j] += row[i] * row[j];
                    }
                    products[i][SOURCES] += row[i] * factors[trial];
                }
            }
            for (int held = 0; held < HELD; held++) {
                row[sources[at + held]] = 0;
            }
        }
        return solved(products);
    }

    private static double[] solved(double[][] products) {
        for (int k = 0; k < SOURCES; k++) {
            for (int i = k + 1; i < SOURCES; i++) {
                double part = products[i][k] / products[k][k];
                for (int j = k; j <= SOURCES; j++) {
                    products[i][j] -= part * products[k][j];
                }
            }
        }
        double[] shares = new double[SOURCES];
        for (int k = SOURCES - 1; k >= 0; k--) {
            double sum = products[k][SOURCES];
            for (int j = k + 1; j < SOURCES; j++) {
                sum -= products[k][j] * shares[j];
            }
            shares[k] = sum / products[k][k];
        }
        return shares;
    }

    /** Two runs of each, for a look on a busy machine: milliseconds of the processor that either takes. */
    public static void main(String[] args) {
        ForecastBenchmark once = new ForecastBenchmark();
        once.draw();
        for (int run = 0; run < 2; run++) {
            long start = busy();
            Forecast forecast = once.forecast();
            long middle = busy();
            once.plainNormalEquations();
            long end = busy();
            System.out.println(
                    (middle - start) / 1_000_000 + " ms, plain " + (end - middle) / 1_000_000 + " ms, " + forecast);
        }
    }

    private static long busy() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
