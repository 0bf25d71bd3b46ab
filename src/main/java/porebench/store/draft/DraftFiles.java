package porebench.store.draft;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import porebench.port.DraftStore;

/**
 * Drafts in files: a folder for each lab book, a file for each draft, its name in the first line.
 *
 * <p>A file is written under another name and then takes its own, so that a program that is ended at any moment leaves the
 * draft before or the one after. Of several texts for one name that wait to be written only the last one is.
 */
public final class DraftFiles implements DraftStore {
    private static final System.Logger LOG = System.getLogger(DraftFiles.class.getName());
    private static final String ENDING = ".draft";
    private static final String UNFINISHED = ".part";

    private final Path folder;
    private final Map<Path, Write> waiting = new LinkedHashMap<>();
    private volatile Consumer<Exception> told = failure -> {};
    private boolean isWriting;
    private boolean isTold;

    private record Write(String name, Optional<String> text) {}

    /**
     * Makes the store.
     *
     * @param folder holds the drafts of all lab books; made when the first one is kept
     */
    public DraftFiles(Path folder) {
        this.folder = folder;
    }

    @Override
    public SortedMap<String, String> all(String book) {
        close();
        SortedMap<String, String> found = new TreeMap<>();
        for (Path file : files(folderOf(book))) {
            try {
                String whole = Files.readString(file, StandardCharsets.UTF_8);
                int end = whole.indexOf('\n');
                if (end >= 0) {
                    found.put(whole.substring(0, end), whole.substring(end + 1));
                }
            } catch (IOException unread) {
                LOG.log(System.Logger.Level.WARNING, "reading the draft " + file, unread);
            }
        }
        return found;
    }

    private static List<Path> files(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ENDING)).toList();
        } catch (IOException unread) {
            LOG.log(System.Logger.Level.WARNING, "reading the drafts in " + folder, unread);
            return List.of();
        }
    }

    @Override
    public synchronized void keep(String book, String name, Optional<String> text) {
        if (name.indexOf('\n') >= 0) {
            throw new IllegalArgumentException("name must be one line, but is " + name);
        }
        Path file = folderOf(book).resolve(hash(name) + ENDING);
        // Taken out first, so that it comes behind those that wait already.
        waiting.remove(file);
        waiting.put(file, new Write(name, text));
        if (!isWriting) {
            isWriting = true;
            Thread writer = new Thread(this::writeAll, "drafts");
            writer.start();
        }
    }

    private void writeAll() {
        for (Optional<Map.Entry<Path, Write>> next = next(); next.isPresent(); next = next()) {
            Path file = next.get().getKey();
            Write write = next.get().getValue();
            try {
                put(file, write);
                isTold = false;
            } catch (IOException unwritten) {
                LOG.log(System.Logger.Level.WARNING, "writing the draft " + file, unwritten);
                tell(unwritten);
            }
        }
    }

    /** Every key would tell it anew. Writers come one after the other, so that none sees another's half-set mark. */
    private void tell(IOException unwritten) {
        if (!isTold) {
            isTold = true;
            told.accept(unwritten);
        }
    }

    @Override
    public void onFailure(Consumer<Exception> listener) {
        told = listener;
    }

    private synchronized Optional<Map.Entry<Path, Write>> next() {
        Optional<Map.Entry<Path, Write>> first =
                waiting.entrySet().stream().findFirst().map(Map.Entry::copyOf);
        first.ifPresent(one -> waiting.remove(one.getKey()));
        if (first.isEmpty()) {
            isWriting = false;
            notifyAll();
        }
        return first;
    }

    private static void put(Path file, Write write) throws IOException {
        if (write.text().isEmpty()) {
            Files.deleteIfExists(file);
            return;
        }
        Files.createDirectories(file.getParent());
        Path part = file.resolveSibling(file.getFileName() + UNFINISHED);
        Files.writeString(part, write.name() + '\n' + write.text().get(), StandardCharsets.UTF_8);
        Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    @Override
    public synchronized void close() {
        boolean isInterrupted = false;
        while (isWriting) {
            try {
                wait();
            } catch (InterruptedException interrupted) {
                isInterrupted = true;
            }
        }
        if (isInterrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private Path folderOf(String book) {
        return folder.resolve(hash(book));
    }

    private static String hash(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest, 0, 16);
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException(missing);
        }
    }
}
