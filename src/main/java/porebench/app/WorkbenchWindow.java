package porebench.app;

import java.nio.file.Path;
import java.util.Optional;
import porebench.balance.SerialPorts;
import porebench.command.DemoRun;
import porebench.command.reply.Machine;
import porebench.command.reply.Ports;
import porebench.desk.Settings;
import porebench.desk.frame.Outside;
import porebench.desk.frame.Workbench;
import porebench.desk.frame.book.InventedBooks;
import porebench.exchange.PracticeLaboratory;
import porebench.store.draft.DraftFiles;

/** The workbench window with what it needs from outside. */
final class WorkbenchWindow {
    private WorkbenchWindow() {}

    static void open(Machine here, Ports ports, DataFolder data, Optional<Path> book) {
        Workbench.start(
                new Outside(
                        ports.shelf().get(),
                        ports.sheets().get(),
                        ports.press().get(),
                        here.clock(),
                        here.zone(),
                        here.locale(),
                        Settings.ofUser(),
                        new DraftFiles(data.drafts()),
                        new InventedBooks(
                                data.demoBook(),
                                file -> new DemoRun(here, ports).makeBook(file),
                                new PracticeLaboratory()),
                        here.log(),
                        new SerialPorts()),
                book);
    }
}
