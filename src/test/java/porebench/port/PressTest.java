package porebench.port;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import porebench.evidence.paper.CalibrationForm;
import porebench.evidence.paper.Printed;
import porebench.method.MeterType;
import porebench.method.profile.Profiles;
import porebench.quantity.MassUnit;
import porebench.record.book.Progress;

/** What every press does with what it has made ready: lets it leave at once, and leaves nothing waiting. */
class PressTest {
    private static final OutputFile FILE = OutputFile.fresh(Path.of("form.pdf"));
    private static final Printed FORM = new CalibrationForm(
            Optional.empty(), Optional.empty(), MeterType.B, MassUnit.KILOGRAM, Profiles.standard());

    private final List<String> told = new ArrayList<>();

    /** Notes what becomes of the one thing it makes ready. */
    private final class Noting implements Press {
        private final boolean isAgreed;
        private final boolean isJammed;

        Noting(boolean isAgreed, boolean isJammed) {
            this.isAgreed = isAgreed;
            this.isJammed = isJammed;
        }

        private Waiting waiting() {
            return new Waiting() {
                @Override
                public void release() {
                    if (isJammed) {
                        throw new IllegalStateException("paper jam");
                    }
                    told.add("left");
                }

                @Override
                public void close() {
                    told.add("cleared");
                }
            };
        }

        @Override
        public Waiting ready(Printed what, Paper paper, Locale locale, OutputFile file) {
            return waiting();
        }

        @Override
        public Optional<Waiting> readyForPrinter(Printed what, Paper paper, Locale locale) {
            return isAgreed ? Optional.of(waiting()) : Optional.empty();
        }

        @Override
        public List<BufferedImage> preview(Printed what, Paper paper, Locale locale, int dotsPerInch) {
            return List.of();
        }

        @Override
        public void draw(Picture picture, Locale locale, OutputFile file) {
            told.add("drawn");
        }
    }

    @Test
    void aFileTakesItsPlaceAndNothingIsLeftWaiting() {
        new Noting(true, false).write(FORM, Paper.A4, Locale.ENGLISH, FILE);
        assertThat(told).containsExactly("left", "cleared");
    }

    @Test
    void whatThePersonAgreesToIsPrintedAndNothingIsLeftWaiting() {
        assertThat(new Noting(true, false).print(FORM, Paper.A4, Locale.ENGLISH, Progress.UNHEARD))
                .isTrue();
        assertThat(told).containsExactly("left", "cleared");
    }

    @Test
    void whoThinksBetterOfItPrintsNothing() {
        assertThat(new Noting(false, false).print(FORM, Paper.A4, Locale.ENGLISH, Progress.UNHEARD))
                .isFalse();
        assertThat(told).isEmpty();
    }

    @Test
    void whatCannotLeaveIsClearedAway() {
        Press jammed = new Noting(true, true);
        assertThatThrownBy(() -> jammed.print(FORM, Paper.A4, Locale.ENGLISH, Progress.UNHEARD))
                .hasMessage("paper jam");
        assertThatThrownBy(() -> jammed.write(FORM, Paper.A4, Locale.ENGLISH, FILE))
                .hasMessage("paper jam");
        assertThat(told).containsExactly("cleared", "cleared");
    }
}
