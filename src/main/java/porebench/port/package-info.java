/**
 * The interfaces by which {@code desk} and {@code command} reach {@code store}, {@code exchange} and {@code print}.
 *
 * <p>They speak in records, quantities, problems and paths, and alone may hand over a picture.
 */
@NullMarked
package porebench.port;

import org.jspecify.annotations.NullMarked;
