/**
 * The photos of a trial's signed sheet on its page: small beside its story, large in a dialog, added, withdrawn and written out.
 *
 * <p>Imports {@code desk}, {@code desk.form}, {@code desk.frame.dialog} and what lies below. {@code desk.trial} may import it.
 */
@NullMarked
package porebench.desk.photo;

import org.jspecify.annotations.NullMarked;
