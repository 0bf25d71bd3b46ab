package porebench.desk.bench;

import porebench.record.id.MixId;

/**
 * A trial that has just been kept.
 *
 * @param number the bowl it was made in
 * @param mix its mix
 * @param trial its name
 * @param factor its factor in words
 */
record SavedTrial(int number, MixId mix, String trial, String factor) {}
