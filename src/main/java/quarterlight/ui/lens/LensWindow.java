package quarterlight.ui.lens;

import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Window;
import java.awt.event.ActionEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.AbstractAction;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import javax.swing.KeyStroke;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import quarterlight.ui.kit.Dialogs;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Prose;
import quarterlight.ui.kit.place.ChangedRows;
import quarterlight.ui.kit.view.PhotoCanvas;
import quarterlight.ui.kit.view.PhotoShapes;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.visit.annotation.Outline;
import quarterlight.visit.photo.Photo;

/**
 * The grounds of one thing, one below the other; beside them the photo of the one in hand, near what it is about. Up and Down step, Enter goes
 * there, Escape leaves. Event thread only.
 */
public final class LensWindow {
    private static final int LIST_PX = 380;

    private final Texts texts;
    private final OpenVisit visit;
    private final Consumer<ChangedRows> go;
    private final JDialog dialog;
    private final JLabel title = Look.heading(" ");
    private final JList<Ground> list = new JList<>();
    private final JTextArea text = Prose.area();
    private final JTextArea rule = Prose.area();
    private final PhotoCanvas photo;

    /** @param go goes where rows, zones and photos stand in the window */
    public LensWindow(Texts texts, OpenVisit visit, Window owner, Consumer<ChangedRows> go) {
        this.texts = texts;
        this.visit = visit;
        this.go = go;
        this.photo = new PhotoCanvas(texts, visit);
        photo.setName("lens-photo");
        photo.overlay(new OutlineInk());
        dialog = new JDialog(owner, texts.get("lens.title"));
        dialog.setName("lens");
        list.setName("lens-grounds");
        Look.named(list, texts.get("lens.title"));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Cell());
        list.addListSelectionListener(e -> show());
        list.getInputMap().put(KeyStroke.getKeyStroke("ENTER"), "go");
        list.getActionMap().put("go", new AbstractAction() {
            @Override
            public void actionPerformed(ActionEvent e) {
                goThere();
            }
        });
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                if (e.getClickCount() == 2) {
                    goThere();
                }
            }
        });
        dialog.add(content());
        Dialogs.leaveByEscape(dialog);
        Dialogs.open(dialog, owner, 860, 540);
    }

    private JPanel content() {
        JPanel content = new JPanel(
                new MigLayout("insets 12, gap 8 6", "[" + LIST_PX + "!,fill][grow,fill,0::]", "[][grow,fill][]"));
        content.add(title, "span, wmin 0, wrap");
        JScrollPane grounds =
                new JScrollPane(list, JScrollPane.VERTICAL_SCROLLBAR_AS_NEEDED, JScrollPane.HORIZONTAL_SCROLLBAR_NEVER);
        Look.bare(grounds);
        content.add(grounds);
        JPanel near = new JPanel(new MigLayout("insets 0, gapy 8, wrap 1, hidemode 3", "[grow,fill,0::]"));
        near.add(photo, "growy, pushy, hmin 0");
        JPanel words = new JPanel(new MigLayout("insets 0, gapy 4, wrap 1, fillx", "[grow,fill,0::]"));
        words.add(text, "wmin 0");
        words.add(Look.secondary(rule), "wmin 0");
        near.add(words, "wmin 0, growx");
        content.add(near, "wrap");
        content.add(Look.secondary(new JLabel(texts.get("lens.hint"))), "span, wmin 0");
        return content;
    }

    /** Two lines: what it is, and what it says as far as there is room. */
    private static final class Cell implements ListCellRenderer<Ground> {
        private final JPanel panel =
                new JPanel(new MigLayout("insets 5 8 5 8, gapy 0, wrap 1, fillx", "[grow,fill,0::]"));
        private final JLabel head = Look.secondary(new JLabel());
        private final JLabel text = new JLabel();

        Cell() {
            panel.add(head, "wmin 0");
            panel.add(text, "wmin 0");
            panel.setPreferredSize(new Dimension(Look.px(LIST_PX - 20), Look.px(48)));
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Ground> of, Ground value, int index, boolean selected, boolean focused) {
            head.setText(value.head());
            text.setText(value.text());
            panel.getAccessibleContext().setAccessibleName(value.head() + ": " + value.text());
            panel.setBackground(selected ? of.getSelectionBackground() : of.getBackground());
            text.setForeground(selected ? of.getSelectionForeground() : of.getForeground());
            return panel;
        }
    }

    /** The outline that the ground in hand is about. */
    private final class OutlineInk implements PhotoCanvas.Overlay {
        @Override
        public void paint(Graphics2D g, Photo shown, double scale) {
            outline().ifPresent(outline -> {
                g.setColor(Look.palette().accent());
                g.setStroke(new BasicStroke((float) (2 / scale)));
                g.draw(PhotoShapes.path(outline));
            });
        }

        @Override
        public boolean takesMouse() {
            return false;
        }
    }

    private Optional<Outline> outline() {
        return Optional.ofNullable(list.getSelectedValue()).flatMap(Ground::outline);
    }

    /** Shows the grounds of something. */
    void show(String of, List<Ground> grounds) {
        title.setText(texts.get("lens.of", of));
        list.setListData(grounds.toArray(Ground[]::new));
        list.setSelectedIndex(0);
        dialog.setVisible(true);
        list.requestFocusInWindow();
    }

    private void show() {
        Optional<Ground> ground = Optional.ofNullable(list.getSelectedValue());
        text.setText(ground.map(Ground::text).orElse(""));
        rule.setText(ground.map(Ground::rule).orElse(""));
        Optional<Photo> shown = ground.flatMap(Ground::photo).flatMap(visit.visit()::photo);
        photo.show(shown);
        photo.setVisible(shown.isPresent());
        outline().ifPresent(outline -> photo.closeTo(PhotoShapes.path(outline).getBounds2D()));
        photo.repaint();
        dialog.getRootPane().revalidate();
    }

    private void goThere() {
        Optional.ofNullable(list.getSelectedValue()).ifPresent(ground -> {
            dialog.dispose();
            go.accept(ground.where());
        });
    }
}
