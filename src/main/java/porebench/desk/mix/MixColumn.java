package porebench.desk.mix;

/** A column of the table of constituents, in its order. */
enum MixColumn {
    NAME("name", true),
    ROLE("role", false),
    SOURCE("source", true),
    MASS("mass", true),
    MASS_UNIT("massUnit", false),
    STATE("massState", false),
    ABSORPTION("absorption", true),
    MOISTURE("moisture", true),
    RELATIVE_DENSITY("relativeDensity", true),
    RETAINED("retained", true);

    private final String field;
    private final boolean typed;

    MixColumn(String field, boolean typed) {
        this.field = field;
        this.typed = typed;
    }

    /** Returns the field of a problem with this cell, rows counted from 0. */
    String fieldOf(int row) {
        return "constituents." + row + "." + field;
    }

    /** Returns whether the cell holds typed text; any other cell holds a choice. */
    boolean isTyped() {
        return typed;
    }

    /** Returns whether what is typed here is a number. */
    boolean isNumber() {
        return typed && this != NAME && this != SOURCE;
    }

    /** Returns the key of its heading. */
    String headingKey() {
        return "heading." + field;
    }

    /** Returns the key of what its heading means. */
    String tipKey() {
        return "tip." + field;
    }

    /** Returns the key of its name in the middle of a sentence. */
    String nameKey() {
        return "name.constituent." + field;
    }
}
