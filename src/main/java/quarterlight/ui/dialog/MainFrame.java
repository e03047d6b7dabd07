package quarterlight.ui.dialog;

import java.awt.Dimension;
import javax.swing.JFrame;
import javax.swing.WindowConstants;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.look.AppIcon;

/** The frame of the window: its title, its least size, and the word when it is gone. Event thread only. */
public final class MainFrame extends JFrame {
    private final transient Texts texts;
    private final transient Runnable gone;

    /** @param gone told once the frame is closed for good */
    public MainFrame(Texts texts, Runnable gone) {
        super(texts.get("app.name"));
        this.texts = texts;
        this.gone = gone;
        AppIcon.on(this);
        setName("main");
        setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        setMinimumSize(new Dimension(960, 620));
    }

    /** Names the visit in the title; an empty text for none. */
    public void titled(String visit) {
        setTitle(visit.isEmpty() ? texts.get("app.name") : texts.get("app.title", visit));
    }

    @Override
    public void dispose() {
        super.dispose();
        gone.run();
    }
}
