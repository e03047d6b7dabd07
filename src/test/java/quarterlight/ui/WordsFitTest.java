package quarterlight.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
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
            Found found = new Found(new ArrayList<>(), new TreeSet<>());
            for (Station station : Station.values()) {
                Found here = new Found(found.cut(), new TreeSet<>());
                SwingUtilities.invokeAndWait(() -> show(opened, station, language, here));
                assertThat(here.said()).as("words of %s", station).isNotEmpty();
                found.said().addAll(here.said());
            }
            assertThat(found.cut()).as(language.ownName()).isEmpty();
            Set<String> others = texts(language == Language.ENGLISH ? Language.GERMAN : Language.ENGLISH);
            others.removeAll(texts(language));
            assertThat(found.said())
                    .as("no station speaks another language than %s", language.ownName())
                    .doesNotContainAnyElementsOf(others);
        }
    }

    /** What is cut off in any station, and all that labels and buttons say. */
    private record Found(List<String> cut, Set<String> said) {}

    private static Set<String> texts(Language language) throws IOException {
        Properties texts = new Properties();
        String file = language == Language.ENGLISH ? "messages.properties" : "messages_de.properties";
        try (Reader in = new InputStreamReader(Stations.class.getResourceAsStream(file), StandardCharsets.UTF_8)) {
            texts.load(in);
        }
        return new TreeSet<>(texts.values().stream().map(Object::toString).collect(Collectors.toSet()));
    }

    /** The event thread may be another one each time where nothing is shown. */
    private static void show(OpenedVisit opened, Station station, Language language, Found found) {
        try (Language.Scope spoken = language.inHandUntilClosed()) {
            Objects.requireNonNull(spoken, "spoken");
            Command nothing = Command.of(opened.parts().texts(), "do.take-words", () -> {});
            Container side = Stations.screen(station, opened.parts(), opened.visit(), nothing)
                    .side();
            side.setSize(WIDTH, HEIGHT);
            WindowParts.layOut(side);
            WindowParts.layOut(side);
            find(side, station, found);
        }
    }

    private static void find(Container container, Station station, Found found) {
        for (Component one : container.getComponents()) {
            if (one.isVisible() && one.getWidth() > 0) {
                words(one, station, found);
                if (one instanceof AbstractButton button
                        && one.getX() + one.getWidth() > container.getWidth() + 1
                        && !(container instanceof JViewport)
                        && !button.getText().equals(button.getToolTipText())) {
                    found.cut().add("%s: \"%s\" reaches over the edge".formatted(station, button.getText()));
                }
                if (one instanceof Container inner) {
                    find(inner, station, found);
                }
            }
        }
    }

    private static void words(Component one, Station station, Found found) {
        String words = one instanceof JLabel label
                ? label.getText()
                : one instanceof AbstractButton button ? button.getText() : null;
        if (words != null) {
            found.said().add(words);
        }
        boolean wraps = one instanceof JComponent swing && swing.getClientProperty(BasicHTML.propertyKey) != null;
        if (words != null
                && !words.isBlank()
                && !wraps
                && !words.equals(((JComponent) one).getToolTipText())
                && one.getPreferredSize().width > one.getWidth() + 1) {
            found.cut()
                    .add("%s: \"%s\" needs %d px and has %d"
                            .formatted(station, words, one.getPreferredSize().width, one.getWidth()));
        }
    }
}
