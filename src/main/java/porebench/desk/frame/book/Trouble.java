package porebench.desk.frame.book;

import java.nio.file.Path;

/**
 * Why a lab book is not open.
 *
 * @param file the file that was tried
 * @param why the reason, in the person's words
 * @param isFailure whether the world failed, so that details stand in the log; otherwise the file was refused
 * @param isOfDemo whether it is the demo's file that stands in the way, which can be set aside and made anew
 */
public record Trouble(Path file, String why, boolean isFailure, boolean isOfDemo) {}
