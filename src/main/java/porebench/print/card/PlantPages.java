package porebench.print.card;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.CardSize;
import porebench.evidence.paper.PaperLanguage;
import porebench.evidence.paper.PlantCard;
import porebench.method.Problem;
import porebench.port.OutputRefused;
import porebench.print.page.CardLetters;
import porebench.print.page.Faces;
import porebench.print.page.Words;

/** Spreads the rows of a plant's card over as few pages as take them whole, in every language of the card. */
public final class PlantPages {
    /** More rows than this fit no card. */
    private static final int MOST_ROWS = 20;

    private final PlantCard whole;
    private final Faces faces;
    private final CardSize size;
    private final String program;
    private final List<Words> languages = new ArrayList<>();

    private PlantPages(PlantCard whole, Faces faces, CardLook look, String program) {
        this.whole = whole;
        this.faces = faces;
        this.size = look.size();
        this.program = program;
        for (PaperLanguage language : look.languages()) {
            languages.add(Words.in(language));
        }
    }

    /**
     * Returns the pages of a card.
     *
     * @param whole the card with all its rows
     * @param program name and version of the program, which stands on every page
     * @throws OutputRefused with every mix whose row fits no page, or has a name or conditions that the typeface does not show; at a
     *     size at which no row could be read
     */
    public static List<PlantCard> of(PlantCard whole, Faces faces, CardLook look, String program) throws IOException {
        return new PlantPages(whole, faces, look, program).spread();
    }

    private List<PlantCard> spread() throws IOException {
        if (size == CardSize.WALLET) {
            throw OutputRefused.of(Problem.error("size", "plant.no-wallet", size.symbol(), others()));
        }
        OutputRefused.unlessNone(notShown());
        List<Problem> refused = new ArrayList<>();
        int most = whole.rows().size();
        for (PlantCard.Row row : whole.rows()) {
            if (!fits(whole.alone(row, most))) {
                refused.add(Problem.error(
                        "size", "plant.row-does-not-fit", row.mixId().text(), size.symbol(), others()));
            }
        }
        OutputRefused.unlessNone(refused);
        for (int count = (most + MOST_ROWS - 1) / MOST_ROWS; count <= most; count++) {
            List<PlantCard> pages = whole.on(count);
            if (allFit(pages)) {
                return pages;
            }
        }
        throw OutputRefused.of(Problem.error("size", "plant.does-not-fit", whole.plant(), size.symbol(), others()));
    }

    private boolean allFit(List<PlantCard> pages) throws IOException {
        for (PlantCard page : pages) {
            if (!fits(page)) {
                return false;
            }
        }
        return true;
    }

    private boolean fits(PlantCard page) throws IOException {
        for (Words words : languages) {
            if (!page(page, faces, words, program, size).fits()) {
                return false;
            }
        }
        return true;
    }

    /** Sets a page of a card of a size. */
    static PlantPage page(PlantCard card, Faces faces, Words words, String program, CardSize size) throws IOException {
        double scale = size.enlargement();
        return new PlantPage(
                card,
                faces,
                words,
                program,
                size.widthMillimetres() * CardSheets.POINTS_PER_MILLIMETRE / scale,
                size.heightMillimetres() * CardSheets.POINTS_PER_MILLIMETRE / scale);
    }

    /** Returns the sizes that may be taken instead, as they are named. */
    private String others() {
        return Arrays.stream(CardSize.values())
                .filter(other -> other != CardSize.WALLET)
                .filter(other -> size == CardSize.WALLET || other != size)
                .map(CardSize::symbol)
                .collect(Collectors.joining(", "));
    }

    private List<Problem> notShown() {
        List<Problem> problems = new ArrayList<>();
        for (PlantCard.Row row : whole.rows()) {
            if (row.card().isPresent()) {
                problems.addAll(new CardLetters(row.card().get(), faces).problems());
            } else {
                lacking(row.mixId().text()).ifPresent(problems::add);
            }
        }
        return problems;
    }

    private Optional<Problem> lacking(String mix) {
        List<String> lacking = faces.lacking(mix);
        return lacking.isEmpty()
                ? Optional.empty()
                : Optional.of(Problem.error(
                        "mix",
                        "plant.row-not-shown",
                        mix,
                        lacking.stream()
                                .map(one -> one + " (U+"
                                        + Integer.toHexString(one.codePointAt(0))
                                                .toUpperCase(Locale.ROOT) + ")")
                                .collect(Collectors.joining(", "))));
    }
}
