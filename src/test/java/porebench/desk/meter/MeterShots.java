package porebench.desk.meter;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.function.Consumer;
import porebench.desk.EventThread;
import porebench.desk.MixDesk;
import porebench.desk.Shots;
import porebench.desk.frame.Theme;
import porebench.method.MeterType;
import porebench.record.Samples;
import porebench.record.book.Draft;
import porebench.record.column.CalibrationColumns;
import porebench.record.id.MeterId;

/**
 * Saves pictures of the page of a meter in its states, for people to look at.
 *
 * <p>Arguments: the folder for the pictures, light or dark, and the scale in %.
 */
final class MeterShots {
    private static final int WIDTH = 980;
    private static final int HEIGHT = 730;
    private static final int WHOLE = 2300;

    private MeterShots() {}

    public static void main(String[] arguments) throws Exception {
        Theme theme = Theme.ofSymbol(arguments[1]);
        int percent = Integer.parseInt(arguments[2]);
        MixDesk mixDesk = new MixDesk(Locale.forLanguageTag(System.getProperty("porebench.shots.language", "en")));
        LocalDate today = mixDesk.desk.tools().today();
        mixDesk.keepElsewhere(Draft.of(Samples.meter("A-1", MeterType.A)), Draft.of(Samples.meter("N-1", MeterType.B)));
        MeterStories.ofTypeB(today.minusDays(3)).forEach(one -> mixDesk.keepElsewhere(Draft.of(one)));
        mixDesk.keepElsewhere(
                Draft.of(MeterStories.ofTypeA("A-1", today.minusMonths(3).plusDays(9))));
        mixDesk.desk.refresh();
        Shot shot = new Shot(Path.of(arguments[0]), theme, percent, mixDesk);
        shot.save("b", HEIGHT, model -> model.open(new MeterId("B-1")));
        shot.save("b-whole", WHOLE, model -> model.open(new MeterId("B-1")));
        shot.save("a-whole", 1700, model -> {
            model.open(new MeterId("A-1"));
            model.useAt("640");
        });
        shot.save("never", HEIGHT, model -> model.open(new MeterId("N-1")));
        shot.save("b-entry", HEIGHT, model -> {
            model.open(new MeterId("B-1"));
            model.begin();
        });
        shot.save("b-correct", 1300, model -> {
            model.open(new MeterId("B-1"));
            model.correctChosen();
        });
        shot.save("a-entry", 900, model -> {
            model.open(new MeterId("A-1"));
            model.begin();
            model.entry().trySaving();
            model.entry().type(CalibrationColumns.EXPANSION, "0,3");
        });
    }

    private record Shot(Path folder, Theme theme, int percent, MixDesk mixDesk) {
        void save(String name, int height, Consumer<MeterModel> doing) throws Exception {
            Path file = folder.resolve(name + "-" + theme.symbol() + "-" + percent + ".png");
            EventThread.run(theme::apply);
            Shots.component(
                    theme,
                    WIDTH * percent / 100,
                    height * percent / 100,
                    () -> {
                        MeterModel model = new MeterModel(mixDesk.desk);
                        MeterPage page = new MeterPage(model, () -> {});
                        doing.accept(model);
                        return page.component();
                    },
                    file);
        }
    }
}
