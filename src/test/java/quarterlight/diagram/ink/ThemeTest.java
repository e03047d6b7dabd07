package quarterlight.diagram.ink;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ThemeTest {
    private static final Path MAIN =
            Path.of(System.getProperty("quarterlight.basedir", ".")).resolve("src/main");
    private static final Pattern WRITTEN =
            Pattern.compile("#[0-9A-Fa-f]{6}\\b|new Color\\((?:0x|\\d+ *,)", Pattern.CASE_INSENSITIVE);

    /** Scales of their own, the window for strong contrast, and the grays of a sheet for any printer. */
    private static final Set<String> OTHER_HOMES =
            Set.of("InkPalette.java", "Theme.java", "Palette.java", "Ramp.java", "SheetViews.java", "sheet.ftlh");

    @Test
    void colorsOfPagesAndWindowAreWrittenDownInOnePlace() throws IOException {
        try (Stream<Path> files = Files.walk(MAIN)) {
            List<Path> written = files.filter(file -> file.toString().matches(".*\\.(java|ftlh)"))
                    .filter(file -> !OTHER_HOMES.contains(file.getFileName().toString()))
                    .filter(ThemeTest::holdsColors)
                    .map(MAIN::relativize)
                    .toList();
            assertThat(written).isEmpty();
        }
    }

    private static boolean holdsColors(Path file) {
        try (Stream<String> lines = Files.lines(file)) {
            return lines.filter(line ->
                            !line.strip().startsWith("*") && !line.strip().startsWith("/**"))
                    .anyMatch(line -> WRITTEN.matcher(line).find());
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void wordsCanBeReadInBothBrightnesses() {
        for (Theme theme : List.of(Theme.LIGHT, Theme.DARK)) {
            InkPalette drawing = theme.drawing();
            Map.of(
                            "ink", drawing.ink(),
                            "second ink", drawing.secondInk(),
                            "accent", drawing.accent(),
                            "grave", drawing.grave(),
                            "caution", theme.caution())
                    .forEach((name, color) -> {
                        assertThat(ColorContrast.ratio(color, drawing.ground()))
                                .as(name + " on a sheet")
                                .isGreaterThanOrEqualTo(4.5);
                        assertThat(ColorContrast.ratio(color, theme.paper()))
                                .as(name + " on paper")
                                .isGreaterThanOrEqualTo(4.5);
                    });
        }
    }

    @Test
    void pagesNameColorsAsStylesWriteThem() {
        assertThat(Theme.LIGHT.byName())
                .containsEntry("ink", "#20262b")
                .containsEntry("sheet", "#ffffff")
                .containsEntry("caution", "#8f4a00")
                .hasSize(8);
        assertThat(Theme.DARK.byName()).containsEntry("paper", "#1c2023");
    }
}
