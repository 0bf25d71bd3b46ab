package porebench.command.reply;

import porebench.method.Texts;

/**
 * What another report says, marked as simulated: it comes from a training book.
 *
 * @param marked the other report
 * @param words the language
 */
public record TrainingReport(Report marked, Texts words) implements Report {
    @Override
    public void json(JsonFields json) {
        json.flag("simulated", true);
        marked.json(json);
    }

    @Override
    public void text(TextPage page) {
        page.line(words.get("simulate.mark"));
        marked.text(page);
    }
}
