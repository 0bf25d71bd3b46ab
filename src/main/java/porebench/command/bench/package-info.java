/**
 * Commands on what the bench gives: sample masses, factors, air, bowls, meters, budgets, simulated trials.
 */
@NullMarked
package porebench.command.bench;

import org.jspecify.annotations.NullMarked;
