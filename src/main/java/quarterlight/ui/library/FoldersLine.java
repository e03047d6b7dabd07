package quarterlight.ui.library;

import java.awt.Component;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.JButton;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import net.miginfocom.swing.MigLayout;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.look.Look;

/** Which folders are looked through, with what adds one and takes one away. Event thread only. */
final class FoldersLine extends JPanel {
    private static final long serialVersionUID = 1;

    private final transient UiContext parts;
    private final transient LibraryModel model;
    private final JLabel named = new JLabel();
    private final JButton change;

    FoldersLine(UiContext parts, LibraryModel model) {
        super(new MigLayout("insets 0, gapx 8", "[grow,0::][][]"));
        this.parts = parts;
        this.model = model;
        JButton add = new JButton(parts.texts().get("library.folder.add"));
        add.setName("library-add");
        add.addActionListener(e -> choose());
        change = new JButton(parts.texts().get("library.folder.leave"));
        change.setName("library-leave");
        change.addActionListener(e -> menu().show(change, 0, change.getHeight()));
        add(Look.secondary(named), "growx, wmin 0");
        add(add);
        add(change);
    }

    /** Shows the folders of the question at hand. */
    void showFolders() {
        List<Path> folders = model.question().folders();
        String all = folders.stream().map(Path::toString).collect(Collectors.joining(", "));
        named.setText(
                folders.isEmpty()
                        ? parts.texts().get("library.folders.none")
                        : parts.texts().get("library.folders", all));
        named.setToolTipText(folders.isEmpty() ? null : all);
        change.setEnabled(!folders.isEmpty());
    }

    private JPopupMenu menu() {
        JPopupMenu menu = new JPopupMenu();
        for (Path folder : model.question().folders()) {
            JMenuItem item = new JMenuItem(parts.texts().get("library.folder.leave.one", folder));
            item.addActionListener(e -> {
                List<Path> rest = new ArrayList<>(model.question().folders());
                rest.remove(folder);
                keep(rest);
            });
            menu.add(item);
        }
        return menu;
    }

    /** Asks for a folder of visits and looks through it too. */
    void choose() {
        JFileChooser chooser = new JFileChooser(
                parts.settings().settings().text("folder.library").orElse(null));
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        chooser.setDialogTitle(parts.texts().get("library.folder.add"));
        Component owner = getTopLevelAncestor();
        if (chooser.showDialog(owner, parts.texts().get("choice.choose")) != JFileChooser.APPROVE_OPTION) {
            return;
        }
        Path folder = chooser.getSelectedFile().toPath().toAbsolutePath().normalize();
        parts.settings().change(settings -> settings.with("folder.library", folder.toString()));
        List<Path> more = new ArrayList<>(model.question().folders());
        if (!more.contains(folder)) {
            more.add(folder);
        }
        keep(more);
    }

    private void keep(List<Path> folders) {
        parts.settings().change(settings -> LibraryFolders.with(settings, folders));
        model.change(question -> question.in(folders));
    }
}
