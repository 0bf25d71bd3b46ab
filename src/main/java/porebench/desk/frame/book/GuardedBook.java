package porebench.desk.frame.book;

import java.awt.EventQueue;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import porebench.port.LabBookShelf;
import porebench.record.book.LabBook;
import porebench.record.book.Summaries;

/**
 * A lab book that lets one thread in at a time, and looks that it is never the event thread: whatever is asked of it goes
 * through {@link #invoke}.
 *
 * <p>Pages read while a copy, an export or a check goes on; each does so beside the event thread. What still reads when the lab
 * book is closed is given up with a {@link CancellationException}, which nobody need be told: who would look at it has gone.
 */
public final class GuardedBook implements InvocationHandler {
    /** What is known without a look into the file. */
    private static final Set<String> KNOWN = Set.of("name", "warnings", "notWritable");

    /** What a person asked for, who must be told when nothing came of it. */
    private static final Set<String> WANTED = Set.of("keep", "saveCopy", "check", "verify", "unroll", "close");

    private final Object guarded;
    private final boolean looks;
    private final Door door;
    private final Consumer<IllegalStateException> strayed;

    /** Lets one thread in at a time, and knows whether the lab book behind it was closed. */
    private static final class Door {
        private boolean isShut;
    }

    private GuardedBook(Object guarded, boolean looks, Door door, Consumer<IllegalStateException> strayed) {
        this.guarded = guarded;
        this.looks = looks;
        this.door = door;
        this.strayed = strayed;
    }

    /** Returns a shelf whose lab books let one thread in at a time, and refuse the event thread. */
    public static LabBookShelf shelf(LabBookShelf shelf) {
        return shelf(shelf, stray -> {
            throw stray;
        });
    }

    /**
     * Returns a shelf whose lab books let one thread in at a time.
     *
     * @param strayed takes each call that came on the event thread, before it is done
     */
    public static LabBookShelf shelf(LabBookShelf shelf, Consumer<IllegalStateException> strayed) {
        return guard(LabBookShelf.class, new GuardedBook(shelf, true, new Door(), strayed));
    }

    private static <T> T guard(Class<T> kind, GuardedBook by) {
        return kind.cast(Proxy.newProxyInstance(kind.getClassLoader(), new Class<?>[] {kind}, by));
    }

    @Override
    public @Nullable Object invoke(Object proxy, Method method, Object @Nullable [] arguments) throws Throwable {
        if (method.getDeclaringClass() == Object.class) {
            return method.getName().equals("equals")
                    ? proxy == Objects.requireNonNull(arguments)[0]
                    : method.invoke(this, arguments);
        }
        if (KNOWN.contains(method.getName())) {
            return asked(method, arguments);
        }
        if (looks && EventQueue.isDispatchThread()) {
            strayed.accept(new IllegalStateException(
                    method.getName() + " of a lab book must be called beside the event thread"));
        }
        if (guarded instanceof LabBookShelf) {
            // Nobody waits for another lab book that is being opened.
            return guarded(asked(method, arguments));
        }
        synchronized (door) {
            door.isShut |= method.getName().equals("close");
            return guarded(door.isShut ? askedLate(method, arguments) : asked(method, arguments));
        }
    }

    /** Asks a lab book that was closed. */
    private @Nullable Object askedLate(Method method, Object @Nullable [] arguments) throws Throwable {
        try {
            return asked(method, arguments);
        } catch (IllegalStateException closed) {
            if (WANTED.contains(method.getName())) {
                throw closed;
            }
            CancellationException given = new CancellationException(closed.getMessage());
            given.initCause(closed);
            throw given;
        }
    }

    private @Nullable Object asked(Method method, Object @Nullable [] arguments) throws Throwable {
        try {
            return method.invoke(guarded, arguments);
        } catch (InvocationTargetException failure) {
            throw failure.getTargetException();
        }
    }

    /** Returns an answer, guarded as well where it goes on asking the lab book. */
    private @Nullable Object guarded(@Nullable Object answer) {
        if (answer instanceof LabBook book) {
            return guard(LabBook.class, new GuardedBook(book, true, new Door(), strayed));
        }
        if (answer instanceof Summaries summaries) {
            return guard(Summaries.class, new GuardedBook(summaries, false, door, strayed));
        }
        return answer instanceof Optional<?> perhaps ? perhaps.map(this::guarded) : answer;
    }
}
