package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import javax.swing.plaf.basic.BasicHTML;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quarterlight.language.Language;
import quarterlight.store.SampleVisit;
import quarterlight.ui.kit.Command;
import quarterlight.ui.kit.OpenedVisit;
import quarterlight.ui.kit.look.Look;
import quarterlight.ui.kit.look.Sight;
import quarterlight.ui.kit.visit.Station;

/** In every station beside the diagram of a window of 1280 by 800, no button and no label is narrower than its words, unless pointing at it shows them. */
@Timeout(60)
class WordsFitTest {
    /** What is left beside the rail and the drawing. */
    private static final int WIDTH = 690;

    private static final int HEIGHT = 700;

    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource(names = "MARKED", mode = EnumSource.Mode.EXCLUDE)
    void nothingIsCutOff(Language language) throws Exception {
        SwingUtilities.invokeAndWait(() -> Look.install(new Sight(false, false, 100, false)));
        try (OpenedVisit opened = language.during(() -> OpenedVisit.coupe(
                folder, store -> store.change("take in", tx -> tx.addPhoto(SampleVisit.barePhoto(1)))))) {
            List<String> cut = new ArrayList<>();
            for (Station station : Station.values()) {
                SwingUtilities.invokeAndWait(() -> show(opened, station, language, cut));
            }
            assertThat(cut).as(language.ownName()).isEmpty();
        }
    }

    /** The event thread may be another one each time where nothing is shown. */
    private static void show(OpenedVisit opened, Station station, Language language, List<String> cut) {
        try (Language.Scope spoken = language.inHandUntilClosed()) {
            Objects.requireNonNull(spoken, "spoken");
            Command nothing = Command.of(opened.parts().texts(), "do.take-words", () -> {});
            Container side = Stations.screen(station, opened.parts(), opened.visit(), nothing)
                    .side();
            side.setSize(WIDTH, HEIGHT);
            layOut(side);
            layOut(side);
            find(side, station, cut);
        }
    }

    private static void layOut(Container container) {
        container.doLayout();
        for (Component one : container.getComponents()) {
            if (one instanceof Container inner) {
                layOut(inner);
            }
        }
    }

    private static void find(Container container, Station station, List<String> cut) {
        for (Component one : container.getComponents()) {
            if (one.isVisible() && one.getWidth() > 0) {
                words(one, station, cut);
                if (one instanceof AbstractButton button
                        && one.getX() + one.getWidth() > container.getWidth() + 1
                        && !(container instanceof JViewport)
                        && !button.getText().equals(button.getToolTipText())) {
                    cut.add("%s: \"%s\" reaches over the edge".formatted(station, button.getText()));
                }
                if (one instanceof Container inner) {
                    find(inner, station, cut);
                }
            }
        }
    }

    private static void words(Component one, Station station, List<String> cut) {
        String words = one instanceof JLabel label
                ? label.getText()
                : one instanceof AbstractButton button ? button.getText() : null;
        boolean wraps = one instanceof JComponent swing && swing.getClientProperty(BasicHTML.propertyKey) != null;
        if (words != null
                && !words.isBlank()
                && !wraps
                && !words.equals(((JComponent) one).getToolTipText())
                && one.getPreferredSize().width > one.getWidth() + 1) {
            cut.add("%s: \"%s\" needs %d px and has %d"
                    .formatted(station, words, one.getPreferredSize().width, one.getWidth()));
        }
    }
}
