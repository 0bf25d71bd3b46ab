package porebench.manual;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import porebench.desk.manual.TextMarks;

/** Writes the sentences that the pages of the manual quote into them anew, as the program says them today: {@code ManualTexts}. */
final class ManualTexts {
    private ManualTexts() {}

    public static void main(String[] arguments) throws IOException {
        for (Page page : Page.all()) {
            // Pages of other languages lie in folders of their own: the program puts its sentences in when it shows them.
            String anew = page.file().getParent().equals(Page.FOLDER) ? TextMarks.anew(page.text()) : page.text();
            if (!anew.equals(page.text())) {
                Files.writeString(page.file(), anew, StandardCharsets.UTF_8);
                System.out.println(page);
            }
        }
    }
}
