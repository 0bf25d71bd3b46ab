package porebench.bench.waits;

import porebench.app.Porebench;

/** Opens the workbench and says when it can be used. */
final class OurWindow {
    private OurWindow() {}

    public static void main(String[] arguments) {
        Usable.watch();
        Porebench.main(arguments);
    }
}
