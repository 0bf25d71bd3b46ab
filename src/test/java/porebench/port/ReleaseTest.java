package porebench.port;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The version stands in the pom and nowhere else; the build writes it into the file that the program reads. */
class ReleaseTest {
    private static final Path SOURCE = Path.of("src/main/resources/porebench/port/release.txt");

    private static String pomVersion() throws IOException {
        String pom = Files.readString(Path.of("pom.xml"), StandardCharsets.UTF_8);
        Matcher own = Pattern.compile("<artifactId>porebench</artifactId>\\s*<version>([^<]+)</version>")
                .matcher(pom);
        assertThat(own.find()).isTrue();
        return own.group(1);
    }

    @Test
    void theSourceOfTheFileNamesNoVersion() throws IOException {
        assertThat(Files.readString(SOURCE, StandardCharsets.UTF_8).strip()).isEqualTo("${project.version}");
        assertThat(Files.readString(Path.of("pom.xml"), StandardCharsets.UTF_8))
                .contains("<includes><include>porebench/port/release.txt</include></includes>")
                .contains("<filtering>true</filtering>");
    }

    /** Where Maven made the classes it is the pom's; where only the compiler did, nothing is claimed. */
    @Test
    void theVersionIsThePoms() throws IOException {
        String there = new String(
                        ReleaseTest.class
                                .getResourceAsStream("/porebench/port/release.txt")
                                .readAllBytes(),
                        StandardCharsets.UTF_8)
                .strip();
        if (there.startsWith("${")) {
            assertThat(Release.version()).isEmpty();
        } else {
            assertThat(Release.version()).contains(pomVersion());
        }
    }

    @Test
    void aVersionThatNoBuildWroteIsNone() {
        assertThat(Release.read("1.0.0\n")).contains("1.0.0");
        assertThat(Release.read("${project.version}\n")).isEmpty();
        assertThat(Release.read(" \n")).isEmpty();
    }
}
