/**
 * The lab book: versions of records and how they are looked up, the drafts that are to be kept, and what has to hold of them.
 */
@NullMarked
package porebench.record.book;

import org.jspecify.annotations.NullMarked;
