package porebench.desk.frame.book;

import java.awt.Component;
import java.awt.Container;
import java.awt.EventQueue;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.dnd.DropTarget;
import java.awt.event.ContainerAdapter;
import java.awt.event.ContainerEvent;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.TransferHandler;
import javax.swing.text.JTextComponent;

/**
 * Takes files that are dropped anywhere on the window.
 *
 * <p>A drop comes to the innermost part that would take any, and is not handed on by one that takes no files. So fields, tables
 * and lists are told to take none; what is cut, copied and pasted is not touched by that.
 */
final class FileDrop extends TransferHandler {
    private static final long serialVersionUID = 1L;

    private final transient Consumer<List<Path>> taker;

    private FileDrop(Consumer<List<Path>> taker) {
        this.taker = taker;
    }

    /**
     * From now on a window takes files.
     *
     * @param window what everything lies in
     * @param taker takes the files, on the event thread, after the drop is over
     */
    static void on(JComponent window, Consumer<List<Path>> taker) {
        window.setTransferHandler(new FileDrop(taker));
        follow(window);
    }

    private static void follow(Container all) {
        all.addContainerListener(new ContainerAdapter() {
            @Override
            public void componentAdded(ContainerEvent event) {
                passOn(event.getChild());
            }
        });
        for (Component part : all.getComponents()) {
            passOn(part);
        }
    }

    private static void passOn(Component part) {
        if (part instanceof JTextComponent || part instanceof JTable || part instanceof JList) {
            DropTarget none = new DropTarget();
            none.setActive(false);
            part.setDropTarget(none);
        } else if (part instanceof Container inside) {
            follow(inside);
        }
    }

    @Override
    public boolean canImport(TransferSupport drop) {
        boolean isFiles = drop.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
        if (isFiles && drop.isDrop() && (drop.getSourceDropActions() & COPY) == COPY) {
            drop.setDropAction(COPY);
        }
        return isFiles;
    }

    @Override
    public boolean importData(TransferSupport drop) {
        return canImport(drop) && take(drop);
    }

    private boolean take(TransferSupport drop) {
        List<Path> files = new ArrayList<>();
        try {
            for (Object file : (List<?>) drop.getTransferable().getTransferData(DataFlavor.javaFileListFlavor)) {
                files.add(((File) file).toPath());
            }
        } catch (UnsupportedFlavorException | IOException gone) {
            return false;
        }
        // What they were dragged from waits for the end of the drop: no dialog may stand before that.
        EventQueue.invokeLater(() -> taker.accept(files));
        return true;
    }
}
