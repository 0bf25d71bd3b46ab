package porebench.store.draft;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
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
 * <p>Each program has files of its own, so that two windows on one lab book leave each other's drafts alone. What a program
 * left behind that does not run any more is gone on with by the next one that turns to the lab book; of several drafts of one
 * name that is the newest, and the others wait.
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
    private final Object holding = new Object();
    private Optional<Holder> holder = Optional.empty();
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
        settle();
        String own = ownName();
        sweep(folderOf(book), own);
        SortedMap<String, String> found = new TreeMap<>();
        for (Path file : files(folderOf(book), own)) {
            read(file)
                    .filter(kept -> !found.containsKey(kept.name()))
                    .filter(kept -> isOf(file, own) || isTakenOver(file, own))
                    .ifPresent(kept -> found.put(kept.name(), kept.text().orElseThrow()));
        }
        return found;
    }

    /** Returns by what the drafts of this program are known; blank where that cannot be had, as in a folder only to read. */
    private String ownName() {
        try {
            return holder().name();
        } catch (IOException unwritable) {
            LOG.log(System.Logger.Level.WARNING, "holding the drafts in " + folder, unwritable);
            return "";
        }
    }

    private Holder holder() throws IOException {
        synchronized (holding) {
            if (holder.isEmpty()) {
                holder = Optional.of(Holder.in(folder));
            }
            return holder.get();
        }
    }

    private static Optional<Write> read(Path file) {
        try {
            String whole = Files.readString(file, StandardCharsets.UTF_8);
            int end = whole.indexOf('\n');
            return end < 0
                    ? Optional.empty()
                    : Optional.of(new Write(whole.substring(0, end), Optional.of(whole.substring(end + 1))));
        } catch (IOException unread) {
            LOG.log(System.Logger.Level.WARNING, "reading the draft " + file, unread);
            return Optional.empty();
        }
    }

    /** Takes away what programs that do not run any more were killed while writing: the draft before it is whole. */
    private void sweep(Path drafts, String own) {
        if (!Files.isDirectory(drafts)) {
            return;
        }
        try (Stream<Path> files = Files.list(drafts)) {
            for (Path part : files.filter(file -> file.toString().endsWith(ENDING + UNFINISHED))
                    .toList()) {
                String name = String.valueOf(part.getFileName());
                Path whole = part.resolveSibling(name.substring(0, name.length() - UNFINISHED.length()));
                if (!isOf(whole, own)) {
                    Holder.ifGone(folder, holderOf(whole), () -> Files.deleteIfExists(part));
                }
            }
        } catch (IOException | UncheckedIOException unread) {
            LOG.log(System.Logger.Level.WARNING, "looking through the drafts in " + drafts, unread);
        }
    }

    private static boolean isOf(Path file, String own) {
        return !own.isEmpty() && holderOf(file).equals(own);
    }

    /** Returns by what the drafts of the program are known that wrote a file; blank for one from the time when all wrote the same. */
    private static String holderOf(Path file) {
        String name = String.valueOf(file.getFileName());
        int dot = name.indexOf('.');
        int end = name.length() - ENDING.length();
        return dot < end ? name.substring(dot + 1, end) : "";
    }

    /** Takes a draft over whose program does not run any more; returns whether it did. */
    private boolean isTakenOver(Path file, String own) {
        String name = String.valueOf(file.getFileName());
        Path ours = file.resolveSibling(name.substring(0, name.indexOf('.')) + '.' + own + ENDING);
        try {
            return Holder.ifGone(folder, holderOf(file), () -> {
                if (!own.isEmpty()) {
                    Files.move(file, ours, StandardCopyOption.ATOMIC_MOVE);
                }
            });
        } catch (IOException taken) {
            LOG.log(System.Logger.Level.INFO, "taking over the draft " + file, taken);
            return false;
        }
    }

    /** Returns the files of a folder, those of this program first, then the newest. */
    private static List<Path> files(Path folder, String own) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(ENDING))
                    .sorted(Comparator.comparing((Path file) -> !isOf(file, own))
                            .thenComparing(DraftFiles::age, Comparator.reverseOrder()))
                    .toList();
        } catch (IOException unread) {
            LOG.log(System.Logger.Level.WARNING, "reading the drafts in " + folder, unread);
            return List.of();
        }
    }

    private static FileTime age(Path file) {
        try {
            return Files.getLastModifiedTime(file);
        } catch (IOException gone) {
            return FileTime.fromMillis(0);
        }
    }

    @Override
    public synchronized void keep(String book, String name, Optional<String> text) {
        if (name.indexOf('\n') >= 0) {
            throw new IllegalArgumentException("name must be one line, but is " + name);
        }
        Path file = folderOf(book).resolve(hash(name));
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
                put(file.resolveSibling(file.getFileName() + "." + holder().name() + ENDING), write);
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

    /** Waits until everything is written, and lets go of the drafts: they are left for the next program. */
    @Override
    public void close() {
        settle();
        synchronized (holding) {
            try {
                if (holder.isPresent()) {
                    holder.get().close();
                }
            } catch (IOException unheld) {
                LOG.log(System.Logger.Level.WARNING, "letting go of the drafts in " + folder, unheld);
            }
            holder = Optional.empty();
        }
    }

    private synchronized void settle() {
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
