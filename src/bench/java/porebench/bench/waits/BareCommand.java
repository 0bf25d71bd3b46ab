package porebench.bench.waits;

import java.math.BigDecimal;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The smallest program that corrects a reading by a factor on the command line. */
@Command(name = "air")
final class BareCommand implements Callable<Integer> {
    @Option(names = "--reading", required = true)
    private BigDecimal reading = BigDecimal.ZERO;

    @Option(names = "--factor", required = true)
    private BigDecimal factor = BigDecimal.ZERO;

    public static void main(String[] arguments) {
        System.exit(new CommandLine(new BareCommand()).execute(arguments));
    }

    @Override
    public Integer call() {
        System.out.println(reading.subtract(factor) + " % air");
        return 0;
    }
}
