package porebench.desk.form;

import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Whether things of the window may move of themselves: the bar of work whose length nobody knows, and what flashes at the bench. Nothing
 * else does: themes, pages and scrolled parts change at once.
 */
public final class Motion {
    /** What a GNOME desktop says of animations, as Java hands it on: 0 where the person wants none (recalled). */
    public static final String GNOME = "gnome.Gtk/EnableAnimations";

    private static final AtomicBoolean STILL = new AtomicBoolean();

    private Motion() {}

    /** Says whether everything is to keep still. */
    public static void keepStill(boolean still) {
        STILL.set(still);
    }

    /** Returns whether everything is to keep still. */
    public static boolean isStill() {
        return STILL.get();
    }

    /**
     * Returns whether the system says that the person wants no animations. Java hands this on from GNOME desktops only; what Windows and macOS
     * know of it cannot be seen from here.
     *
     * @param said what the system says under {@link #GNOME}; null where it says nothing
     */
    public static boolean isUnwanted(@org.jspecify.annotations.Nullable Object said) {
        return said instanceof Number number && number.intValue() == 0;
    }
}
