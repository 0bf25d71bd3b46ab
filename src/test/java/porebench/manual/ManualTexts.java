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
            String anew = TextMarks.anew(page.text(), page.locale());
            if (!anew.equals(page.text())) {
                Files.writeString(page.file(), anew, StandardCharsets.UTF_8);
                System.out.println(page);
            }
        }
    }
}
