package quarterlight.diagram.ink;

import java.awt.Color;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;

/**
 * The color ramp of quantities: cividis turned round, perceptually even and the same to readers with and without color deficiency. Light is
 * low and dark is high, so that more coating is more ink and the drawing stays clear where the coating is usual.
 * <p>Source: Nunez, Anderton and Renslow 2018, "Optimizing colormaps with consideration for color vision deficiency",
 * doi:10.1371/journal.pone.0199239; the 256 values as distributed with matplotlib.
 */
public final class Ramp {
    /** Name for legends. */
    public static final String NAME = "darker = thicker";

    private final List<Color> steps;

    private Ramp(List<Color> steps) {
        this.steps = steps;
    }

    /** The ramp of the program. */
    public static Ramp load() {
        CSVFormat format = CSVFormat.DEFAULT
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .setCommentMarker('#')
                .get();
        try (InputStream in = Ramp.class.getResourceAsStream("cividis.csv")) {
            return new Ramp(format.parse(new InputStreamReader(in, StandardCharsets.UTF_8)).stream()
                    .map(row -> Color.decode(row.get("color")))
                    .toList());
        } catch (IOException e) {
            throw new UncheckedIOException("cividis.csv cannot be read", e);
        }
    }

    /** The color at a share of the range; 0 and below is the light end, 1 and above the dark end. */
    public Color at(double share) {
        int last = steps.size() - 1;
        return steps.get(last - (int) Math.round(Math.min(1, Math.max(0, share)) * last));
    }

    /** The steps as published, dark to light. */
    List<Color> steps() {
        return steps;
    }
}
