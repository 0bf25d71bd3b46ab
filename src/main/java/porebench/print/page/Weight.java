package porebench.print.page;

/** How heavy a text is set. */
public enum Weight {
    REGULAR,
    BOLD
}
