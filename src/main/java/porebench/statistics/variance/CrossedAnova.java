package porebench.statistics.variance;

import porebench.quantity.Require;

/**
 * The sums of squares of readings by every operator of every sample, each as often.
 *
 * @param operators how many operators, at least 2
 * @param samples how many samples, at least 2
 * @param repeats how often each operator read each sample, at least 2
 * @param operator means of operators about the mean of all
 * @param sample means of samples about the mean of all
 * @param interaction means of cells about what operator and sample make of them
 * @param repeatability readings about the mean of their cell
 */
record CrossedAnova(
        int operators,
        int samples,
        int repeats,
        MeanSquare operator,
        MeanSquare sample,
        MeanSquare interaction,
        MeanSquare repeatability) {

    /** Analyses readings by operator, sample and repeat. */
    static CrossedAnova of(double[][][] readings) {
        int operators = readings.length;
        Require.atLeast("count of operators", operators, 2);
        int samples = readings[0].length;
        Require.atLeast("count of samples", samples, 2);
        int repeats = readings[0][0].length;
        Require.atLeast("count of repeats", repeats, 2);
        double origin = readings[0][0][0];
        double[][] cells = new double[operators][samples];
        double[] ofOperator = new double[operators];
        double[] ofSample = new double[samples];
        double mean = 0;
        double within = 0;
        for (int o = 0; o < operators; o++) {
            requireLength("samples of operator " + o, readings[o].length, samples);
            for (int s = 0; s < samples; s++) {
                requireLength("repeats of operator " + o + " with sample " + s, readings[o][s].length, repeats);
                double cell = mean(readings[o][s], origin);
                cells[o][s] = cell;
                within += squares(readings[o][s], origin + cell);
                ofOperator[o] += cell / samples;
                ofSample[s] += cell / operators;
                mean += cell / operators / samples;
            }
        }
        double together = 0;
        for (int o = 0; o < operators; o++) {
            for (int s = 0; s < samples; s++) {
                double left = cells[o][s] - ofOperator[o] - ofSample[s] + mean;
                together += repeats * left * left;
            }
        }
        return new CrossedAnova(
                operators,
                samples,
                repeats,
                new MeanSquare(operators - 1, samples * repeats * squares(ofOperator, mean)),
                new MeanSquare(samples - 1, operators * repeats * squares(ofSample, mean)),
                new MeanSquare((operators - 1) * (samples - 1), together),
                new MeanSquare(operators * samples * (repeats - 1), within));
    }

    private static void requireLength(String name, int length, int asked) {
        if (length != asked) {
            throw new IllegalArgumentException("count of " + name + " must be " + asked + ", but is " + length);
        }
    }

    private static double mean(double[] values, double origin) {
        double sum = 0;
        for (double value : values) {
            sum += Require.finite("reading", value) - origin;
        }
        return sum / values.length;
    }

    private static double squares(double[] values, double about) {
        double sum = 0;
        for (double value : values) {
            sum += (value - about) * (value - about);
        }
        return sum;
    }

    /** Returns everything together. */
    MeanSquare total() {
        return operator.with(sample).with(interaction).with(repeatability);
    }
}
