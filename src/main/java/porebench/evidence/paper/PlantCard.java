package porebench.evidence.paper;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import porebench.record.Laboratory;
import porebench.record.chain.Head;
import porebench.record.id.MixId;

/**
 * The mixes of a plant on one card, each in a row with the number that is subtracted for it; or one page of that card where one is too
 * small for all.
 *
 * @param laboratory who hands it out; empty when the lab book does not say
 * @param plant the plant
 * @param day the day for which it is made
 * @param rows the mixes on this page, in their order
 * @param page which page of the card it is, from 1
 * @param pages how many pages the card has
 * @param head how far the lab book reached when it was made
 */
public record PlantCard(
        Optional<Laboratory> laboratory, String plant, LocalDate day, List<Row> rows, int page, int pages, Head head)
        implements Printed {
    public PlantCard {
        rows = List.copyOf(rows);
    }

    /**
     * A mix of the plant.
     *
     * @param mixId the mix
     * @param title its title, may be empty
     * @param card its own card; empty where it has no factor that may be used, and the row says that
     */
    public record Row(MixId mixId, String title, Optional<FactorCard> card) {
        /** The row of a mix with a card. */
        public static Row of(FactorCard card) {
            return new Row(card.mixId(), card.mixTitle(), Optional.of(card));
        }

        /** The row of a mix without a factor that may be used. */
        public static Row without(MixId mixId, String title) {
            return new Row(mixId, title, Optional.empty());
        }
    }

    /** Returns the whole card on one page. */
    public static PlantCard of(
            Optional<Laboratory> laboratory, String plant, LocalDate day, List<Row> rows, Head head) {
        return new PlantCard(laboratory, plant, day, rows, 1, 1, head);
    }

    /** Returns this card on as many pages, its rows spread evenly over them in their order. */
    public List<PlantCard> on(int count) {
        List<PlantCard> all = new ArrayList<>();
        for (int which = 0; which < count; which++) {
            List<Row> own = rows.subList(which * rows.size() / count, (which + 1) * rows.size() / count);
            all.add(new PlantCard(laboratory, plant, day, own, which + 1, count, head));
        }
        return all;
    }

    /** Returns a page with one row of this card, named as the last of as many pages. */
    public PlantCard alone(Row row, int count) {
        return new PlantCard(laboratory, plant, day, List.of(row), count, count, head);
    }

    /** Returns the cards of the mixes that have one. */
    public List<FactorCard> cards() {
        return rows.stream().flatMap(row -> row.card().stream()).toList();
    }

    /** Returns what its plain text is sealed with; empty where a revision on it is in no lab book. */
    public Optional<CardSeal> seal() {
        List<CardSeal> seals =
                cards().stream().flatMap(card -> card.seal().stream()).toList();
        return seals.size() == cards().size() ? CardSeal.together(seals) : Optional.empty();
    }

    /** Returns whether it comes from a training book, or a factor on it rests on simulated trials: then none of it is to work by. */
    @Override
    public boolean isTraining() {
        return Printed.super.isTraining() || cards().stream().anyMatch(FactorCard::isTraining);
    }
}
