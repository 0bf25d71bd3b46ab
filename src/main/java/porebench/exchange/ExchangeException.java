package porebench.exchange;

/** A file could not be written: the disk, the folder or a right failed. The message says what is safe. */
public final class ExchangeException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public ExchangeException(String whatWasBeingDone, Throwable cause) {
        super(whatWasBeingDone, cause);
    }
}
