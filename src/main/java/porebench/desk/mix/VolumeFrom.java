package porebench.desk.mix;

/** Where a mix design takes the volume of its batch from. */
enum VolumeFrom {
    STATED,
    CONSTITUENTS,
    DENSITY;

    /** Returns the key of its words. */
    String key() {
        return switch (this) {
            case STATED -> "volumeFrom.stated";
            case CONSTITUENTS -> "volumeFrom.constituents";
            case DENSITY -> "volumeFrom.density";
        };
    }
}
