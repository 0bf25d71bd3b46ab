/** Tests of the lab book on real SQLite files. */
@NullMarked
package porebench.store;

import org.jspecify.annotations.NullMarked;
