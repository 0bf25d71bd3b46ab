package porebench.desk.manual;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.commonmark.renderer.text.LineBreakRendering;
import org.commonmark.renderer.text.TextContentRenderer;

/** Finds pages by words: those in which every word stands, capital letters and accents apart; titles count most. */
public final class ManualSearch {
    private static final int BEFORE = 40;
    private static final int LENGTH = 110;

    private final List<ManualPage> pages;
    private final Map<String, String> texts;

    /**
     * One page that was found.
     *
     * @param words some of the text around the first word, on one line
     */
    public record Found(ManualPage page, String words) {}

    public ManualSearch(Manual manual) {
        TextContentRenderer renderer = TextContentRenderer.builder()
                .extensions(ManualHtml.EXTENSIONS)
                .lineBreakRendering(LineBreakRendering.STRIP)
                .build();
        pages = manual.pages().stream()
                .filter(page -> !page.name().equals(ManualPage.CONTENTS))
                .toList();
        texts = pages.stream()
                .collect(Collectors.toMap(
                        ManualPage::name,
                        page -> renderer.render(ManualHtml.PARSER.parse(page.markdown()))
                                .replaceAll("<[^>]*>", " ")
                                .replaceAll("\\s+", " ")));
    }

    /** Returns the pages in which all words stand; none for no words. */
    public List<Found> find(String words) {
        List<String> wanted = Arrays.stream(MarkdownText.plain(words).strip().split("\\s+"))
                .filter(word -> !word.isEmpty())
                .toList();
        if (wanted.isEmpty()) {
            return List.of();
        }
        Function<ManualPage, Boolean> inTitle = page -> stands(wanted, page.title());
        return pages.stream()
                .filter(page -> stands(wanted, text(page)))
                .sorted((one, other) -> Boolean.compare(inTitle.apply(other), inTitle.apply(one)))
                .map(page -> new Found(page, around(wanted.get(0), text(page))))
                .toList();
    }

    private String text(ManualPage page) {
        return Optional.ofNullable(texts.get(page.name())).orElse("");
    }

    private static boolean stands(List<String> wanted, String text) {
        String plain = MarkdownText.plain(text);
        return wanted.stream().allMatch(plain::contains);
    }

    private static String around(String word, String text) {
        int at = Math.max(0, MarkdownText.plain(text).indexOf(word));
        int from = Math.min(Math.max(0, at - BEFORE), text.length());
        int to = Math.min(text.length(), from + LENGTH);
        return (from > 0 ? "\u2026" : "") + text.substring(from, to).strip() + (to < text.length() ? "\u2026" : "");
    }
}
