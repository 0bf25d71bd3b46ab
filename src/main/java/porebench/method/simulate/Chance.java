package porebench.method.simulate;

import java.util.Random;

/**
 * Everything that chance decides in one trial.
 *
 * <p>Every trial draws the same numbers in the same order, so that a fault changes nothing but itself.
 *
 * @param sample scatter of the sample, standard normal
 * @param hand scatter of the reading, standard normal
 * @param rest scatter of the second reading of a Type A meter, standard normal
 * @param water scatter of the withdrawn water, standard normal
 * @param warmth scatter of the water's temperature, standard normal
 * @param fine scatter of the fine aggregate's mass, standard normal
 * @param coarse scatter of the coarse aggregate's mass, standard normal
 * @param leak how bad a leak would be, from 0 to 1
 * @param foam how much foam would be left, from 0 to 1
 * @param haste how short a short soak would be, from 0 to 1
 */
record Chance(
        double sample,
        double hand,
        double rest,
        double water,
        double warmth,
        double fine,
        double coarse,
        double leak,
        double foam,
        double haste) {
    static Chance draw(Random random) {
        return new Chance(
                random.nextGaussian(),
                random.nextGaussian(),
                random.nextGaussian(),
                random.nextGaussian(),
                random.nextGaussian(),
                random.nextGaussian(),
                random.nextGaussian(),
                random.nextDouble(),
                random.nextDouble(),
                random.nextDouble());
    }
}
