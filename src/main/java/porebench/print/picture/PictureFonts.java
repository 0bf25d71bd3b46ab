package porebench.print.picture;

import de.rototor.pdfbox.graphics2d.PdfBoxGraphics2DFontTextDrawer;
import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.text.AttributedCharacterIterator;
import java.text.CharacterIterator;
import org.apache.pdfbox.pdmodel.font.PDFont;
import porebench.print.page.Faces;
import porebench.print.page.Weight;

/** Sets the words of a picture in the press's own typeface; what that cannot show is drawn as outlines. */
final class PictureFonts extends PdfBoxGraphics2DFontTextDrawer {
    private final Faces faces;

    PictureFonts(Faces faces) {
        this.faces = faces;
    }

    @Override
    protected boolean hasDynamicFontMapping() {
        return true;
    }

    @Override
    protected PDFont mapFont(Font font, IFontTextDrawerEnv env) {
        boolean isBold = font.isBold() || font.getFontName().contains("Medium");
        return faces.font(isBold ? Weight.BOLD : Weight.REGULAR);
    }

    @Override
    public boolean canDrawText(AttributedCharacterIterator text, IFontTextDrawerEnv env)
            throws IOException, FontFormatException {
        for (char each = text.first(); each != CharacterIterator.DONE; each = text.next()) {
            if (!faces.shows(each)) {
                return false;
            }
        }
        text.first();
        return super.canDrawText(text, env);
    }
}
