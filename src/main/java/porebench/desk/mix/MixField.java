package porebench.desk.mix;

/** What is typed on the mix design page outside its table. */
enum MixField {
    ID("id"),
    TITLE("title"),
    BATCH_VOLUME("batchVolume"),
    DENSITY("density"),
    TARGET_AIR("targetAir"),
    AIR_TOLERANCE("airTolerance"),
    SOAK_MINUTES("soakMinutes"),
    REMARKS("remarks");

    private final String field;

    MixField(String field) {
        this.field = field;
    }

    /** Returns the name by which problems and components know the field. */
    String field() {
        return field;
    }

    /** Returns the key of its name in the middle of a sentence. */
    String nameKey() {
        return "name." + field;
    }
}
