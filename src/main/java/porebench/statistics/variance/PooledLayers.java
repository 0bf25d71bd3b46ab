package porebench.statistics.variance;

/**
 * Which of the variances between outer groups, between groups and between values the data tell apart: where one does not, the one
 * further in holds it too, or where values never differ within a group, there is none.
 *
 * @param places where the variance of each layer stands among those that are told; below 0 where it is not told
 * @param told how many are told
 */
record PooledLayers(int[] places, int told) {
    static final int OUTER = 0;
    static final int GROUP = 1;
    static final int VALUE = 2;
    private static final int LAYERS = 3;

    /** Squares so small beside all of them are rounding. */
    private static final double ROUNDING = 1e-20;

    /** All of them, told or given. */
    static final PooledLayers ALL = new PooledLayers(new int[] {OUTER, GROUP, VALUE}, LAYERS);

    /** Finds out what some groups tell. */
    static PooledLayers of(RegressorColumns columns) {
        double within = 0;
        double size = 0;
        for (int group = 0; group < columns.groups; group++) {
            within += columns.squares[group];
            size += columns.counts[group] * columns.means[group] * columns.means[group];
        }
        boolean[] isTold = {columns.groups > columns.outerGroups, true, within > ROUNDING * size};
        int[] places = new int[LAYERS];
        int told = 0;
        for (int layer = 0; layer < LAYERS; layer++) {
            places[layer] = isTold[layer] ? told++ : -1;
        }
        return new PooledLayers(places, told);
    }

    boolean isTold(int layer) {
        return places[layer] >= 0;
    }

    /** Returns the variance of a layer with its derivatives: one of the variables, or 0. */
    Jet variance(int layer, double... variances) {
        return isTold(layer)
                ? Jet.variable(variances[places[layer]], places[layer], told)
                : Jet.constant(0, variances.length);
    }

    /** Returns the variances of the layers that are told. */
    double[] start(double... ofLayers) {
        double[] start = new double[told];
        for (int layer = 0; layer < LAYERS; layer++) {
            if (isTold(layer)) {
                start[places[layer]] = ofLayers[layer];
            }
        }
        return start;
    }

    /** Returns variances under the names of their layers. */
    PooledVariances named(double... variances) {
        return new PooledVariances(value(OUTER, variances), value(GROUP, variances), value(VALUE, variances));
    }

    private double value(int layer, double... variances) {
        return isTold(layer) ? variances[places[layer]] : 0;
    }
}
