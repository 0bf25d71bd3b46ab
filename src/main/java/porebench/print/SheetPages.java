package porebench.print;

import java.io.IOException;
import porebench.record.TrialSheet;

final class SheetPages {
    SheetPages(TrialSheet sheet, Leaves leaves, Words words, Imprint imprint) {}
    void draw() throws IOException {}
}
