package quarterlight.ui.dialog;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.util.List;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import quarterlight.language.Language;
import quarterlight.ui.kit.Texts;
import quarterlight.ui.kit.visit.Station;

class HelpTextTest {
    private static final Pattern LINK = Pattern.compile("(?<!!\\[[^\\]]{0,60})\\]\\(([^)]+)\\)");
    private static final Pattern PICTURE = Pattern.compile("!\\[[^\\]]+\\]\\(([^)]+)\\)");

    @Test
    void everyStationHasASectionThatF1Opens() throws Exception {
        List<String> headings = HelpWindow.headings(HelpWindow.text());
        Texts texts = Texts.load();
        for (Station station : Station.values()) {
            assertThat(headings).contains(texts.get(station.textKey()));
        }
        assertThat(headings).contains(texts.get("help.first"));
    }

    @Test
    void everyLinkLeadsToAHeadingOrToTheManual() throws Exception {
        String html = MarkdownText.html(HelpWindow.text());
        List<String> targets = LINK.matcher(HelpWindow.text())
                .results()
                .map(found -> found.group(1))
                .toList();
        assertThat(targets).contains("manual").hasSizeGreaterThan(2);
        assertThat(targets)
                .allMatch(target -> target.equals("manual") || html.contains("id=\"" + target.substring(1) + "\""));
        assertThat(HelpWindow.headings(HelpWindow.text()))
                .allMatch(heading -> html.contains("id=\"" + HelpWindow.anchor(heading) + "\""));
    }

    /** They are shown at that size, so none is stretched. */
    @Test
    void everyStationHasAPictureThatIsThere() throws Exception {
        List<String> pictures = PICTURE.matcher(HelpWindow.text())
                .results()
                .map(found -> found.group(1))
                .toList();
        assertThat(pictures).hasSize(Station.values().length);
        for (String name : pictures) {
            BufferedImage picture = ImageIO.read(HelpWindow.picture(name));
            assertThat(picture.getWidth()).as(name).isEqualTo(MarkdownText.PICTURE_WIDTH);
            assertThat(picture.getHeight()).as(name).isEqualTo(MarkdownText.PICTURE_HEIGHT);
        }
        assertThat(MarkdownText.html(HelpWindow.text())).contains("src=\"photos.png\"", "width=\"640\"");
    }

    @Test
    void nothingInItNeedsACommandLine() throws Exception {
        assertThat(HelpWindow.text()).doesNotContain("java -jar", "--", "CSV", "JSON");
    }

    @Test
    void germanHelpHasASectionAndAPictureForEveryStationAndLinksThatLead() throws Exception {
        String text = Language.GERMAN.during(HelpWindow::text);
        Texts texts = Texts.load(Language.GERMAN);
        List<String> headings = HelpWindow.headings(text);
        for (Station station : Station.values()) {
            assertThat(headings).contains(texts.get(station.textKey()));
        }
        assertThat(headings).contains(texts.get("help.first")).hasSameSizeAs(HelpWindow.headings(HelpWindow.text()));
        assertThat(PICTURE.matcher(text).results().map(found -> found.group(1)))
                .hasSize(Station.values().length)
                .allMatch(name -> HelpWindow.picture(name) != null);
        String html = MarkdownText.html(text);
        assertThat(LINK.matcher(text).results().map(found -> found.group(1)))
                .allMatch(target -> target.equals("manual") || html.contains("id=\"" + target.substring(1) + "\""));
    }
}
