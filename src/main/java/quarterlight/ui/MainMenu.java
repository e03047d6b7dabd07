package quarterlight.ui;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JMenu;
import javax.swing.JMenuBar;
import javax.swing.JMenuItem;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.SwingUtilities;
import javax.swing.event.MenuEvent;
import javax.swing.event.MenuListener;
import quarterlight.language.Language;
import quarterlight.ui.diagram.Layer;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.Settings;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Sight;
import quarterlight.ui.kit.visit.Station;
import quarterlight.ui.kit.visit.StationScreen;

/** The menu bar: what is not used every minute stands here, with its key. Event thread only. */
final class MainMenu extends JMenuBar {
    private final transient Texts texts;
    private final transient DeskActions actions;
    private final transient MainWindow window;
    private final JMenu station;

    MainMenu(Texts texts, DeskActions actions, MainWindow window) {
        this.texts = texts;
        this.actions = actions;
        this.window = window;
        add(visitMenu());
        add(editMenu());
        add(viewMenu());
        station = filled("menu.station", this::fillStation);
        add(station);
        add(helpMenu());
    }

    /** Another visit is open. */
    void visitOpened(VisitPanel bench) {
        station.setText(texts.get("menu.station"));
    }

    private JMenu menu(String key) {
        JMenu menu = new JMenu(texts.get(key));
        menu.setMnemonic(texts.get(key + ".letter").charAt(0));
        return menu;
    }

    private interface Filling {
        void fill(JMenu menu);
    }

    /** A menu whose items are made when it opens. */
    private JMenu filled(String key, Filling filling) {
        JMenu menu = menu(key);
        menu.addMenuListener(new MenuListener() {
            @Override
            public void menuSelected(MenuEvent e) {
                menu.removeAll();
                filling.fill(menu);
            }

            /** Keys of items that stay in a closed menu would go on working, also for a station that is not in front. */
            @Override
            public void menuDeselected(MenuEvent e) {
                SwingUtilities.invokeLater(menu::removeAll);
            }

            @Override
            public void menuCanceled(MenuEvent e) {
                // filled anew next time
            }
        });
        return menu;
    }

    private JMenu visitMenu() {
        JMenu menu = menu("menu.visit");
        menu.add(actions.newVisit());
        menu.add(actions.openVisit());
        menu.add(filled("menu.recent", this::fillRecent));
        menu.add(actions.library());
        menu.add(actions.samples());
        menu.addSeparator();
        menu.add(actions.facts());
        menu.add(actions.drawing());
        menu.add(actions.takeIn());
        menu.add(actions.addTable());
        menu.add(actions.sheet());
        menu.add(actions.twoCars());
        menu.addSeparator();
        menu.add(actions.closeVisit());
        menu.add(actions.quit());
        return menu;
    }

    private void fillRecent(JMenu menu) {
        for (Path visit : actions.recent()) {
            JMenuItem item = menu.add(new JMenuItem(visit.toString()));
            item.addActionListener(e -> window.open(visit));
        }
        if (menu.getItemCount() == 0) {
            menu.add(new JMenuItem(texts.get("menu.recent.none"))).setEnabled(false);
        }
    }

    private JMenu editMenu() {
        JMenu menu = menu("menu.edit");
        menu.add(actions.undo());
        menu.add(actions.redo());
        menu.addSeparator();
        menu.add(actions.grounds());
        menu.add(actions.nextDoubt());
        menu.add(actions.leaveDoubt());
        return menu;
    }

    private JMenu viewMenu() {
        JMenu menu = filled("menu.view", this::fillView);
        return menu;
    }

    private void fillView(JMenu menu) {
        for (Station one : Station.values()) {
            menu.add(actions.station(one));
        }
        menu.addSeparator();
        window.bench().ifPresent(bench -> {
            for (Layer layer : Layer.values()) {
                JCheckBoxMenuItem item = new JCheckBoxMenuItem(
                        texts.get("layer.name", texts.get(layer.textKey())),
                        bench.diagram().diagram().layers().contains(layer));
                item.addActionListener(e -> bench.diagram().show(layer, item.isSelected()));
                menu.add(item);
            }
            menu.addSeparator();
        });
        menu.add(actions.hideDiagram());
        menu.add(actions.photoBeside());
        window.bench().ifPresent(bench -> {
            JMenu picture = menu("menu.picture");
            bench.pictureCommands().forEach(picture::add);
            menu.add(picture);
        });
        menu.add(actions.unit());
        menu.addSeparator();
        menu.add(textSizes());
        menu.add(actions.brightness());
        menu.add(choice("do.contrast", actions.settings().sight().contrast(), on -> s -> s.withContrast(on)));
        menu.add(choice("do.still", actions.settings().sight().still(), on -> s -> s.withStill(on)));
        menu.addSeparator();
        menu.add(languages());
    }

    /** Languages by their own names: whoever cannot read the window has to find theirs. */
    private JMenu languages() {
        JMenu menu = new JMenu(texts.get("menu.language"));
        Optional<Language> chosen = actions.settings().chosenLanguage();
        menu.add(language(texts.get("menu.language.system"), Optional.empty(), chosen));
        Language.offered().forEach(one -> menu.add(language(one.ownName(), Optional.of(one), chosen)));
        return menu;
    }

    private JRadioButtonMenuItem language(String name, Optional<Language> language, Optional<Language> chosen) {
        JRadioButtonMenuItem item = new JRadioButtonMenuItem(name, language.equals(chosen));
        item.addActionListener(e -> actions.speak(language));
        return item;
    }

    private JMenu textSizes() {
        JMenu sizes = new JMenu(texts.get("menu.text"));
        int now = actions.settings().sight().textPercent();
        for (int percent = Sight.USUAL_PERCENT; percent <= Sight.MOST_PERCENT; percent += Sight.STEP_PERCENT) {
            int wanted = percent;
            JRadioButtonMenuItem item =
                    new JRadioButtonMenuItem(texts.get("menu.text.percent", percent), percent == now);
            item.addActionListener(e -> actions.see(s -> s.withTextPercent(wanted)));
            sizes.add(item);
        }
        sizes.addSeparator();
        sizes.add(actions.larger());
        sizes.add(actions.smaller());
        return sizes;
    }

    private JCheckBoxMenuItem choice(String key, boolean now, Function<Boolean, UnaryOperator<Settings>> change) {
        JCheckBoxMenuItem item = new JCheckBoxMenuItem(texts.get(key), now);
        item.addActionListener(e -> actions.see(change.apply(item.isSelected())));
        return item;
    }

    private void fillStation(JMenu menu) {
        window.bench().flatMap(VisitPanel::front).map(StationScreen::commands).ifPresent(commands -> {
            for (Command command : commands) {
                if (command.isFirstOfSection() && menu.getItemCount() > 0) {
                    menu.addSeparator();
                }
                menu.add(command);
            }
        });
        if (menu.getItemCount() == 0) {
            menu.add(new JMenuItem(texts.get("menu.station.none"))).setEnabled(false);
        }
    }

    private JMenu helpMenu() {
        JMenu menu = menu("menu.help");
        menu.add(actions.help());
        menu.add(actions.keys());
        menu.add(actions.manual());
        menu.addSeparator();
        menu.add(actions.about());
        return menu;
    }
}
