package porebench.app;

import java.util.Optional;
import java.util.function.BooleanSupplier;
import porebench.command.DemoRun;
import porebench.command.PorebenchCommands;
import porebench.command.Ports;
import porebench.command.Surroundings;

/**
 * Decides what a start of the program is: a command, the window, or without a display the whole job in text.
 *
 * @param here where and when it starts
 * @param ports the outer rooms
 * @param data the user's data folder
 * @param display asks whether a window can be shown; asked only when there is no command
 * @param window opens the workbench; empty in a build without one
 */
record Start(Surroundings here, Ports ports, DataFolder data, BooleanSupplier display, Optional<Window> window) {

    /** Starts and returns the exit status. */
    int run(String... arguments) {
        if (arguments.length > 0) {
            return new PorebenchCommands(here, ports).run(arguments);
        }
        if (window.isPresent() && display.getAsBoolean()) {
            window.get().open(here, ports, data.demoBook());
            return 0;
        }
        return new DemoRun(here, ports).run(data.demoBook(), data.cards());
    }
}
