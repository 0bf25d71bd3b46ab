/**
 * The command line: one class a command, answers as JSON for programs and as aligned text for people.
 *
 * <p>Imports {@code port}, {@code evidence}, {@code record} and below, picocli and jackson-core. Lab books, sheets and paper are reached through the
 * interfaces in {@code port}, made only when a command needs them. The names of JSON fields and the exit statuses are a
 * promise: add, never rename.
 *
 * <p>The commands stand by subject in {@code bench}, {@code book} and {@code study}; what they share in {@code reply}.
 */
@NullMarked
package porebench.command;

import org.jspecify.annotations.NullMarked;
