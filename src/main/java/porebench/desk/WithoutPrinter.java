package porebench.desk;

import javax.swing.JComponent;
import porebench.method.Texts;
import porebench.port.NoPrinter;

/** What is told when printing failed: where there is no printer, a PDF file is offered instead. */
public final class WithoutPrinter {
    private WithoutPrinter() {}

    /**
     * Tells that something was not printed.
     *
     * @param over what the question stands over
     * @param doing what was being done
     * @param savePdf saves the same as a PDF file, asking where
     */
    public static void tell(Tools tools, JComponent over, String doing, Exception failure, Runnable savePdf) {
        if (!(failure instanceof NoPrinter)) {
            tools.asker().failure(over, doing, failure);
            return;
        }
        Texts texts = Texts.of("porebench.desk.desk", tools.locale());
        boolean isWanted = tools.asker()
                .confirm(
                        over,
                        texts.get("no-printer.title"),
                        texts.get("no-printer.question"),
                        texts.get("no-printer.save"));
        if (isWanted) {
            savePdf.run();
        }
    }
}
