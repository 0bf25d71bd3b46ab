package porebench.record.book;

import java.util.concurrent.CancellationException;

/** Hears how far a long piece of work is, and may end it. */
@FunctionalInterface
public interface Progress {
    /** What is being done, and what is counted of it. */
    enum Stage {
        /** Reading a file, in bytes. */
        READING,
        /** Asking the lab book for what some records name. */
        LOOKING_UP,
        /** Holding names against those that are there. */
        COMPARING,
        /** Checking records. */
        CHECKING,
        /** Keeping records. */
        KEEPING,
        /** Working out how mixes stand. */
        WORKING_OUT,
        /** Writing records into files. */
        WRITING,
        /** Printing, in pages. */
        PRINTING
    }

    /** Nobody listens, and nobody ends it. */
    Progress UNHEARD = (stage, done, of) -> {};

    /**
     * Takes how far the work is; told often, so that it is cheap to take.
     *
     * @param done how much of the stage is done
     * @param of how much there is; 0 where that is not known
     * @throws CancellationException if the work is to end; who does the work lets it pass and leaves nothing half done
     */
    void at(Stage stage, long done, long of);
}
