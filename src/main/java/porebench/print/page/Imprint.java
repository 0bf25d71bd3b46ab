package porebench.print.page;

import java.time.LocalDate;

/**
 * What made a page, and when.
 *
 * @param program name and version of the program
 * @param date the day it was printed
 */
public record Imprint(String program, LocalDate date) {}
