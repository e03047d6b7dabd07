package quarterlight.ui.dialog;

import java.awt.Component;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JOptionPane;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import quarterlight.archive.BagRefused;
import quarterlight.archive.signature.SigningKeyProblem;
import quarterlight.diagram.file.DiagramRefused;
import quarterlight.edit.EditRefused;
import quarterlight.edit.intake.IntakeRefused;
import quarterlight.language.Retold;
import quarterlight.photo.PictureUnreadable;
import quarterlight.photo.SoundUnreadable;
import quarterlight.photo.originals.OriginalsUnwritable;
import quarterlight.photo.speech.RecognizerUnusable;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.TableUnreadable;
import quarterlight.ui.kit.Problems;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;

/** Shows sentences in dialogs over the window; a fault of the program with a report that can be copied. Event thread only. */
public final class ProblemDialogs implements Problems {
    private static final System.Logger LOG = System.getLogger(ProblemDialogs.class.getName());

    private static final int MAX_LINES = 14;

    private final Texts texts;
    private final Component owner;
    private final Path log;

    public ProblemDialogs(Texts texts, Component owner, Path log) {
        this.texts = texts;
        this.owner = owner;
        this.log = log;
    }

    @Override
    public void tell(String sentence) {
        show(sentence, JOptionPane.WARNING_MESSAGE);
    }

    @Override
    public void remark(String sentence) {
        show(sentence, JOptionPane.INFORMATION_MESSAGE);
    }

    private void show(String sentence, int kind) {
        JOptionPane.showMessageDialog(owner, scrolled(message(sentence)), texts.get("app.name"), kind);
    }

    /** As high as its wrapped lines: before it has a width, an area takes each paragraph for one line, and the button would be cut off below. */
    static JTextArea message(String sentence) {
        JTextArea text = new JTextArea(sentence);
        text.setLineWrap(true);
        text.setWrapStyleWord(true);
        text.setEditable(false);
        text.setOpaque(false);
        text.setColumns(48);
        text.setFont(new JLabel().getFont());
        text.setSize(text.getPreferredSize().width, Short.MAX_VALUE);
        return text;
    }

    /** A long list is scrolled, so that the button stays on the screen. */
    private static Component scrolled(JTextArea text) {
        if (text.getLineCount() <= MAX_LINES) {
            return text;
        }
        text.setRows(MAX_LINES);
        text.setCaretPosition(0);
        return new JScrollPane(text);
    }

    @Override
    public void failed(Throwable failure) {
        if (hasSentence(failure)) {
            LOG.log(System.Logger.Level.WARNING, "not done", failure);
            tell(Retold.of(failure.getMessage()));
        } else {
            LOG.log(System.Logger.Level.ERROR, "a fault of the program", failure);
            fault(failure);
        }
    }

    /** The world failed or the input did not serve: the exception speaks to the user. */
    private static boolean hasSentence(Throwable failure) {
        return failure instanceof VisitProblem
                || failure instanceof EditRefused
                || failure instanceof BagRefused
                || failure instanceof SigningKeyProblem
                || failure instanceof IntakeRefused
                || failure instanceof OriginalsUnwritable
                || failure instanceof PictureUnreadable
                || failure instanceof SoundUnreadable
                || failure instanceof RecognizerUnusable
                || failure instanceof TableUnreadable
                || failure instanceof DiagramRefused
                || failure instanceof java.io.IOException;
    }

    private void fault(Throwable failure) {
        StringWriter report = new StringWriter();
        failure.printStackTrace(new PrintWriter(report));
        JTextArea area = new JTextArea(report.toString(), 12, 72);
        area.setEditable(false);
        Look.named(area, texts.get("fault.report"));
        JPanel panel = new JPanel(new MigLayout("insets 0, wrap 1", "[grow,fill]"));
        panel.add(new JLabel(texts.get("fault.sentence", log)));
        panel.add(new JScrollPane(area), "grow");
        JOptionPane.showMessageDialog(owner, panel, texts.get("app.name"), JOptionPane.ERROR_MESSAGE);
    }

    @Override
    public boolean confirm(String question, String goOn) {
        Object[] choices = {goOn, texts.get("choice.cancel")};
        return JOptionPane.showOptionDialog(
                        owner,
                        question,
                        texts.get("app.name"),
                        JOptionPane.DEFAULT_OPTION,
                        JOptionPane.QUESTION_MESSAGE,
                        null,
                        choices,
                        choices[1])
                == 0;
    }

    @Override
    public Optional<String> ask(String question, String title, String proposed) {
        Object answer =
                JOptionPane.showInputDialog(owner, question, title, JOptionPane.PLAIN_MESSAGE, null, null, proposed);
        return answer instanceof String text && !text.isBlank() ? Optional.of(text.strip()) : Optional.empty();
    }
}
