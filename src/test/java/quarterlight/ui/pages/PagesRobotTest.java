package quarterlight.ui.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;
import quarterlight.ui.DeskRobot;
import quarterlight.visit.ReportLength;

/** The Pages station: the pages are made by one button and their terms are kept. */
class PagesRobotTest extends DeskRobot {
    @Test
    void thePagesAreMadeWithTheInspectorsTerms() {
        withControl(KeyEvent.VK_6);
        window.textBox("terms").setText("Seen in daylight only.");
        window.button("pages-make").focus();
        until("the terms are kept", () -> held().facts().choices().terms().isPresent());
        assertThat(held().facts().choices().terms()).contains("Seen in daylight only.");
        assertThat(held().facts().choices().length()).isEqualTo(ReportLength.FULL);

        window.button("pages-make").click();
        until("the report is made", () -> Files.exists(visit.resolve("pages/report.html")));
        assertThat(visit.resolve("pages/diagram.pdf")).exists();
        assertThat(visit.resolve("pages/report.pdf")).exists();
        assertThat(visit.resolve("pages/report.html")).content().contains("Seen in daylight only.");
    }
}
