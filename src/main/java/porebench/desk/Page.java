package porebench.desk;

/** One page of the selected mix, or one register of the laboratory, as the window calls it. */
public interface Page extends Screen {
    /** Returns a short stable name, for the memory of the window and for tests: such as {@code trials}. */
    String name();

    /** Returns the title in the person's language. */
    String title();
}
