package porebench.print.sheet;

import java.math.BigDecimal;
import porebench.method.RoundingRule;
import porebench.method.Ties;
import porebench.print.page.Words;
import porebench.quantity.MassUnit;
import porebench.quantity.Typed;
import porebench.quantity.Volume;
import porebench.quantity.VolumeUnit;

/**
 * Volumes as a sheet prints them: litres to 0.01 L and millilitres to 1 mL, and where masses are in pounds or ounces cubic
 * feet to 0.001 ft3 as well; ties away from zero. Common practice, no source.
 *
 * @param words the language
 * @param unit the unit of the sheet's masses, which tells whether it is in US units
 */
record SheetVolumes(Words words, MassUnit unit) {
    /** Returns a volume of some litres. */
    String large(Volume volume) {
        String litres = shown(volume, VolumeUnit.LITRE, "0.01");
        boolean us = unit == MassUnit.POUND || unit == MassUnit.OUNCE;
        return us ? litres + " (" + shown(volume, VolumeUnit.CUBIC_FOOT, "0.001") + ")" : litres;
    }

    /** Returns a volume to be measured in a cylinder. */
    String small(Volume volume) {
        return shown(volume, VolumeUnit.MILLILITRE, "1");
    }

    /** Returns a volume with the digits and the unit as it was typed. */
    String typed(Typed<Volume> volume) {
        return words.number(volume.number()) + " " + symbol(volume.unit().symbol());
    }

    private String shown(Volume volume, VolumeUnit in, String step) {
        RoundingRule rule = new RoundingRule(
                new BigDecimal(step), Ties.AWAY_FROM_ZERO, "Step of a printed volume: common practice, no source");
        return words.number(rule.round(volume.in(in))) + " " + symbol(in.symbol());
    }

    private static String symbol(String plain) {
        return plain.replace('3', '\u00b3');
    }
}
