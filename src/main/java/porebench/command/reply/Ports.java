package porebench.command.reply;

import java.util.function.Supplier;
import porebench.port.DemoBook;
import porebench.port.LabBookShelf;
import porebench.port.LabSheets;
import porebench.port.Press;

/**
 * The outer rooms a command may need, each made only when it is asked for, so that a small command starts quickly.
 *
 * @param sheets CSV in and out
 * @param shelf lab books
 * @param press paper
 * @param demo the demo laboratory
 */
public record Ports(
        Supplier<? extends LabSheets> sheets,
        Supplier<? extends LabBookShelf> shelf,
        Supplier<? extends Press> press,
        Supplier<? extends DemoBook> demo) {}
