package porebench.desk.frame;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import porebench.desk.NeedsDisplay;

/** The pictures of the manual show the window as it is: a picture whose texts are others by now is to be made anew. */
@NeedsDisplay
class PicturesWindowTest {
    private static final Pattern PICTURE = Pattern.compile("\\(([^)\\s]*pictures/([a-z-]+)\\.png)\\)");

    @TempDir
    Path folder;

    @Test
    void everyPictureShowsTheTextsThatTheWindowHasToday() throws Exception {
        Map<String, String> texts = ManualPictures.make(folder);
        assertThat(texts).hasSizeGreaterThan(6);
        for (Map.Entry<String, String> picture : texts.entrySet()) {
            Path file = ManualPictures.FOLDER.resolve(picture.getKey() + ".png");
            assertThat(file).isRegularFile();
            assertThat(Files.size(file)).as(file.toString()).isLessThan(ManualPictures.MOST_BYTES);
            assertThat(Files.readString(
                            ManualPictures.FOLDER.resolve(picture.getKey() + ".txt"), StandardCharsets.UTF_8))
                    .as("%s is out of date: make the pictures anew (mvn -Ppictures process-test-classes)", file)
                    .isEqualTo(picture.getValue());
        }
    }

    @Test
    void everyPictureThatAPageShowsIsThere() throws IOException {
        Set<String> shown = new HashSet<>();
        try (Stream<Path> pages = Stream.concat(Stream.of(Path.of("README.md")), Files.walk(Path.of("docs/manual")))) {
            for (Path page :
                    pages.filter(each -> each.toString().endsWith(".md")).toList()) {
                Matcher found = PICTURE.matcher(Files.readString(page, StandardCharsets.UTF_8));
                while (found.find()) {
                    Path folderOfPage = page.toAbsolutePath().getParent();
                    assertThat(folderOfPage.resolve(found.group(1)).normalize())
                            .as(page.toString())
                            .isRegularFile();
                    shown.add(found.group(2));
                }
            }
        }
        assertThat(shown).contains("variability", "card");
    }
}
