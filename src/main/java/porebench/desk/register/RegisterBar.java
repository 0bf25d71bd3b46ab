package porebench.desk.register;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.Action;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import porebench.desk.DeskModel;
import porebench.desk.form.Choices;
import porebench.desk.form.Commands;
import porebench.desk.form.Form;
import porebench.desk.table.FilterLine;
import porebench.desk.table.RowTable;
import porebench.desk.table.TableOrder;
import porebench.evidence.RegisterRow;
import porebench.method.Answer;
import porebench.method.Texts;
import porebench.quantity.Symbolic;

/** The bar over the register: which mixes are on view, the words they must have, the views kept, and what is done with them. */
final class RegisterBar {
    private final DeskModel desk;
    private final RegisterModel model;
    private final Texts texts;
    private final RowTable<RegisterRow> table;
    private final FilterLine filter;
    private final Runnable refreshed;
    private final JComponent page;
    private final JPanel bar =
            new JPanel(new MigLayout("insets 0, fillx, wrap 1, hidemode 3", "[grow,fill,0::]", "[]6[]"));
    private final JComboBox<Object> views;
    private final JLabel told = Form.heading(" ", "quiet");
    private final JCheckBox overTime = new JCheckBox();
    private final Action forget;
    private final Action keep;
    private final RegisterActions actions;
    private Object shown = Wanted.ALL;

    /**
     * Makes the bar.
     *
     * @param page the page, for dialogs to stand over
     * @param open opens the chosen mix
     * @param refreshed is called when other mixes are wanted
     */
    RegisterBar(
            DeskModel desk,
            RegisterModel model,
            RowTable<RegisterRow> table,
            JComponent page,
            Action open,
            Runnable refreshed) {
        this.desk = desk;
        this.model = model;
        this.texts = model.texts();
        this.table = table;
        this.page = page;
        this.refreshed = refreshed;
        filter = new FilterLine(table, texts.locale());
        keep = Commands.of(texts.get("register.keep-view"), this::keep);
        forget = Commands.of(texts.get("register.forget-view"), this::forget);
        actions = new RegisterActions(desk, model, page, () -> TableOrder.rows(table), told::setText);
        views = Choices.of("register.views", List.<Object>of(), this::words, this::turnTo);
        told.setName("register.told");
        overTime.setName("register.over-time");
        overTime.setOpaque(false);
        Commands.say(overTime, texts.get("register.show-over-time"));
        overTime.setSelected(model.showsOverTime());
        overTime.addActionListener(event -> {
            model.showOverTime(overTime.isSelected());
            refreshed.run();
        });
        JLabel label = Form.label(texts.get("register.view"), views);
        JPanel first = line("[]6[0:200:]6[]6[]push[]12[]");
        first.add(label);
        first.add(views, "wmin 120");
        first.add(Commands.button("register.keep-view", keep));
        first.add(Commands.button("register.forget-view", forget));
        first.add(overTime);
        first.add(Commands.button("register.open", open));
        JPanel second = line("[0:260:320,fill]12[grow,fill,0:0:]12[]6[]6[]");
        second.add(filter.component(), "wmin 0");
        second.add(told, "wmin 0");
        second.add(Commands.button("register.manyCards", actions.cards));
        second.add(Commands.button("register.print", actions.print));
        second.add(Commands.button("register.save", actions.save));
        bar.setOpaque(false);
        bar.add(first, "wmin 0");
        bar.add(second, "wmin 0");
        refresh();
    }

    private static JPanel line(String columns) {
        JPanel line = new JPanel(new MigLayout("insets 0, fillx", columns, "[]"));
        line.setOpaque(false);
        return line;
    }

    JComponent component() {
        return bar;
    }

    /** Returns whether the plot over time is wanted. */
    boolean showsOverTime() {
        return overTime.isSelected();
    }

    private String words(Object view) {
        return view instanceof RegisterView kept
                ? kept.name()
                : texts.get("register.wanted." + ((Symbolic) view).symbol());
    }

    /** Shows the views there are, the one on view chosen. */
    void refresh() {
        List<Object> all = new ArrayList<>(List.of(Wanted.values()));
        all.addAll(model.views());
        shown = all.contains(shown) ? shown : model.wanted();
        Choices.show(views, all, Optional.of(shown));
        forget.setEnabled(shown instanceof RegisterView);
    }

    private void turnTo(Object view) {
        shown = view;
        told.setText(" ");
        if (view instanceof RegisterView kept) {
            model.want(kept.wanted());
            refreshed.run();
            filter.seek(kept.sought());
            TableOrder.put(table, kept.order());
        } else if (view instanceof Wanted which) {
            model.want(which);
            refreshed.run();
        }
    }

    private void keep() {
        desk.tools()
                .asker()
                .name(
                        page,
                        texts.get("register.keep-view.title"),
                        texts.get("register.keep-view.question"),
                        texts.get("register.keep-view.act"))
                .ifPresent(this::keep);
    }

    private void keep(String name) {
        Answer<RegisterView> answer =
                model.keep(new RegisterView(name, model.wanted(), filter.sought(), TableOrder.of(table)));
        answer.value().ifPresent(view -> shown = view);
        refresh();
        told.setText(answer.value()
                .map(view -> texts.get("register.view-kept", view.name()))
                .orElseGet(
                        () -> desk.tools().problemText().say(answer.problems().get(0))));
    }

    private void forget() {
        if (shown instanceof RegisterView kept) {
            model.forget(kept.name());
            refresh();
            told.setText(texts.get("register.view-forgotten", kept.name()));
        }
    }
}
