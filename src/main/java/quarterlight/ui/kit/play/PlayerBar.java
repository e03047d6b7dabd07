package quarterlight.ui.kit.play;

import java.util.Locale;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.Look;

/** The buttons of a player: play and hold, steps, speed, where it stands, and what it cannot do. Event thread only. */
public final class PlayerBar extends JPanel {
    private static final double LEAP_S = 5;

    private final transient Texts texts;
    private final transient Player player;
    private final JButton play;
    private final JLabel time = new JLabel(" ");
    private final JLabel said = new JLabel(" ");
    private final JComboBox<String> speed = new JComboBox<>();
    private boolean filling;

    public PlayerBar(Texts texts, Player player) {
        super(new MigLayout("insets 2 8 2 8, gap 2, fillx", "[][][][][][]8[]8[][grow,fill]", "[26!]"));
        this.texts = texts;
        this.player = player;
        button("play.back", "\u2212" + "5\u2009s", () -> player.skip(-LEAP_S));
        button("play.step-back", "\u25c2", () -> player.step(-1));
        play = button("play.toggle", "", player::toggle);
        button("play.step-on", "\u25b8", () -> player.step(1));
        button("play.on", "+5\u2009s", () -> player.skip(LEAP_S));
        DefaultComboBoxModel<String> speeds = new DefaultComboBoxModel<>();
        Player.SPEEDS.forEach(times -> speeds.addElement(times(times)));
        speed.setModel(speeds);
        speed.setName("play-speed");
        speed.setFocusable(false);
        speed.addActionListener(e -> {
            if (!filling) {
                player.speed(Player.SPEEDS.get(Math.max(0, speed.getSelectedIndex())));
            }
        });
        add(Look.named(speed, texts.get("play.speed")));
        time.setName("play-time");
        add(Look.secondary(time), "wmin pref");
        said.setName("play-said");
        add(Look.secondary(said), "wmin 0");
        player.onChange(this::render);
        render();
    }

    private static String times(double times) {
        return String.format(Locale.ROOT, "%s\u00d7", times == Math.rint(times) ? (int) times : times);
    }

    private JButton button(String key, String face, Runnable work) {
        JButton button = new JButton(face);
        button.setName(key);
        button.setFocusable(false);
        button.putClientProperty("JButton.buttonType", "toolBarButton");
        button.setToolTipText(texts.get(key));
        button.addActionListener(e -> work.run());
        add(Look.named(button, texts.get(key)), "wmin pref");
        return button;
    }

    private void render() {
        setVisible(player.isLoaded());
        play.setText(texts.get(player.isPlaying() ? "play.hold" : "play.play"));
        filling = true;
        speed.setSelectedIndex(Math.max(0, Player.SPEEDS.indexOf(player.speed())));
        filling = false;
        time.setText(
                Double.isInfinite(player.length())
                        ? clock(player.position())
                        : texts.get("play.time", clock(player.position()), clock(player.length())));
        said.setText(player.problem()
                .map(problem -> texts.get("play.problem", problem))
                .orElse(
                        switch (player.said()) {
                            case NO_DEVICE -> texts.get("play.no-device");
                            case NO_SOUND -> texts.get("play.no-sound");
                            case NOTHING, NO_RECORDING -> "";
                        }));
        said.setToolTipText(said.getText().isEmpty() ? null : said.getText());
    }

    /** Such as 1:02.4. */
    static String clock(double seconds) {
        long tenths = (long) Math.floor(seconds * 10);
        return String.format(Locale.ROOT, "%d:%02d.%d", tenths / 600, tenths / 10 % 60, tenths % 10);
    }
}
