package porebench.desk.mix;

import java.util.Locale;

/** Where a mix design takes the volume of its batch from. */
enum VolumeFrom {
    STATED,
    CONSTITUENTS,
    DENSITY;

    /** Returns the word that stands for it in a draft and in the keys of texts. */
    String symbol() {
        return name().toLowerCase(Locale.ROOT);
    }
}
