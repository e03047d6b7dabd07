package quarterlight.ui.kit.look;

import static quarterlight.diagram.ink.InkPalette.hex;

import com.formdev.flatlaf.FlatDarkLaf;
import com.formdev.flatlaf.FlatLaf;
import com.formdev.flatlaf.FlatLightLaf;
import java.awt.Component;
import java.awt.Font;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.swing.AbstractButton;
import javax.swing.BorderFactory;
import javax.swing.InputMap;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JSpinner;
import javax.swing.KeyStroke;
import javax.swing.UIManager;

/** Puts the palette and the typeface over the whole window, light or dark. Event thread only. */
public final class Look {
    static final String PALETTE_KEY = "quarterlight.palette";
    private static final String STILL_KEY = "quarterlight.still";
    private static final int WORK_SIZE = 13;
    private static final int BLINK_MS = 500;

    private Look() {}

    /** Installs the look; windows that are open change at once. The typeface was registered before, off the event thread. */
    public static void install(Palette palette) {
        install(Sight.of(palette));
    }

    /** The same, with the size of text and all else that eyes ask for. */
    public static void install(Sight sight) {
        Palette palette = sight.palette();
        float scale = sight.textPercent() / 100f;
        FlatLaf.setPreferredFontFamily(Typeface.FAMILY);
        FlatLaf.setPreferredSemiboldFontFamily(Typeface.FAMILY + " SemiBold");
        FlatLaf.setGlobalExtraDefaults(defaults(palette));
        if (palette.dark()) {
            FlatDarkLaf.setup();
        } else {
            FlatLightLaf.setup();
        }
        UIManager.put("defaultFont", new Font(Typeface.FAMILY, Font.PLAIN, Math.round(WORK_SIZE * scale)));
        UIManager.put("ScrollPane.smoothScrolling", !sight.still());
        UIManager.put(STILL_KEY, sight.still());
        List.of("TextField", "TextArea", "FormattedTextField", "PasswordField", "EditorPane", "TextPane")
                .forEach(field -> UIManager.put(field + ".caretBlinkRate", sight.still() ? 0 : BLINK_MS));
        UIManager.put(PALETTE_KEY, palette);
        freeKeys();
        FlatLaf.updateUI();
    }

    /** Keys that split panes would take although commands of the window have them. */
    private static void freeKeys() {
        if (UIManager.get("SplitPane.ancestorInputMap") instanceof InputMap keys) {
            keys.remove(KeyStroke.getKeyStroke("F6"));
            keys.remove(KeyStroke.getKeyStroke("F8"));
        }
    }

    /** Whether nothing is to move by itself. */
    public static boolean still() {
        return Boolean.TRUE.equals(UIManager.get(STILL_KEY));
    }

    /** A length in px as large as the text is: given for the usual size. */
    public static int px(int usual) {
        Font font = UIManager.getFont("defaultFont");
        return font == null ? usual : Math.max(usual, Math.round(usual * font.getSize2D() / WORK_SIZE));
    }

    /** The palette in force. */
    public static Palette palette() {
        return UIManager.get(PALETTE_KEY) instanceof Palette palette ? palette : Palette.LIGHT;
    }

    /** Small second ink: units and secondary labels. */
    public static <C extends JComponent> C secondary(C component) {
        component.putClientProperty("FlatLaf.style", "font: -2; foreground: $quarterlight.secondInk");
        return component;
    }

    /** A heading above a group of controls. */
    public static JLabel heading(String text) {
        JLabel label = new JLabel(text);
        label.putClientProperty("FlatLaf.styleClass", "h3");
        return label;
    }

    /** A switch in a bar: pressed in ink while it is on, plain words in a box while it is off. */
    public static <B extends AbstractButton> B toggle(B button) {
        button.putClientProperty(
                "FlatLaf.style",
                "background: $Panel.background; hoverBackground: $quarterlight.shade; selectedBackground:"
                        + " $quarterlight.ink; selectedForeground: $quarterlight.paper; margin: 2,7,2,7; minimumWidth: 0");
        return button;
    }

    /** Takes the frame off a component, in light and dark alike. */
    public static <C extends JComponent> C bare(C component) {
        component.setBorder(BorderFactory.createEmptyBorder());
        return component;
    }

    /** Gives a component the name that a screen reader speaks. */
    public static <C extends Component> C named(C component, String name) {
        component.getAccessibleContext().setAccessibleName(name);
        if (component instanceof JSpinner spinner && spinner.getEditor() instanceof JSpinner.DefaultEditor editor) {
            editor.getTextField().getAccessibleContext().setAccessibleName(name);
        }
        return component;
    }

    private static Map<String, String> defaults(Palette p) {
        Map<String, String> map = new TreeMap<>();
        map.put("@background", hex(p.paper()));
        map.put("@foreground", hex(p.ink()));
        map.put("@accentColor", hex(p.accent()));
        map.put("@componentBackground", hex(p.sheet()));
        map.put("@menuBackground", hex(p.paper()));
        map.put("@disabledForeground", hex(Palette.mix(p.paper(), p.secondInk(), 0.75)));
        map.put("@selectionBackground", hex(Palette.mix(p.sheet(), p.accent(), 0.22)));
        map.put("@selectionForeground", hex(p.ink()));
        map.put("@selectionInactiveBackground", hex(Palette.mix(p.sheet(), p.accent(), 0.12)));
        map.put("@selectionInactiveForeground", hex(p.ink()));
        map.put("quarterlight.secondInk", hex(p.secondInk()));
        map.put("quarterlight.ink", hex(p.ink()));
        map.put("quarterlight.paper", hex(p.paper()));
        map.put("quarterlight.shade", hex(Palette.mix(p.paper(), p.ink(), 0.08)));
        map.put("quarterlight.line", hex(p.line()));
        map.put("quarterlight.caution", hex(p.caution()));
        map.put("quarterlight.grave", hex(p.grave()));
        map.put("Component.borderColor", hex(p.line()));
        map.put("Component.focusColor", hex(p.accent()));
        map.put("Component.focusWidth", "1");
        map.put("Component.innerFocusWidth", "1");
        // else the look would load the HTML of Swing at start, only to color its links; the manual has its own
        map.put("Component.linkColor", "null");
        map.put("Component.arc", "4");
        map.put("Button.arc", "4");
        map.put("Button.background", hex(p.sheet()));
        map.put("Button.default.background", hex(p.accent()));
        map.put("Button.default.foreground", hex(p.onAccent()));
        map.put("Button.default.focusedBackground", hex(p.accent()));
        map.put("Button.default.hoverBackground", hex(Palette.mix(p.accent(), p.ink(), 0.15)));
        map.put("Button.default.pressedBackground", hex(Palette.mix(p.accent(), p.ink(), 0.3)));
        map.put("Button.minimumHeight", "26");
        map.put("ToggleButton.toolbar.selectedBackground", hex(Palette.mix(p.paper(), p.ink(), 0.1)));
        map.put("Separator.foreground", hex(p.line()));
        map.put("SplitPane.background", hex(p.line()));
        map.put("SplitPaneDivider.style", "plain");
        map.put("Table.background", hex(p.sheet()));
        map.put("Table.showHorizontalLines", "true");
        map.put("Table.gridColor", hex(Palette.mix(p.sheet(), p.line(), 0.6)));
        map.put("Table.rowHeight", "26");
        map.put("TableHeader.foreground", hex(p.secondInk()));
        map.put("TableHeader.background", hex(p.paper()));
        map.put("TableHeader.separatorColor", hex(p.paper()));
        map.put("List.background", hex(p.sheet()));
        map.put("TextField.background", hex(p.sheet()));
        map.put("ScrollBar.width", "12");
        map.put("ScrollBar.track", hex(p.paper()));
        map.put("ToolTip.background", hex(p.sheet()));
        map.put("ToolTip.border", "6,8,6,8," + hex(p.line()));
        map.put("TitlePane.background", hex(p.paper()));
        map.put("MenuBar.background", hex(p.paper()));
        map.put("MenuBar.borderColor", hex(p.line()));
        map.put("ProgressBar.foreground", hex(p.accent()));
        return map;
    }
}
