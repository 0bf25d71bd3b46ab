package porebench.app;

/** Starts Porebench. */
public final class Porebench {
    private Porebench() {}

    public static void main(String[] arguments) {
        System.out.println("Porebench");
    }
}
