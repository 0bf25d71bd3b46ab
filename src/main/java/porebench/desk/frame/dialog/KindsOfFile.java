package porebench.desk.frame.dialog;

import java.nio.file.Path;
import java.util.List;
import javax.swing.JFileChooser;
import javax.swing.filechooser.FileNameExtensionFilter;
import porebench.desk.Asker;
import porebench.method.Texts;

/** The kinds of file that a dialog offers; a name whose ending is none of theirs gets that of the kind chosen. */
final class KindsOfFile {
    private final List<Asker.Kind> kinds;
    private final List<FileNameExtensionFilter> filters;

    KindsOfFile(List<Asker.Kind> kinds, Texts texts) {
        this.kinds = List.copyOf(kinds);
        this.filters = kinds.stream()
                .map(kind ->
                        new FileNameExtensionFilter(texts.get("ask.kind", kind.words(), kind.ending()), kind.ending()))
                .toList();
    }

    /** Says in a dialog what kind of file is meant, by the ending of a name; any other may be chosen all the same. */
    static void name(JFileChooser chooser, String suggestedName, Texts texts) {
        String ending = Asker.Kind.endingOf(Path.of(suggestedName));
        String key = "ask.kind." + ending;
        if (!ending.isEmpty()) {
            String words = texts.keys().contains(key)
                    ? texts.get("ask.kind", texts.get(key), ending)
                    : texts.get("ask.files", "." + ending);
            chooser.setFileFilter(new FileNameExtensionFilter(words, ending));
        }
    }

    /** Offers the kinds in a dialog, the first one first. */
    void offer(JFileChooser chooser) {
        chooser.setAcceptAllFileFilterUsed(false);
        filters.forEach(chooser::addChoosableFileFilter);
        chooser.setFileFilter(filters.get(0));
    }

    /** Returns the file that was named, with the ending of a kind. */
    Path nameOf(JFileChooser chooser) {
        int chosen = Math.max(0, filters.indexOf(chooser.getFileFilter()));
        return named(chooser.getSelectedFile().toPath(), kinds.get(chosen));
    }

    /**
     * Returns a file with the ending of a kind.
     *
     * <p>Who chose another kind than the one first offered, and left the offered name as it was, means the kind chosen.
     */
    Path named(Path file, Asker.Kind chosen) {
        String ending = Asker.Kind.endingOf(file);
        String name = String.valueOf(file.getFileName());
        boolean isKnown = kinds.stream().anyMatch(kind -> kind.ending().equals(ending));
        if (isKnown && (ending.equals(chosen.ending()) || chosen.equals(kinds.get(0)))) {
            return file;
        }
        String stem = isKnown ? name.substring(0, name.length() - ending.length() - 1) : name;
        return file.resolveSibling(stem + "." + chosen.ending());
    }
}
