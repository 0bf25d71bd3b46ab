package porebench.print;

/** On which side of its place a text stands. */
enum Align {
    LEFT,
    CENTRE,
    RIGHT
}
