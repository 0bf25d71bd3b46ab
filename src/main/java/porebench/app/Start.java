package porebench.app;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import porebench.command.DemoRun;
import porebench.command.PorebenchCommands;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;

/**
 * Decides what a start of the program is: a command, the window, or without a display the whole job in text.
 *
 * @param here where and when it starts
 * @param ports the outer rooms
 * @param data the user's data folder
 * @param display asks whether a window can be shown; asked only when there is no command
 * @param window opens the workbench
 */
record Start(Machine here, Ports ports, DataFolder data, BooleanSupplier display, Window window) {

    /** Starts and returns the exit status. */
    int run(String... arguments) {
        PorebenchCommands commands = new PorebenchCommands(here, ports);
        try {
            Optional<Path> book = BookArgument.of(arguments, here.folder());
            if (arguments.length > 0 && book.isEmpty()) {
                return commands.run(arguments);
            }
            if (display.getAsBoolean()) {
                window.open(here, ports, data, book);
                return 0;
            }
            return book.map(commands::noDisplay)
                    .orElseGet(() -> new DemoRun(here, ports).run(data.demoBook(), data.cards()));
        } catch (RuntimeException failure) {
            return commands.couldNotStart(failure);
        }
    }
}
