package porebench.command.book;

import java.nio.file.Path;
import porebench.command.reply.JsonFields;
import porebench.command.reply.Report;
import porebench.command.reply.TextPage;
import porebench.method.Texts;
import porebench.port.BookCopy;

/** Says where a backup or a restored lab book is and how far it reaches. */
final class BookCopyReport implements Report {
    private final BookCopy copy;
    private final String done;
    private final Texts words;

    /**
     * Makes a report.
     *
     * @param done the key of the sentence that says what was done
     */
    BookCopyReport(BookCopy copy, String done, Texts words) {
        this.copy = copy;
        this.done = done;
        this.words = words;
    }

    @Override
    public void json(JsonFields json) {
        json.text("path", copy.file().toString());
        json.whole("entries", copy.head().entries());
        json.text("head", copy.head().shortHash());
        json.text("movedAside", copy.movedAside().map(Path::toString));
    }

    @Override
    public void text(TextPage page) {
        page.line(words.get(
                done,
                copy.file().toString(),
                Long.toString(copy.head().entries()),
                copy.head().printed()));
        copy.movedAside().ifPresent(aside -> page.line(words.get("restore.aside", aside.toString())));
    }
}
