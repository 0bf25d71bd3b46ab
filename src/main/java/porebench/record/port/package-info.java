/**
 * The doors through which windows and commands reach the outer rooms: lab book files, CSV sheets, paper.
 *
 * <p>Implemented by {@code store}, {@code exchange} and {@code print}; used by {@code desk} and {@code command}; wired in
 * {@code app}.
 */
@NullMarked
package porebench.record.port;

import org.jspecify.annotations.NullMarked;
