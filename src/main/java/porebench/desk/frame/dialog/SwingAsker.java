package porebench.desk.frame.dialog;

import java.awt.KeyboardFocusManager;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import javax.swing.filechooser.FileNameExtensionFilter;
import javax.swing.text.JTextComponent;
import net.miginfocom.swing.MigLayout;
import org.jspecify.annotations.Nullable;
import porebench.desk.Asker;
import porebench.desk.DeskModel;
import porebench.desk.Settings;
import porebench.desk.UsedReasons;
import porebench.desk.form.EnterOrder;
import porebench.desk.form.FileNames;
import porebench.desk.form.Form;
import porebench.desk.form.TwoVersions;
import porebench.desk.form.Typing;
import porebench.method.Problem;
import porebench.method.ProblemText;
import porebench.method.Texts;
import porebench.port.OutputFile;
import porebench.port.Spoken;
import porebench.record.book.Stamp;

/** Asks and tells in real dialogs. */
public final class SwingAsker implements Asker {
    private static final String FOLDER = "folder";

    private final Texts texts;
    private ProblemText problemText;
    private final Settings settings;
    private final UsedReasons reasons;
    private final Supplier<Optional<Path>> log;
    private @Nullable DeskModel desk;

    /**
     * Makes an asker.
     *
     * @param log returns the file in which the details of a failure stand; empty when there is none
     */
    public SwingAsker(Locale locale, Settings settings, Supplier<Optional<Path>> log) {
        this.texts = FrameTexts.in(locale);
        this.problemText = ProblemText.in(locale);
        this.settings = settings;
        this.reasons = new UsedReasons(settings);
        this.log = log;
    }

    /** Tells whom to ask, and where to write down, who works here. */
    public void serve(DeskModel served) {
        desk = served;
        problemText = served.tools().problemText();
    }

    @Override
    public Optional<String> reason(JComponent over, String title, String question, String actName) {
        JTextArea field = sentences();
        String act = actName + "\n" + question;
        JComponent shown = WithReasons.below(field, reasons.of(act), texts);
        Optional<String> reason = words(over, title, question, field, shown, actName, "ask.reason-missing", true);
        reason.ifPresent(given -> reasons.use(act, given));
        return reason;
    }

    @Override
    public Optional<String> remark(JComponent over, String title, String question, String actName) {
        JTextArea field = sentences();
        field.setName("answer");
        field.getAccessibleContext().setAccessibleName(texts.get("ask.remark"));
        JPanel content = new JPanel(new MigLayout("insets 0, wrap 1", "[grow,fill]", "[]10[]4[]"));
        content.add(AskDialog.text(question));
        content.add(Form.heading(texts.get("ask.remark"), "quiet"));
        content.add(new JScrollPane(field));
        AskDialog dialog = new AskDialog(over, title, content);
        dialog.button("accept", actName);
        dialog.button("cancel", texts.get("ask.cancel"));
        return dialog.askForWords() == 0 ? Optional.of(field.getText().strip()) : Optional.empty();
    }

    private static JTextArea sentences() {
        JTextArea field = new JTextArea(3, 40);
        field.setLineWrap(true);
        field.setWrapStyleWord(true);
        // In a text of one sentence the tabulator leads on to the buttons.
        field.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
        field.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
        return field;
    }

    @Override
    public Optional<String> person(JComponent over) {
        DeskModel served = desk;
        if (served == null) {
            return Optional.empty();
        }
        if (!served.person().isBlank()) {
            return Optional.of(served.person());
        }
        Optional<String> name = askPerson(over, "");
        name.ifPresent(served::setPerson);
        return name;
    }

    /** Asks who works here, also when somebody said so already. */
    Optional<String> askPerson(JComponent over, String before) {
        JTextField field = new JTextField(before, 30);
        return words(
                over,
                texts.get("ask.person.title"),
                texts.get("ask.person"),
                field,
                field,
                texts.get("ask.use"),
                "ask.person-missing",
                false);
    }

    @Override
    public Optional<String> name(JComponent over, String title, String question, String actName) {
        JTextField field = new JTextField(30);
        return words(over, title, question, field, field, actName, "ask.person-missing", false);
    }

    private Optional<String> words(
            JComponent over,
            String title,
            String question,
            JTextComponent field,
            JComponent shown,
            String actionName,
            String ifMissing,
            boolean isAct) {
        field.setName("answer");
        field.getAccessibleContext().setAccessibleName(question);
        JPanel content = new JPanel(new MigLayout("insets 0, wrap 1", "[grow,fill]", "[]10[]4[]"));
        content.add(AskDialog.text(question));
        content.add(shown);
        // Its line is there from the beginning, so that nothing moves when it is said.
        JLabel missing = Form.heading(" ", "fieldError");
        missing.setName("answer.message");
        content.add(missing);
        AskDialog dialog = new AskDialog(over, title, content);
        JButton accept = dialog.button("accept", actionName);
        dialog.button("cancel", texts.get("ask.cancel"));
        dialog.closesOnlyIf(accept, () -> {
            boolean isThere = !field.getText().isBlank();
            missing.setText(isThere ? " " : texts.get(ifMissing));
            field.requestFocusInWindow();
            return isThere;
        });
        Typing.follow(field, typed -> missing.setText(" "));
        if (isAct) {
            // A reason is one sentence: Enter goes on from it, and only the next one does the act. Before there is one
            // it stays.
            EnterOrder.bind(field, () -> {
                if (field.getText().isBlank()) {
                    missing.setText(texts.get(ifMissing));
                } else {
                    accept.requestFocusInWindow();
                }
            });
        }
        SwingUtilities.invokeLater(field::requestFocusInWindow);
        int chosen = isAct ? dialog.askForWords() : dialog.ask();
        return chosen == 0 ? AskDialog.filled(field.getText()) : Optional.empty();
    }

    @Override
    public boolean confirm(JComponent over, String title, String question, String actionName) {
        AskDialog dialog = new AskDialog(over, title, AskDialog.text(question));
        dialog.button("accept", actionName);
        dialog.button("cancel", texts.get("ask.cancel"));
        return dialog.askSafely() == 0;
    }

    @Override
    public Optional<List<Boolean>> both(
            JComponent over, String record, Stamp theirs, int number, List<TwoVersions.Line> lines) {
        return new BothDialog(texts, lines).ask(over, record, theirs, number, zone());
    }

    private ZoneId zone() {
        return desk == null ? ZoneOffset.UTC : desk.tools().zone();
    }

    @Override
    public Optional<Path> fileToOpen(JComponent over, String title, String extension) {
        JFileChooser chooser = chooser(over, title);
        KindsOfFile.name(chooser, extension, texts);
        return chooser.showOpenDialog(over) == JFileChooser.APPROVE_OPTION ? chosen(chooser) : Optional.empty();
    }

    @Override
    public Optional<Path> fileToOpen(JComponent over, String title, List<String> extensions) {
        JFileChooser chooser = chooser(over, title);
        chooser.setFileFilter(new FileNameExtensionFilter(
                texts.get("ask.files", String.join(", ", extensions)), extensions.toArray(String[]::new)));
        return chooser.showOpenDialog(over) == JFileChooser.APPROVE_OPTION ? chosen(chooser) : Optional.empty();
    }

    @Override
    public List<Path> filesToOpen(JComponent over, String title, String extension) {
        JFileChooser chooser = chooser(over, title);
        chooser.setMultiSelectionEnabled(true);
        KindsOfFile.name(chooser, extension, texts);
        if (chooser.showOpenDialog(over) != JFileChooser.APPROVE_OPTION) {
            return List.of();
        }
        settings.put(FOLDER, chooser.getCurrentDirectory().getPath());
        return Stream.of(chooser.getSelectedFiles()).map(File::toPath).toList();
    }

    @Override
    public Optional<Path> folder(JComponent over, String title) {
        JFileChooser chooser = chooser(over, title);
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        return chooser.showDialog(over, texts.get("ask.folder.use")) == JFileChooser.APPROVE_OPTION
                ? chosen(chooser)
                : Optional.empty();
    }

    @Override
    public Optional<OutputFile> fileToWrite(JComponent over, String title, String suggestedName) {
        return toWrite(
                over,
                title,
                suggestedName,
                chooser ->
                        withExtensionOf(suggestedName, chooser.getSelectedFile().toPath()),
                chooser -> KindsOfFile.name(chooser, suggestedName, texts));
    }

    @Override
    public Optional<OutputFile> fileToWrite(JComponent over, String title, String suggestedName, List<Kind> kinds) {
        KindsOfFile filters = new KindsOfFile(kinds, texts);
        return toWrite(over, title, suggestedName, filters::nameOf, filters::offer);
    }

    private Optional<OutputFile> toWrite(
            JComponent over,
            String title,
            String suggestedName,
            Function<JFileChooser, Path> naming,
            Consumer<JFileChooser> dressing) {
        JFileChooser chooser = chooser(over, title);
        dressing.accept(chooser);
        chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), FileNames.safe(suggestedName)));
        while (chooser.showSaveDialog(over) == JFileChooser.APPROVE_OPTION) {
            Path file = naming.apply(chooser);
            boolean isThere = Files.exists(file);
            boolean write = !isThere
                    || confirm(
                            over,
                            title,
                            texts.get("ask.replace", String.valueOf(file.getFileName())),
                            texts.get("ask.replace.action"));
            if (write) {
                chosen(chooser);
                return Optional.of(new OutputFile(file, isThere));
            }
        }
        return Optional.empty();
    }

    @Override
    public Optional<Path> newFile(JComponent over, String title, String suggestedName) {
        JFileChooser chooser = chooser(over, title);
        KindsOfFile.name(chooser, suggestedName, texts);
        chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), FileNames.safe(suggestedName)));
        while (chooser.showSaveDialog(over) == JFileChooser.APPROVE_OPTION) {
            Path file = withExtensionOf(suggestedName, chooser.getSelectedFile().toPath());
            // A file that is there is not read: it may be a lab book that is open here, whose locks would be lost.
            List<Problem> problems = Files.exists(file)
                    ? List.of(Problem.error("file", "book.file-exists", String.valueOf(file)))
                    : OutputFile.fresh(file).problems();
            if (problems.isEmpty()) {
                chosen(chooser);
                return Optional.of(file);
            }
            problems.forEach(problem -> tell(over, title, problemText.say(problem)));
        }
        return Optional.empty();
    }

    @Override
    public Optional<Path> place(
            JComponent over, String title, String suggestedName, Function<Path, String> ifThere, String actionName) {
        JFileChooser chooser = chooser(over, title);
        KindsOfFile.name(chooser, suggestedName, texts);
        chooser.setSelectedFile(new File(chooser.getCurrentDirectory(), FileNames.safe(suggestedName)));
        while (chooser.showSaveDialog(over) == JFileChooser.APPROVE_OPTION) {
            Path file = withExtensionOf(suggestedName, chooser.getSelectedFile().toPath());
            if (!Files.exists(file) || confirm(over, title, ifThere.apply(file), actionName)) {
                chosen(chooser);
                return Optional.of(file);
            }
        }
        return Optional.empty();
    }

    private static Path withExtensionOf(String suggestedName, Path file) {
        int dot = suggestedName.lastIndexOf('.');
        String name = String.valueOf(file.getFileName());
        return dot < 0 || name.indexOf('.') >= 0 ? file : file.resolveSibling(name + suggestedName.substring(dot));
    }

    private JFileChooser chooser(@Nullable JComponent over, String title) {
        // Swing says this one text in the machine's language, whatever the language of the chooser.
        UIManager.put("FileChooser.acceptAllFileFilterText", texts.get("ask.files.all"));
        JFileChooser chooser = new JFileChooser(settings.get(FOLDER, System.getProperty("user.home", ".")));
        chooser.setDialogTitle(TrainingBand.title(over, title, texts));
        chooser.setLocale(texts.locale());
        SpokenDialog.follow(chooser);
        return chooser;
    }

    private Optional<Path> chosen(JFileChooser chooser) {
        settings.put(FOLDER, chooser.getCurrentDirectory().getPath());
        return Optional.ofNullable(chooser.getSelectedFile()).map(File::toPath);
    }

    @Override
    public void problems(JComponent over, String title, List<Problem> problems) {
        JComponent table = new ProblemTable(problems, problemText, texts).component();
        CopyButton.read(over, title, table, () -> CopyButton.words(problems, problemText, texts), texts);
    }

    @Override
    public void failure(JComponent over, String doing, Exception cause) {
        if (cause instanceof CancellationException) {
            return;
        }
        System.getLogger(SwingAsker.class.getName()).log(System.Logger.Level.WARNING, doing, cause);
        String words = texts.get("ask.failure", doing, reasonOf(cause, texts.locale()));
        String details = log.get()
                .map(file -> "\n\n" + texts.get("failure.log", file.toString()))
                .orElse("");
        tell(over, texts.get("ask.failure.title"), words + details);
    }

    @Override
    public void tell(@Nullable JComponent over, String title, String words) {
        CopyButton.read(over, title, AskDialog.scrolled(AskDialog.text(words)), () -> words, texts);
    }

    /** Returns the messages of a failure and its causes, each once. */
    public static String reasonOf(Throwable failure, Locale locale) {
        StringBuilder words = new StringBuilder();
        for (Throwable each = failure; each != null; each = each.getCause()) {
            String message = each instanceof Spoken spoken ? spoken.say(locale) : each.getMessage();
            String said = message == null ? each.getClass().getSimpleName() : message;
            if (words.indexOf(said) < 0) {
                words.append(words.isEmpty() ? "" : "\n").append(said);
            }
        }
        return words.toString();
    }
}
