package porebench.manual;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** A page of the manual as a file, with the blocks of it that a test can follow. */
record Page(Path file, String text) {
    static final Path FOLDER = Path.of("docs/manual");

    /** A fenced block: what stands behind its fence, its lines, and the line it begins in. */
    record Block(String info, List<String> lines, int line) {}

    static List<Page> all() {
        try (Stream<Path> files = Files.walk(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".md"))
                    .sorted()
                    .map(Page::read)
                    .toList();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    static Page read(Path file) {
        try {
            return new Page(file, Files.readString(file, StandardCharsets.UTF_8));
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    static Page named(String name) {
        return read(FOLDER.resolve(name + ".md"));
    }

    /** Returns the language of the folder that the page stands in. */
    Locale locale() {
        Path place = FOLDER.relativize(file);
        return place.getNameCount() == 1
                ? Locale.ENGLISH
                : Locale.forLanguageTag(place.getName(0).toString());
    }

    @Override
    public String toString() {
        return FOLDER.relativize(file).toString();
    }

    /** Returns the fenced blocks, and the indented ones whose lines call the program, in the order of the page. */
    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        List<String> lines = text.lines().toList();
        for (int at = 0; at < lines.size(); at++) {
            String line = lines.get(at);
            int start = at;
            List<String> within = new ArrayList<>();
            if (line.startsWith("```")) {
                for (at++; !lines.get(at).startsWith("```"); at++) {
                    within.add(lines.get(at));
                }
                blocks.add(new Block(line.substring(3).strip(), within, start + 1));
            } else if (line.startsWith("    ") && isCommand(line.strip())) {
                for (; at < lines.size() && lines.get(at).startsWith("    "); at++) {
                    within.add(lines.get(at).strip());
                }
                blocks.add(new Block("indented", within, start + 1));
            }
        }
        return blocks;
    }

    static boolean isCommand(String line) {
        return line.startsWith("porebench ") || line.startsWith("java -jar target/porebench.jar ");
    }
}
