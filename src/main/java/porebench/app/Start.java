package porebench.app;

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
 * @param window opens the workbench
 */
record Start(Surroundings here, Ports ports, DataFolder data, BooleanSupplier display, Window window) {

    /** Starts and returns the exit status. */
    int run(String... arguments) {
        if (arguments.length > 0) {
            return new PorebenchCommands(here, ports).run(arguments);
        }
        DemoRun demo = new DemoRun(here, ports);
        if (!display.getAsBoolean()) {
            return demo.run(data.demoBook(), data.cards());
        }
        int status = demo.makeBook(data.demoBook());
        if (status == 0) {
            window.open(here, ports, data.demoBook());
        }
        return status;
    }
}
