package porebench.print;

/** The file or the printer failed; the message says what was being done and what is safe, in the person's language. */
public final class PrintException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public PrintException(String message, Throwable cause) {
        super(message, cause);
    }
}
