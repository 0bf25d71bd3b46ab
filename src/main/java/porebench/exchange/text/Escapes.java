package porebench.exchange.text;

/** Text inside a cell that holds a list: percent sign, semicolon and bar are written {@code %25}, {@code %3B}, {@code %7C}. */
public final class Escapes {
    private Escapes() {}

    public static String written(String text) {
        return text.replace("%", "%25").replace(";", "%3B").replace("|", "%7C");
    }

    public static String read(String cell) {
        return cell.replace("%7C", "|").replace("%3B", ";").replace("%25", "%");
    }
}
