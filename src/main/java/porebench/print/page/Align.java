package porebench.print.page;

/** On which side of its place a text stands. */
public enum Align {
    LEFT,
    CENTRE,
    RIGHT
}
