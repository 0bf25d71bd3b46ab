package porebench.port;

import java.nio.file.Path;
import java.util.Optional;
import porebench.record.chain.Head;

/**
 * A lab book that was backed up or restored.
 *
 * @param file the new file: the backup, or the lab book that was restored
 * @param head how far the lab book in it reaches
 * @param movedAside where the lab book that stood in the place before a restoration is now; empty when there was none, and for
 *     a backup
 */
public record BookCopy(Path file, Head head, Optional<Path> movedAside) {}
