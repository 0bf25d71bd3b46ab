/** What a person typed and did not save yet, in small files of their own beside no lab book. */
@NullMarked
package porebench.store.draft;

import org.jspecify.annotations.NullMarked;
