package porebench.desk.frame;

import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.util.Map;
import java.util.Optional;
import porebench.desk.manual.Manual;
import porebench.desk.manual.ManualLink;
import porebench.desk.manual.ManualModel;
import porebench.desk.manual.ManualPage;
import porebench.desk.manual.ManualWindow;
import porebench.method.Texts;

/** The way to the manual: its contents, or the page about what is on view. It is read when it is first wanted. */
final class ManualDoor {
    /** Which page of the manual is about which page of the window, where their names differ; a hash leads to a heading. */
    private static final Map<String, String> ABOUT = Map.ofEntries(
            Map.entry("mix", "weigh-out.md"),
            Map.entry("sample", "weigh-out.md#weigh-out-by-pencil"),
            Map.entry("trials", "trials.md"),
            Map.entry("variability", "variability.md"),
            Map.entry("factor", "issuing.md"),
            Map.entry("sources", "sources.md"),
            Map.entry("groups", "sources.md#one-factor-for-several-mixes"),
            Map.entry("meters", "meters.md"),
            Map.entry("meter", "meters.md#the-page-of-one-meter"),
            Map.entry("equipment", "meters.md#equipment"),
            Map.entry("production", "recheck.md#production"),
            Map.entry("readings", "readings.md"),
            Map.entry("register", "assessor.md"),
            Map.entry("cards", "cards.md#who-holds-which-card"),
            Map.entry("plan", "recheck.md#the-tests-of-a-week"),
            Map.entry("overtime", "studies.md#over-time"),
            Map.entry("studies", "studies.md"),
            Map.entry("firstSteps", "first-factor.md#a-laboratory-of-your-own"));

    private final WorkbenchFrame window;
    private Optional<ManualWindow> made = Optional.empty();
    private boolean gone;

    ManualDoor(WorkbenchFrame window) {
        this.window = window;
        ManualLink.offer(window.frame().getRootPane(), this::open);
        window.frame().addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosed(WindowEvent event) {
                gone = true;
                made.ifPresent(ManualWindow::dispose);
            }
        });
    }

    /** Returns where the manual is about a page of the window. */
    static ManualModel.Spot about(String page) {
        return Optional.ofNullable(ABOUT.get(page))
                .flatMap(link -> ManualModel.Spot.ofLink(link, ManualPage.CONTENTS))
                .orElse(new ManualModel.Spot(ManualPage.CONTENTS, ""));
    }

    /** Opens the contents. */
    void open() {
        open(new ManualModel.Spot(ManualPage.CONTENTS, ""));
    }

    /** Opens what is said of the page on view; without a lab book, how one is begun. */
    void openHere() {
        open(window.desk().hasBook() ? about(window.current().name()) : about("firstSteps"));
    }

    private void open(ManualModel.Spot spot) {
        if (made.isPresent()) {
            made.get().show(spot);
            return;
        }
        window.desk()
                .tools()
                .tasks()
                .workOut(
                        () -> new ManualModel(Manual.read(window.desk().tools().locale())),
                        model -> {
                            if (!gone) {
                                make(model).show(spot);
                            }
                        },
                        failure -> {
                            throw new IllegalStateException("the manual cannot be read", failure);
                        });
    }

    private ManualWindow make(ManualModel model) {
        ManualWindow manual = made.orElseGet(() -> new ManualWindow(
                model,
                Texts.of("porebench.desk.manual.manual", window.desk().tools().locale()),
                window.desk().tools().tasks(),
                AppMark.pictures(),
                window.frame()));
        made = Optional.of(manual);
        return manual;
    }
}
