package porebench.port;

import java.util.Optional;
import porebench.method.Answer;
import porebench.record.PhotoFile;
import porebench.record.chain.ChainEntry;
import porebench.record.chain.ChainOutline;

/** Gives a whole lab book, entry by entry, from outside; every row with the file and line where it stands. */
public interface ChainSource {
    /** Returns what the lab book says of itself. */
    ChainOutline outline();

    /**
     * Returns the next entry, or empty at the end.
     *
     * @throws OpeningRefused if what follows cannot be read, with its place
     */
    Optional<ChainEntry> next();

    /**
     * Returns the file of a photo with its bytes; refused when it is not there, cannot be read, or is another one.
     *
     * @param stated what the photo's record says of it
     */
    Answer<PhotoFile> photo(PhotoFile stated);
}
