package porebench.desk.frame.dialog;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** What is handed out with the workbench, under which licence, and the words of those licences. */
final class Licences {
    private static final String FOLDER = "/porebench/desk/frame/licences/";
    private static final int CELLS = 5;

    /**
     * One line of the list.
     *
     * @param name as its authors write it
     * @param jar the name of its jar, without version
     * @param licence by its SPDX name
     * @param text the file that has the words of the licence
     */
    record Library(String name, String jar, String version, String licence, String text) {}

    private Licences() {}

    static List<Library> libraries() {
        return read("libraries.txt")
                .lines()
                .filter(line -> !line.startsWith("#"))
                .map(Licences::library)
                .toList();
    }

    /** Returns the words of a library's licence, in the language they were written in. */
    static String words(Library library) {
        return read(library.text());
    }

    private static Library library(String line) {
        String[] cells = line.split(" \\| ", -1);
        if (cells.length != CELLS) {
            throw new IllegalStateException("a line of the list of libraries has not five cells: " + line);
        }
        return new Library(cells[0], cells[1], cells[2], cells[3], cells[4]);
    }

    private static String read(String file) {
        try (InputStream in = Licences.class.getResourceAsStream(FOLDER + file)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks " + FOLDER + file);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("could not read " + FOLDER + file, e);
        }
    }
}
