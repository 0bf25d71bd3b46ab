package porebench.port;

/** No printer is known to the machine; the message says so in the person's language. A file can be written all the same. */
public final class NoPrinter extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public NoPrinter(String message) {
        super(message);
    }
}
