package porebench.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The start that nobody sees, by which the build learns which classes a start needs. */
class RehearsalTest {
    @TempDir
    private Path folder;

    @Test
    void everyCommandIsDoneAndEveryPageDrawn() {
        assertThat(Rehearsal.run(Path.of("demo-data").toAbsolutePath(), folder)).isZero();
    }

    @Test
    void aCommandThatIsRefusedIsNotPassedOver() {
        assertThat(Rehearsal.run(folder.resolve("nothing-here"), folder)).isPositive();
    }

    @Test
    void aClassThatThisJdkDoesNotHaveIsPassedOver() {
        assertThat(Rehearsal.load(List.of("java.lang.String", "sun.no.such.Toolkit", Rehearsal.class.getName())))
                .isEqualTo(2);
    }
}
