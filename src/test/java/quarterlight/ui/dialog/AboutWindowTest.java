package quarterlight.ui.dialog;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The licenses that can be read in the window. */
class AboutWindowTest {
    @Test
    void everyLibraryAndEveryNativePartStandsThereWithItsLicense() throws Exception {
        for (String name : List.of("libraries.csv", "natives.csv")) {
            List<String> rows = Files.readAllLines(Path.of("src/main/licenses", name));
            List<String> shown =
                    AboutWindow.listed(String.join("\n", rows)).lines().toList();
            assertThat(shown).hasSize(rows.size() - 1);
            for (int i = 1; i < rows.size(); i++) {
                String[] cells = rows.get(i).split(",", -1);
                int last = cells.length - 2;
                assertThat(shown.get(i - 1)).contains(cells[last - 1]).endsWith(": " + cells[last]);
            }
        }
    }
}
