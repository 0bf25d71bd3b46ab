package porebench.desk.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.util.List;
import javax.swing.JFrame;
import javax.swing.JPanel;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import porebench.desk.EventThread;
import porebench.desk.NeedsDisplay;
import porebench.desk.frame.Theme;

/** What the bench shows where words are many and the screen is small. */
@NeedsDisplay
@ExtendWith(EventThread.class)
class BenchPaneWindowTest {
    private static final String LONG = "El intervalo del 95 % del promedio llega a 0.037 % hacia cada lado. ";

    private static BenchScreen screen(int sentences) {
        return new BenchScreen(
                "Paso 13 de 13",
                "Factor de este ensayo",
                "G",
                "0.30",
                "%",
                true,
                LONG.repeat(sentences),
                "Enter guarda el ensayo. Hubo fuga: 9 y Enter.",
                "Primero cerrar la llave principal de aire; purgar recipiente y cámara antes de soltar.",
                LONG.repeat(sentences - 1),
                true,
                "Leer el manómetro: 6.8 % aire",
                "Enter guarda el ensayo. Tecla - atrás, + siguiente recipiente, * nuevo, Esc sale; todo se conserva.",
                List.of(new BenchScreen.Chip(1, "1  HG-108: Factor de este ensayo", true, false)),
                false);
    }

    private static BenchPane pane(JFrame frame, Dimension size) {
        BenchPane pane = new BenchPane(number -> {});
        pane.sayInvented(
                "DEMOSTRACIÓN. Todo en este libro de laboratorio es inventado. Para empezar uno propio: Libro, Nuevo.");
        frame.setUndecorated(true);
        frame.setContentPane(pane.component());
        frame.pack();
        frame.setSize(size);
        frame.validate();
        return pane;
    }

    private static void show(JFrame frame, BenchPane pane, BenchScreen screen) {
        // What a text needs follows from its width, which a first layout gives it.
        for (int i = 0; i < 3; i++) {
            pane.show(screen, false);
            frame.invalidate();
            frame.validate();
        }
    }

    @ParameterizedTest
    @CsvSource({"1024,700,1", "1024,700,2", "1024,700,3", "1280,720,4", "800,600,2"})
    void theDigitsStandWholeHoweverManyWordsThereAre(int width, int height, int sentences) throws Exception {
        EventThread.run(() -> {
            Theme.LIGHT.apply();
            JFrame frame = new JFrame();
            try {
                BenchPane pane = pane(frame, new Dimension(width, height));
                show(frame, pane, screen(sentences));
                BigDigits digits = pane.digits();
                assertThat(digits.getHeight()).isGreaterThanOrEqualTo(digits.getPreferredSize().height - 1);
                JPanel middle = (JPanel) digits.getParent();
                for (Component part : middle.getComponents()) {
                    if (part.isVisible()) {
                        assertThat(part.getY() + part.getHeight())
                                .as(part.getName() + " ends within")
                                .isLessThanOrEqualTo(middle.getHeight());
                        assertThat(part.getHeight())
                                .as(part.getName() + " stands whole")
                                .isGreaterThanOrEqualTo(part.getPreferredSize().height - 1);
                    }
                }
            } finally {
                frame.dispose();
            }
        });
    }

    @Test
    void wordsThatHaveRoomKeepTheirSize() throws Exception {
        EventThread.run(() -> {
            Theme.LIGHT.apply();
            JFrame frame = new JFrame();
            try {
                BenchPane pane = pane(frame, new Dimension(1024, 700));
                show(frame, pane, screen(3));
                float small = font(frame.getContentPane(), "benchHow");
                show(frame, pane, screen(1));
                assertThat(font(frame.getContentPane(), "benchHow")).isGreaterThan(small);
            } finally {
                frame.dispose();
            }
        });
    }

    private static float font(Container parent, String name) {
        float size = 0;
        for (Component part : parent.getComponents()) {
            if (name.equals(part.getName())) {
                return part.getFont().getSize2D();
            }
            if (part instanceof Container inner) {
                size = Math.max(size, font(inner, name));
            }
        }
        return size;
    }
}
