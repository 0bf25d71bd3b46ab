package porebench.desk.custody;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import porebench.desk.StateMark;
import porebench.desk.form.Numbers;
import porebench.desk.table.RowTable;
import porebench.desk.table.ShownColumn;
import porebench.desk.table.TableOrder;
import porebench.evidence.FactorState;
import porebench.evidence.custody.CardStanding;
import porebench.evidence.custody.HeldCard;
import porebench.method.Texts;

/** The table of cards, in which several can be chosen at once. */
final class CardsTable {
    private static final int MARK_SIDE = 12;

    private final CardsModel model;
    private final RowTable<HeldCard> table;
    private List<HeldCard> shown = List.of();
    private boolean isShowing;

    /**
     * Makes the table.
     *
     * @param chosen is called when a person chose other cards
     */
    CardsTable(CardsModel model, Runnable chosen) {
        this.model = model;
        table = new RowTable<>("cards.table", model.texts().get("page.title"), columns(model));
        table.getSelectionModel().addListSelectionListener(event -> {
            if (!isShowing && !event.getValueIsAdjusting()) {
                List<HeldCard> inOrder = TableOrder.rows(table);
                model.choose(IntStream.of(table.getSelectedRows())
                        .mapToObj(row -> inOrder.get(row).print().recordId())
                        .toList());
                chosen.run();
            }
        });
    }

    RowTable<HeldCard> component() {
        return table;
    }

    private static List<ShownColumn<HeldCard>> columns(CardsModel model) {
        Texts texts = model.texts();
        Numbers numbers = model.desk().tools().numbers();
        return List.of(
                new ShownColumn<HeldCard>(
                                texts.get("column.mix"),
                                70,
                                card -> card.print().mixId().text())
                        .sortedBy(card -> card.print().mixId()),
                new ShownColumn<HeldCard>(
                                texts.get("column.revision"),
                                44,
                                card -> Integer.toString(card.print().revision()))
                        .number()
                        .sortedBy(card -> card.print().revision()),
                new ShownColumn<HeldCard>(
                                texts.get("column.number"),
                                44,
                                card -> Integer.toString(card.print().number()))
                        .number()
                        .sortedBy(card -> card.print().number()),
                new ShownColumn<HeldCard>(
                                texts.get("column.factor"),
                                48,
                                card -> card.factorPercent().map(numbers::show).orElse(""))
                        .number(),
                new ShownColumn<>(texts.get("column.holder"), 120, model::holderWords),
                new ShownColumn<>(texts.get("column.place"), 110, model::placeWords)
                        .sortedBy(card -> card.place().where()),
                new ShownColumn<>(texts.get("column.standing"), 130, model::standingWords)
                        .mark((card, selected) -> new StateMark(shape(card.standing()), MARK_SIDE))
                        .sortedBy(HeldCard::standing),
                new ShownColumn<>(texts.get("column.back"), 100, model::backWords).sortedBy(HeldCard::isToComeBack),
                new ShownColumn<>(texts.get("column.since"), 112, model::sinceWords),
                new ShownColumn<>(texts.get("column.last"), 170, model::lastWords),
                new ShownColumn<>(texts.get("column.remark"), 150, model::remarkWords),
                new ShownColumn<>(texts.get("column.title"), 150, HeldCard::title).sortedBy(HeldCard::title));
    }

    /** A factor as good or bad as one of a mix has its shape and colour. */
    private static FactorState shape(CardStanding standing) {
        return switch (standing) {
            case HOLDS -> FactorState.IN_FORCE;
            case RECHECK_DUE -> FactorState.RECHECK_DUE;
            case NOT_YET -> FactorState.NO_FACTOR;
            case SUPERSEDED, WITHDRAWN -> FactorState.WITHDRAWN;
            case LAPSED -> FactorState.LAPSED;
            case SOURCE_CHANGED -> FactorState.SOURCE_CHANGED;
            case EVIDENCE_CHANGED -> FactorState.EVIDENCE_CHANGED;
            case NOT_VERIFIED -> FactorState.NOT_VERIFIED;
        };
    }

    /** Shows the cards on view, those chosen that are chosen in the model. */
    void refresh() {
        List<HeldCard> rows = model.rows();
        Set<String> chosen =
                model.chosen().stream().map(card -> card.print().recordId()).collect(Collectors.toSet());
        isShowing = true;
        try {
            if (rows != shown) {
                // Ten thousand cards are not held against each other for a letter that is typed.
                shown = rows;
                table.show(rows);
            }
            table.getSelectionModel().setValueIsAdjusting(true);
            table.clearSelection();
            List<HeldCard> inOrder = TableOrder.rows(table);
            for (int row = 0; row < inOrder.size(); row++) {
                if (chosen.contains(inOrder.get(row).print().recordId())) {
                    table.addRowSelectionInterval(row, row);
                }
            }
        } finally {
            table.getSelectionModel().setValueIsAdjusting(false);
            isShowing = false;
        }
    }
}
