package quarterlight.ui.compare;

import java.awt.Color;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import net.miginfocom.swing.MigLayout;
import quarterlight.compare.matter.CellClass;
import quarterlight.compare.said.ComparisonSheet;
import quarterlight.compare.said.RowText;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Palette;
import quarterlight.ui.kit.look.TallPanel;

/**
 * The first part: the cars, then everything grave or major on any of them, most severe first, then what is minor. A row opens the same place of the
 * two cars in detail. Event thread only.
 */
final class MattersPane extends JScrollPane {
    private static final int MAX_CARS_WITH_PICTURES = 3;

    private final transient Texts texts;
    private final transient CarPortraits portraits;
    private final transient Consumer<RowText> opened;
    private final TallPanel content =
            new TallPanel(new MigLayout("insets 12 16 24 16, wrap 1, gapy 6, fillx", "[grow,fill,0:100:]"));

    /** @param opened told which row the user wants to see in detail */
    MattersPane(Texts texts, CarPortraits portraits, Consumer<RowText> opened) {
        this.texts = texts;
        this.portraits = portraits;
        this.opened = opened;
        setViewportView(content);
        setHorizontalScrollBarPolicy(HORIZONTAL_SCROLLBAR_NEVER);
        getVerticalScrollBar().setUnitIncrement(16);
        Look.bare(this);
    }

    void show(ComparisonSheet sheet) {
        content.removeAll();
        content.add(new CarHeads(texts, sheet, portraits));
        content.add(
                Look.heading(texts.get(sheet.cars().size() == 2 ? "compare.heavy.two" : "compare.heavy")), "gaptop 8");
        content.add(Sentence.of(sheet.care(), Look.palette().secondInk()), "wmin 0");
        if (sheet.heavy().isEmpty()) {
            content.add(Sentence.of(ComparisonSheet.nothingHeavy()), "wmin 0");
        }
        sheet.heavy().forEach(row -> content.add(row(row, sheet), "wmin 0"));
        if (!sheet.light().isEmpty()) {
            content.add(Look.heading(texts.get("compare.light")), "gaptop 16");
            sheet.light().forEach(row -> content.add(row(row, sheet), "wmin 0"));
        }
        content.add(
                Sentence.of(String.join(" ", sheet.cautions()), Look.palette().caution()), "wmin 0, gaptop 12");
        content.revalidate();
        content.repaint();
    }

    private JComponent row(RowText row, ComparisonSheet sheet) {
        int cars = row.cells().size();
        JPanel panel = new JPanel(new MigLayout(
                "insets 8 6 8 6, gap 16 2, fillx, novisualpadding",
                "[200!,fill]" + "[grow,fill,sg,0:100:]".repeat(cars),
                "[top]"));
        panel.setName("matter-row");
        panel.setOpaque(false);
        panel.setFocusable(true);
        panel.setBorder(border(Look.palette().line()));
        panel.add(what(row), "wmin 0, aligny top");
        for (int car = 0; car < cars; car++) {
            panel.add(cell(row.cells().get(car), car, sheet), "wmin 0, aligny top");
        }
        Look.named(panel, row.severity() + ", " + row.place() + ". " + row.contrast());
        opens(panel, row);
        return panel;
    }

    private static javax.swing.border.Border border(Color line) {
        return BorderFactory.createMatteBorder(1, 0, 0, 0, line);
    }

    private void opens(JPanel panel, RowText row) {
        panel.setToolTipText(texts.get("compare.open.tip"));
        panel.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                panel.requestFocusInWindow();
                if (e.getClickCount() == 2) {
                    opened.accept(row);
                }
            }
        });
        panel.addKeyListener(new KeyAdapter() {
            @Override
            public void keyPressed(KeyEvent e) {
                if (e.getKeyCode() == KeyEvent.VK_ENTER) {
                    opened.accept(row);
                } else if (e.getKeyCode() == KeyEvent.VK_DOWN) {
                    panel.transferFocus();
                } else if (e.getKeyCode() == KeyEvent.VK_UP) {
                    panel.transferFocusBackward();
                }
            }
        });
        panel.addFocusListener(new java.awt.event.FocusAdapter() {
            @Override
            public void focusGained(java.awt.event.FocusEvent e) {
                panel.setBorder(border(Look.palette().accent()));
                panel.setBackground(
                        Palette.mix(Look.palette().paper(), Look.palette().accent(), 0.12));
                panel.setOpaque(true);
                panel.scrollRectToVisible(new java.awt.Rectangle(panel.getSize()));
            }

            @Override
            public void focusLost(java.awt.event.FocusEvent e) {
                panel.setBorder(border(Look.palette().line()));
                panel.setOpaque(false);
                panel.repaint();
            }
        });
    }

    private JPanel what(RowText row) {
        JPanel what = new JPanel(new MigLayout("insets 0, wrap 1, gapy 2, fillx", "[grow,fill,0:100:]"));
        what.setOpaque(false);
        String severity = row.row().safety() ? texts.get("compare.safety", row.severity()) : row.severity();
        boolean grave = row.severity().equals("grave");
        what.add(Look.secondary(new JLabel(severity)));
        what.add(
                Sentence.strong(
                        row.place(),
                        grave ? Look.palette().grave() : Look.palette().ink()),
                "wmin 0");
        what.add(
                Sentence.of(
                        row.contrast(),
                        row.row().isOpen()
                                ? Look.palette().caution()
                                : Look.palette().secondInk()),
                "wmin 0");
        row.why().ifPresent(why -> what.add(Sentence.of(why, Look.palette().secondInk()), "wmin 0"));
        return what;
    }

    /** With a small picture of what shows it, where the cars leave room for one. */
    private JPanel cell(RowText.CellText cell, int car, ComparisonSheet sheet) {
        boolean picture = cell.photo().isPresent() && sheet.cars().size() <= MAX_CARS_WITH_PICTURES;
        JPanel panel = new JPanel(new MigLayout(
                "insets 0, gap 12 2, fillx", picture ? "[grow,fill,0:100:][]" : "[grow,fill,0:100:]", "[top]"));
        panel.setOpaque(false);
        JPanel words = new JPanel(new MigLayout("insets 0, wrap 1, gapy 2, fillx", "[grow,fill,0:100:]"));
        words.setOpaque(false);
        words.add(Sentence.strong(sheet.cars().get(car).letter() + "  " + cell.label(), ink(cell.kind())), "wmin 0");
        words.add(Sentence.of(cell.text()), "wmin 0");
        panel.add(words, "wmin 0");
        if (picture) {
            panel.add(portraits.of(car, cell.photo().orElseThrow()), "w 88!, h 60!");
        }
        return panel;
    }

    private static Color ink(CellClass kind) {
        return switch (kind) {
            case FOUND -> Look.palette().grave();
            case NOT_LOOKED_AT -> Look.palette().caution();
            case CLEAN, NOT_ON_THIS_CAR -> Look.palette().secondInk();
        };
    }

    /** Every word that stands on the pane, in its order; for those who read the window and for tests. */
    List<String> words() {
        return ComponentText.of(content);
    }
}
