package porebench.exchange.sheet;

import java.util.List;
import porebench.record.CardPrint;
import porebench.record.CardStep;
import porebench.record.column.CardPrintColumns;
import porebench.record.column.CardStepColumns;

/** The formats of factor cards that left the laboratory, and of what happened to them. */
public final class CardFormats {
    public static final Format<CardPrint> PRINTS = new RowFormat<>(
            CardPrint.class, "card-prints.csv", CardPrintColumns.ALL, List.of("mix_id", "revision", "number"));

    public static final Format<CardStep> STEPS = new RowFormat<>(
            CardStep.class,
            "card-steps.csv",
            CardStepColumns.ALL,
            List.of("mix_id", "revision", "print_number", "step_number"));

    private CardFormats() {}
}
