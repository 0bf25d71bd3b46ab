package porebench.desk.register;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import porebench.evidence.RegisterRow;
import porebench.evidence.custody.CardChoice;
import porebench.evidence.paper.CardLook;
import porebench.evidence.paper.CardSize;
import porebench.evidence.paper.PaperLanguage;
import porebench.method.Texts;
import porebench.port.CardBatch;
import porebench.port.CardHandout;
import porebench.quantity.Symbolic;
import porebench.record.id.MixId;

/** Which cards are to be made in one go, and how they look; knows no Swing. */
final class CardsModel {
    private final Texts texts;
    private final List<RegisterRow> all;
    private final List<RegisterRow> onView;
    private Which which = Which.VIEW;
    private String plant;
    private boolean leaveOut;
    private boolean onOne;
    private CardSize size = CardSize.A6;
    private PaperLanguage first;
    private Optional<PaperLanguage> second = Optional.empty();
    private Optional<CardLook.Sheet> sheet = Optional.empty();
    private int perSheet = CardLook.ALL;
    private boolean chart;

    /** Of which mixes. */
    enum Which implements Symbolic {
        VIEW,
        IN_FORCE,
        RECALL,
        PLANT
    }

    /**
     * Begins with the mixes on view, on A6, in the language of the window.
     *
     * @param all the lines of the register
     * @param onView the lines on view, in their order
     */
    CardsModel(Texts texts, List<RegisterRow> all, List<RegisterRow> onView) {
        this.texts = texts;
        this.all = List.copyOf(all);
        this.onView = List.copyOf(onView);
        this.first = PaperLanguage.of(texts.locale());
        this.plant = plants().stream().findFirst().orElse("");
    }

    Texts texts() {
        return texts;
    }

    /** Returns what there is to choose from: a plant only where a mix names one. */
    List<Which> whichOnes() {
        return Arrays.stream(Which.values())
                .filter(one -> one != Which.PLANT || !plants().isEmpty())
                .toList();
    }

    /** Returns the plants that mixes name, each once, in the order of the alphabet. */
    List<String> plants() {
        return all.stream()
                .map(row -> row.plant().strip())
                .filter(name -> !name.isEmpty())
                .distinct()
                .sorted()
                .toList();
    }

    /** Returns the second languages that a card may have beside the first, none before them. */
    List<Optional<PaperLanguage>> seconds() {
        List<Optional<PaperLanguage>> offered = new ArrayList<>(List.of(Optional.<PaperLanguage>empty()));
        Arrays.stream(PaperLanguage.values())
                .filter(language -> language != first)
                .map(Optional::of)
                .forEach(offered::add);
        return offered;
    }

    Which which() {
        return which;
    }

    void take(Which mixes) {
        which = mixes;
    }

    void takePlant(String name) {
        plant = name;
    }

    void leaveOut(boolean others) {
        leaveOut = others;
    }

    /** Takes whether the mixes of a plant stand on one card. */
    void onOne(boolean card) {
        onOne = card;
    }

    /** Returns whether the mixes of a plant stand on one card: of other mixes each has its own. */
    boolean isOnOne() {
        return onOne && which == Which.PLANT;
    }

    void take(CardSize cards) {
        size = cards;
    }

    /** Takes the first language; a second one that is the same is none. */
    void take(PaperLanguage language) {
        first = language;
        second = second.filter(other -> other != language);
    }

    PaperLanguage first() {
        return first;
    }

    void takeSecond(Optional<PaperLanguage> language) {
        second = language.filter(other -> other != first);
    }

    Optional<PaperLanguage> second() {
        return second;
    }

    void takeSheet(Optional<CardLook.Sheet> paper) {
        sheet = paper;
    }

    boolean isOnSheets() {
        return sheet.isPresent();
    }

    /** Takes how many cards a sheet has at most. */
    void takePerSheet(int most) {
        perSheet = most;
    }

    /** Takes whether each card has a chart on its back. */
    void chart(boolean wanted) {
        chart = wanted;
    }

    /** Returns how many of the mixes may have a card now, in words; of a recall that is known only once it is asked for. */
    String said() {
        if (which == Which.RECALL) {
            return texts.get("cards.recalled");
        }
        List<RegisterRow> rows = switch (which) {
            case VIEW -> onView;
            case PLANT ->
                all.stream()
                        .filter(row -> row.plant().strip().equalsIgnoreCase(plant))
                        .toList();
            default -> usable(all);
        };
        int may = usable(rows).size();
        if (isOnOne()) {
            return onOneSaid(may, rows.size());
        }
        return may == rows.size()
                ? texts.get("cards.all", Integer.toString(may))
                : texts.get(
                        leaveOut ? "cards.some" : "cards.stopped",
                        Integer.toString(may),
                        Integer.toString(rows.size()));
    }

    private String onOneSaid(int may, int all) {
        if (may == all) {
            return texts.get("cards.plant-all", Integer.toString(all));
        }
        return leaveOut
                ? texts.get("cards.plant-some", Integer.toString(all), Integer.toString(may))
                : texts.get("cards.plant-stopped", Integer.toString(may), Integer.toString(all));
    }

    private static List<RegisterRow> usable(List<RegisterRow> rows) {
        return rows.stream().filter(row -> row.state().isUsable()).toList();
    }

    /** Returns whether there is anything to make. */
    boolean isAny() {
        return which != Which.VIEW || !onView.isEmpty();
    }

    private CardChoice choice() {
        return switch (which) {
            case VIEW -> {
                List<MixId> mixes = onView.stream().map(RegisterRow::mixId).toList();
                yield CardChoice.of(mixes);
            }
            case IN_FORCE -> CardChoice.IN_FORCE;
            case RECALL -> new CardChoice(List.of(), Optional.empty(), true);
            case PLANT -> new CardChoice(List.of(), Optional.of(plant), false);
        };
    }

    /** Returns how the cards look. */
    CardLook look() {
        List<PaperLanguage> languages = new ArrayList<>(List.of(first));
        second.ifPresent(languages::add);
        return new CardLook(size, languages, sheet, sheet.isPresent() ? perSheet : 1, chart);
    }

    /**
     * Says what was made.
     *
     * @param made the cards, those of a plant's card each with the paper it is on
     * @param path the file
     */
    String made(CardBatch.Wish wish, List<CardHandout.Handed> made, String path) {
        String mixes = Integer.toString(made.size());
        long papers = made.stream().map(one -> one.print().paper()).distinct().count();
        return wish.onOne()
                ? texts.get("cards.made-plant", mixes, Long.toString(papers), path)
                : texts.get("cards.made", mixes, path);
    }

    /**
     * Returns what is wanted.
     *
     * @param moment the day and time it is, by the laboratory's clock
     * @param who who lets the cards leave
     */
    CardBatch.Wish wish(LocalDateTime moment, String who) {
        return new CardBatch.Wish(choice(), leaveOut, isOnOne(), look(), moment, who, texts.get("cards.why"));
    }
}
