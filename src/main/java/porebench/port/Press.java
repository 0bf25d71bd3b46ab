package porebench.port;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.PhonePage;
import porebench.evidence.paper.PlantCard;
import porebench.evidence.paper.Printed;
import porebench.method.Answer;
import porebench.record.book.Progress;

/**
 * Puts cards and sheets on paper: cards on paper that is one ({@link Paper#card}), sheets on {@link Paper#A4} and
 * {@link Paper#LETTER}.
 *
 * <p>Other paper is an {@code IllegalArgumentException}, and so is the card of a withdrawal. A failure of the file or the
 * printer is an unchecked exception that says which.
 */
public interface Press {
    /**
     * Writes a PDF file whole beside its place, where it waits.
     *
     * @throws OutputRefused if nothing may be written there
     */
    Waiting ready(Printed what, Paper paper, Locale locale, OutputFile file);

    /**
     * Writes one PDF file of many cards whole beside its place, where it waits.
     *
     * @param cards at least one
     * @param look how they look
     * @param progress hears of every card, and may end it; nothing is left then
     * @throws OutputRefused if nothing may be written there, or what a person works by does not fit the size of the card
     */
    default Waiting ready(List<FactorCard> cards, CardLook look, OutputFile file, Progress progress) {
        throw new UnsupportedOperationException("this press prints no cards");
    }

    /**
     * Spreads the mixes on a plant's card over as few pages as take them.
     *
     * @param whole the card with all its rows
     * @throws OutputRefused if a row fits no page of this size, or its typeface lacks what a crew works by
     */
    default List<PlantCard> pages(PlantCard whole, CardLook look) {
        throw new UnsupportedOperationException("this press prints no cards");
    }

    /**
     * Writes one PDF file of the pages of a plant's card whole beside its place, where it waits.
     *
     * @param pages the pages as {@link #pages} gives them
     * @throws OutputRefused if nothing may be written there
     */
    default Waiting readyPlant(List<PlantCard> pages, CardLook look, OutputFile file, Progress progress) {
        throw new UnsupportedOperationException("this press prints no cards");
    }

    /**
     * Asks for a printer in the system's dialog and makes everything ready for it.
     *
     * @return what waits for the printer; empty when the person thought better of it
     */
    Optional<Waiting> readyForPrinter(Printed what, Paper paper, Locale locale);

    /** As {@link #readyForPrinter(Printed, Paper, Locale)}, a card with a look of its own. */
    default Optional<Waiting> readyForPrinter(FactorCard card, CardLook look) {
        throw new UnsupportedOperationException("this press prints no cards");
    }

    /** As {@link #preview(Printed, Paper, Locale, int)}, a card with a look of its own: its front, and its back where it has one. */
    default List<BufferedImage> preview(FactorCard card, CardLook look, int dotsPerInch) {
        throw new UnsupportedOperationException("this press prints no cards");
    }

    /**
     * Writes a PDF file, whole or not at all.
     *
     * @throws OutputRefused if nothing may be written there
     */
    default void write(Printed what, Paper paper, Locale locale, OutputFile file) {
        try (Waiting waiting = ready(what, paper, locale, file)) {
            waiting.release();
        }
    }

    /**
     * Draws the pages exactly as they will print.
     *
     * @param dotsPerInch the fineness of the pictures, from 20 to 600
     */
    List<BufferedImage> preview(Printed what, Paper paper, Locale locale, int dotsPerInch);

    /**
     * Asks for a printer in the system's dialog and prints.
     *
     * @param progress hears of every page, and may end it
     * @return whether it was printed; false when the person thought better of it, in the dialog or later
     */
    default boolean print(Printed what, Paper paper, Locale locale, Progress progress) {
        Optional<Waiting> ready = readyForPrinter(what, paper, locale);
        if (ready.isEmpty()) {
            return false;
        }
        try (Waiting waiting = ready.get()) {
            waiting.release(progress);
            return true;
        } catch (CancellationException ended) {
            return false;
        }
    }

    /**
     * Writes a page for a phone whole beside its place, where it waits.
     *
     * @param locale the language in which it is first shown
     * @throws OutputRefused if nothing may be written there
     */
    default Waiting readyPhone(PhonePage page, Locale locale, OutputFile file) {
        throw new UnsupportedOperationException("this press writes no pages for phones");
    }

    /**
     * Reads the texts of the codes of squares in a photo or picture, each once.
     *
     * @return refused when the file cannot be read, is no picture, or shows no code
     */
    default Answer<List<String>> codes(Path picture) {
        throw new UnsupportedOperationException("this press reads no pictures");
    }

    /**
     * Draws a picture into a PNG, SVG or PDF file, by the ending of its name, whole or not at all.
     *
     * <p>The same picture gives the same bytes: no day and no machine stands in it.
     *
     * @throws IllegalArgumentException if the name ends otherwise
     * @throws OutputRefused if nothing may be written there
     */
    void draw(Picture picture, Locale locale, OutputFile file);
}
