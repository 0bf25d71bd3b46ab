package porebench.store.file;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.sql.SQLException;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.sqlite.SQLiteErrorCode;

/** Why a lab book's file failed, as far as a person can act on it; the words are those of the failures. */
public enum Reason {
    FULL("because.full"),
    LOCKED("because.locked"),
    READ_ONLY("because.read-only"),
    DEVICE("because.device"),
    DAMAGED("because.damaged"),
    MISSING("because.missing"),
    NO_INDEX("because.no-index"),
    OTHER("");

    private static final int BASIC_CODE = 0xFF;
    private static final int DEPTH = 20;

    private final String key;

    Reason(String key) {
        this.key = key;
    }

    String key() {
        return key;
    }

    /** Returns the reason that a failure or one of its causes names. */
    public static Reason of(@Nullable Throwable failure) {
        Throwable each = failure;
        for (int depth = 0; each != null && depth < DEPTH; depth++) {
            Reason reason = ofOne(each);
            if (reason != OTHER) {
                return reason;
            }
            each = each.getCause();
        }
        return OTHER;
    }

    private static Reason ofOne(Throwable failure) {
        if (failure instanceof SQLException sql) {
            return ofCode(sql.getErrorCode());
        }
        return failure instanceof IOException file ? ofFile(file) : OTHER;
    }

    private static Reason ofCode(int code) {
        return switch (SQLiteErrorCode.getErrorCode(code & BASIC_CODE)) {
            case SQLITE_FULL -> FULL;
            case SQLITE_BUSY, SQLITE_LOCKED -> LOCKED;
            case SQLITE_READONLY, SQLITE_PERM -> READ_ONLY;
            case SQLITE_IOERR -> DEVICE;
            case SQLITE_CANTOPEN -> NO_INDEX;
            case SQLITE_CORRUPT, SQLITE_NOTADB -> DAMAGED;
            default -> OTHER;
        };
    }

    /** Java has no type for a full disk or a bad sector: only the system's own words say so. */
    private static Reason ofFile(IOException failure) {
        if (failure instanceof AccessDeniedException) {
            return READ_ONLY;
        }
        if (failure instanceof NoSuchFileException) {
            return MISSING;
        }
        String said = (failure instanceof FileSystemException file ? file.getReason() : failure.getMessage()) + "";
        String lower = said.toLowerCase(Locale.ROOT);
        if (lower.contains("no space left") || lower.contains("not enough space") || lower.contains("quota exceeded")) {
            return FULL;
        }
        if (lower.contains("read-only")) {
            return READ_ONLY;
        }
        return lower.contains("input/output error") ? DEVICE : OTHER;
    }
}
