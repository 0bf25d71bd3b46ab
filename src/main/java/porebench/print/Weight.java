package porebench.print;

/** How heavy a text is set. */
enum Weight {
    REGULAR,
    BOLD
}
