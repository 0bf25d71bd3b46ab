package porebench.desk.mix;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import porebench.desk.form.Numbers;
import porebench.desk.form.TypedDraft;
import porebench.method.MoistureState;
import porebench.record.Source;
import porebench.record.column.MixColumns;

/**
 * What the register of sources offers for a row: filled in where nothing is typed, and taken along as long as nobody typed
 * over it.
 *
 * @param absorption the absorption in %, empty when the register has none
 * @param relativeDensity the relative density on the basis of the row's mass, empty when the register has none
 */
record SourceOffer(String absorption, String relativeDensity) {
    private static final SourceOffer NOTHING = new SourceOffer("", "");
    private static final int DECIMALS = 3;

    /**
     * Returns what a source offers for a mass in a moisture state.
     *
     * <p>The register states relative density at SSD; an oven-dry mass needs it oven-dry, which is the one at SSD over
     * (1 + absorption). Source: derived from the definitions of ASTM C127 and C128 (recalled).
     */
    static SourceOffer of(Optional<Source> source, MoistureState state, Numbers numbers) {
        if (source.isEmpty()) {
            return NOTHING;
        }
        Optional<BigDecimal> absorption = source.get().absorptionPercent();
        Optional<BigDecimal> density = source.get().relativeDensity();
        if (state == MoistureState.OVEN_DRY) {
            density = density.isPresent() && absorption.isPresent()
                    ? Optional.of(density.get()
                            .divide(
                                    BigDecimal.ONE.add(absorption.get().movePointLeft(2)),
                                    DECIMALS,
                                    RoundingMode.HALF_EVEN))
                    : Optional.empty();
        }
        return new SourceOffer(
                absorption.map(numbers::show).orElse(""),
                density.map(numbers::show).orElse(""));
    }

    /** Returns a row with this offer in place of an earlier one, in the cells that nobody typed in. */
    TypedDraft replacing(SourceOffer earlier, TypedDraft row) {
        TypedDraft filled = row;
        if (isUntyped(row.text(MixColumns.ABSORPTION), earlier.absorption)) {
            filled = filled.with(MixColumns.ABSORPTION, absorption);
        }
        if (isUntyped(row.text(MixColumns.DENSITY), earlier.relativeDensity)) {
            filled = filled.with(MixColumns.DENSITY, relativeDensity);
        }
        return filled;
    }

    private static boolean isUntyped(String text, String offered) {
        return text.isBlank() || text.equals(offered);
    }
}
