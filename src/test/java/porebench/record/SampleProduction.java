package porebench.record;

import java.time.LocalDate;
import java.util.Optional;
import porebench.quantity.BulkMassUnit;
import porebench.quantity.Typed;
import porebench.quantity.VolumeUnit;
import porebench.record.id.MixId;
import porebench.record.id.ProductionId;

/** What was made of mixes. */
public final class SampleProduction {
    private SampleProduction() {}

    /** Returns a spell of which nothing is known but its days and how many of them were of production. */
    public static Production days(String id, String mix, LocalDate first, LocalDate last, int days) {
        return made(id, mix, first, last, Optional.of(days));
    }

    /** Returns a spell in which some cubic metres of concrete were made. */
    public static Production volume(String id, String mix, LocalDate first, LocalDate last, String cubicMetres) {
        Production bare = made(id, mix, first, last, Optional.empty());
        return with(bare, Optional.empty(), Optional.of(cubicMetres), Optional.empty());
    }

    /** Returns a spell in which some tonnes of concrete were made. */
    public static Production mass(String id, String mix, LocalDate first, LocalDate last, String tonnes) {
        Production bare = made(id, mix, first, last, Optional.empty());
        return with(bare, Optional.empty(), Optional.empty(), Optional.of(tonnes));
    }

    /** Returns a spell in which some loads of concrete were made. */
    public static Production loads(String id, String mix, LocalDate first, LocalDate last, int loads) {
        return with(days(id, mix, first, last, 1), Optional.of(loads), Optional.empty(), Optional.empty());
    }

    private static Production made(
            String id, String mix, LocalDate first, LocalDate last, Optional<Integer> productionDays) {
        return new Production(
                new ProductionId(id),
                new MixId(mix),
                first,
                last,
                productionDays,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "Plant 2",
                "");
    }

    /** Returns the spell with other amounts. */
    public static Production with(
            Production made, Optional<Integer> loads, Optional<String> cubicMetres, Optional<String> tonnes) {
        return new Production(
                made.id(),
                made.mixId(),
                made.firstDay(),
                made.lastDay(),
                made.productionDays(),
                loads,
                cubicMetres.map(number -> Typed.of(number, VolumeUnit.CUBIC_METRE)),
                tonnes.map(number -> Typed.of(number, BulkMassUnit.TONNE)),
                made.reportedBy(),
                made.remarks());
    }
}
