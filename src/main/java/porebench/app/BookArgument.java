package porebench.app;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;

/** The lab book that a start of the window is given: {@code my.porebench}, {@code --book my.porebench}. */
final class BookArgument {
    private static final String OPTION = "--book";

    private BookArgument() {}

    /**
     * Returns the file that the arguments name as a lab book to open; empty when they are a command.
     *
     * <p>No command has a dot or a separator of folders in its name, so a single word with one is a file. A file without
     * either is named with {@code --book}.
     *
     * @param folder the folder that relative paths start from
     */
    static Optional<Path> of(String[] arguments, Path folder) {
        if (arguments.length == 1 && arguments[0].startsWith(OPTION + "=")) {
            return file(arguments[0].substring(OPTION.length() + 1), folder);
        }
        if (arguments.length == 2 && arguments[0].equals(OPTION)) {
            return file(arguments[1], folder);
        }
        boolean isFile = arguments.length == 1 && !arguments[0].startsWith("-") && arguments[0].matches(".*[./\\\\].*");
        return isFile ? file(arguments[0], folder) : Optional.empty();
    }

    private static Optional<Path> file(String name, Path folder) {
        try {
            return name.isBlank()
                    ? Optional.empty()
                    : Optional.of(folder.resolve(name).normalize());
        } catch (InvalidPathException unusable) {
            // Left to the command line, which says what it does not understand.
            return Optional.empty();
        }
    }
}
