package porebench.desk.frame;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import com.formdev.flatlaf.fonts.roboto.FlatRobotoFont;
import java.util.Arrays;
import javax.swing.LookAndFeel;
import javax.swing.UIManager;
import javax.swing.UnsupportedLookAndFeelException;

/** The two looks of the workbench; colours, fonts and style classes stand in the files of {@code desk/theme}. */
public enum Theme {
    LIGHT("light"),
    DARK("dark");

    private static final String FILES = "porebench.desk.theme";

    private final String symbol;

    /** Under this word the look that is on view knows the size of its type. */
    private static final String TYPE = "porebench.typeSize";

    Theme(String symbol) {
        this.symbol = symbol;
    }

    /** Returns the word by which settings know the theme. */
    public String symbol() {
        return symbol;
    }

    /** Returns the theme with a symbol; the light one for any other word. */
    public static Theme ofSymbol(String symbol) {
        return Arrays.stream(values())
                .filter(theme -> theme.symbol.equals(symbol))
                .findFirst()
                .orElse(LIGHT);
    }

    /** Shows every window, present and future, in this theme; the platform's own look where that is impossible. */
    public void apply() {
        FlatRobotoFont.installLazy();
        FlatLaf.registerCustomDefaultsSource(FILES);
        FlatLaf.setPreferredFontFamily(FlatRobotoFont.FAMILY);
        FlatLaf.setPreferredLightFontFamily(FlatRobotoFont.FAMILY_LIGHT);
        FlatLaf.setPreferredSemiboldFontFamily(FlatRobotoFont.FAMILY_SEMIBOLD);
        LookAndFeel look = this == DARK ? new FlatDarkLaf() : new FlatLightLaf();
        if (isOnView(look)) {
            return;
        }
        try {
            UIManager.setLookAndFeel(look);
            UIManager.getLookAndFeelDefaults().put(TYPE, TypeSize.inUse().symbol());
        } catch (UnsupportedLookAndFeelException refused) {
            // Swing keeps the look it has; the workbench is plainer but works.
            return;
        }
        FlatLaf.updateUI();
    }

    /** Returns whether every window is shown so already, in the type of today's size. */
    private static boolean isOnView(LookAndFeel look) {
        LookAndFeel now = UIManager.getLookAndFeel();
        return now != null
                && now.getClass() == look.getClass()
                && TypeSize.inUse().symbol().equals(UIManager.get(TYPE));
    }
}
