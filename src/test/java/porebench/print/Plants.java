package porebench.print;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import porebench.evidence.paper.FactorCard;
import porebench.evidence.paper.PlantCard;
import porebench.record.Laboratory;
import porebench.record.id.MixId;

/** Cards of a plant for tests, of an invented laboratory. */
public final class Plants {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private Plants() {}

    public static PlantCard of(List<PlantCard.Row> rows) {
        return of("North", rows);
    }

    public static PlantCard of(String plant, List<PlantCard.Row> rows) {
        FactorCard any =
                rows.stream().flatMap(row -> row.card().stream()).findFirst().orElseThrow();
        return PlantCard.of(any.laboratory(), plant, DAY, rows, any.head());
    }

    /** Returns a row of a mix with a factor; each mix has another number. */
    public static PlantCard.Row row(int number) {
        return row(number, "Bridge deck, 35 MPa, 20 mm stone");
    }

    /** Returns the same with a title. */
    public static PlantCard.Row row(int number, String title) {
        String factor = "0." + number % 10 + (number / 10 == 0 ? "" : Integer.toString(number / 10));
        return PlantCard.Row.of(Cards.card(
                new Laboratory("Tarnwick Materials Laboratory", "4 Kiln Road, Tarnwick"),
                String.format(Locale.ROOT, "TW-%03d", 200 + number),
                title,
                List.of("Orrin Pit sand"),
                false,
                new String[] {factor, "6.0", "1.5", number / 10 == 0 ? "0.1" : "0.05", "10"}));
    }

    /** Returns a card with so many mixes. */
    public static PlantCard usual(int mixes) {
        return of(IntStream.rangeClosed(1, mixes).mapToObj(Plants::row).toList());
    }

    /** Returns a card with what is longest and rarest: conditions, wet-sieved, negative, Type A, doubts taken on, no factor. */
    public static PlantCard everything() {
        FactorCard negative = Cards.card("-0.2", "6.0", "1.5", "0.1", "10");
        List<PlantCard.Row> rows = new ArrayList<>(Stream.of(
                        Cards.under(Cards.usual(), "only with the batch water of the well, from 5 to 30 degrees C"),
                        Cards.wetSieved(Cards.typeA(Cards.usual())),
                        negative,
                        Cards.takenOn(Cards.usual(), "no others were there", "P. Linden", "M. Thorne"))
                .map(PlantCard.Row::of)
                .toList());
        rows.add(PlantCard.Row.without(new MixId("TW-999"), "Kerb mix, not yet tested"));
        return of("Lower Ebber Valley, line 2", rows);
    }

    /** Returns a card with one mix whose names are as long as they come. */
    public static PlantCard longNames() {
        return of(List.of(PlantCard.Row.of(Cards.everythingLong("-0.35", true)), row(2)));
    }

    public static PlantCard training() {
        List<PlantCard.Row> rows = List.of(PlantCard.Row.of(Cards.training("0.3", false)), row(2));
        return of(rows);
    }

    /** Returns a card without what its laboratory says of itself. */
    public static PlantCard ofNobody() {
        PlantCard one = usual(2);
        return PlantCard.of(Optional.empty(), one.plant(), one.day(), one.rows(), one.head());
    }
}
