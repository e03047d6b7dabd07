package quarterlight.ui.kit.widget;

import java.util.List;
import java.util.function.Supplier;
import javax.swing.Action;
import javax.swing.JComponent;
import javax.swing.JMenuItem;
import javax.swing.JPopupMenu;
import javax.swing.event.PopupMenuEvent;
import javax.swing.event.PopupMenuListener;

/** The menu of a right click, of the menu key and of Shift+F10: what can be done with what is in hand there. Event thread only. */
public final class ContextMenu {
    private ContextMenu() {}

    /** @param actions asked each time the menu opens; only those that can be done are offered */
    public static void on(JComponent component, Supplier<List<? extends Action>> actions) {
        JPopupMenu menu = new JPopupMenu();
        menu.setName("context-menu");
        menu.addPopupMenuListener(new PopupMenuListener() {
            @Override
            public void popupMenuWillBecomeVisible(PopupMenuEvent e) {
                menu.removeAll();
                actions.get().stream().filter(Action::isEnabled).forEach(menu::add);
                menu.pack();
            }

            /** Keys of items that stay in a closed menu would go on working. */
            @Override
            public void popupMenuWillBecomeInvisible(PopupMenuEvent e) {
                javax.swing.SwingUtilities.invokeLater(() -> {
                    if (!menu.isVisible()) {
                        menu.removeAll();
                        menu.add(new JMenuItem());
                    }
                });
            }

            @Override
            public void popupMenuCanceled(PopupMenuEvent e) {
                // filled anew next time
            }
        });
        // a menu without items would not be shown, so never be filled
        menu.add(new JMenuItem());
        component.setComponentPopupMenu(menu);
    }
}
