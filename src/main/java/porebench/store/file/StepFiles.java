package porebench.store.file;

import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The texts of the schema steps, by their numbers, as they lie on the class path. */
public final class StepFiles {
    private static final String ON_CLASS_PATH = "classpath:";

    private StepFiles() {}

    /** Returns the texts of the steps up to a number, in their order. */
    public static Collection<String> upTo(List<String> locations, int number) throws IOException {
        NavigableMap<Integer, String> steps = new TreeMap<>();
        for (String location : locations) {
            read(location.substring(ON_CLASS_PATH.length()), steps);
        }
        return steps.headMap(number, true).values();
    }

    private static void read(String folder, NavigableMap<Integer, String> steps) throws IOException {
        URL place = StepFiles.class.getResource("/" + folder);
        if (place == null) {
            throw new IOException("no schema steps in " + folder);
        }
        try {
            if (!place.getProtocol().equals("jar")) {
                readFolder(Path.of(place.toURI()), steps);
                return;
            }
            String whole = place.toURI().getSchemeSpecificPart();
            Path jar = Path.of(new URL(whole.substring(0, whole.indexOf("!/"))).toURI());
            try (FileSystem inside = FileSystems.newFileSystem(jar)) {
                readFolder(inside.getPath(folder), steps);
            }
        } catch (URISyntaxException impossible) {
            throw new IOException("schema steps in " + place, impossible);
        }
    }

    private static void readFolder(Path folder, NavigableMap<Integer, String> steps) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                String name = file.getFileName().toString();
                steps.put(
                        Integer.parseInt(name.substring(1, name.indexOf("__"))),
                        Files.readString(file, StandardCharsets.UTF_8));
            }
        }
    }
}
