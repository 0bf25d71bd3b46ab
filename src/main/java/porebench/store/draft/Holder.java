package porebench.store.draft;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A program that keeps drafts, known by a file that it holds locked as long as it runs. The machine lets go of the lock when
 * the program ends, in whatever way.
 */
final class Holder implements AutoCloseable {
    private static final String ENDING = ".held";
    private static final String LEAD = "by-";

    /** Opening such a file and closing it again would let go of the lock that another part of this program holds on it. */
    private static final Set<Path> OF_THIS_PROGRAM = ConcurrentHashMap.newKeySet();

    private final Path file;
    private final FileChannel channel;

    private Holder(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /** Begins to hold drafts in a folder, which is made where it is not there. */
    static Holder in(Path folder) throws IOException {
        Path place = folder.toAbsolutePath().normalize();
        Files.createDirectories(place);
        while (true) {
            Path file = Files.createTempFile(place, LEAD, ENDING);
            OF_THIS_PROGRAM.add(file);
            FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
            // Another program that looked before it was locked has taken it for one left behind, and away.
            if (channel.tryLock() != null && Files.exists(file)) {
                takeAwayOthers(place);
                return new Holder(file, channel);
            }
            channel.close();
            OF_THIS_PROGRAM.remove(file);
        }
    }

    /** Takes away the files of programs that were killed: the drafts of one without a file are left behind as well. */
    private static void takeAwayOthers(Path place) throws IOException {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(place, "*" + ENDING)) {
            for (Path other : files) {
                ifGone(place, nameOf(other), () -> {});
            }
        }
    }

    private static String nameOf(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.substring(0, name.length() - ENDING.length());
    }

    /** Returns by what its drafts are known. */
    String name() {
        return nameOf(file);
    }

    /** Something that is done with a file. */
    @FunctionalInterface
    interface Work {
        void run() throws IOException;
    }

    /**
     * Does something with what a program left behind, while no third one does.
     *
     * @param name by what the drafts of the program are known
     * @return whether it was done; nothing is where that program still runs
     */
    static boolean ifGone(Path folder, String name, Work work) throws IOException {
        Path file = folder.toAbsolutePath().normalize().resolve(name + ENDING);
        if (OF_THIS_PROGRAM.contains(file)) {
            return false;
        }
        if (!Files.exists(file)) {
            work.run();
            return true;
        }
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
                FileLock lock = channel.tryLock()) {
            if (lock == null) {
                return false;
            }
            work.run();
        } catch (OverlappingFileLockException held) {
            return false;
        }
        Files.deleteIfExists(file);
        return true;
    }

    /** Lets go: its drafts are left for the next program. */
    @Override
    public void close() throws IOException {
        channel.close();
        Files.deleteIfExists(file);
        OF_THIS_PROGRAM.remove(file);
    }
}
