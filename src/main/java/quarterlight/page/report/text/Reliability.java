package quarterlight.page.report.text;

import static quarterlight.language.Sentences.figure;
import static quarterlight.language.Sentences.say;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * How often refinish likelihoods came true on simulated cars: the table of docs/finish-history-study.md, as a file of the
 * program.
 *
 * @param bands from low to high
 */
record Reliability(List<Band> bands) {
    private static final String FILE = "/quarterlight/finish/reliability.csv";
    private static final int SHOWN = 20;

    /**
     * Panels that were called between two likelihoods.
     *
     * @param from in percent
     * @param panels how many
     * @param refinished how many of them were refinished
     */
    record Band(int from, int to, int panels, int refinished) {
        int ofHundred() {
            return Math.round(100f * refinished / panels);
        }
    }

    Reliability {
        bands = List.copyOf(bands);
    }

    /** Lines of "from,to,panels,refinished" below a heading; lines that begin with # are comments. */
    static Reliability load() {
        try (InputStream in = Reliability.class.getResourceAsStream(FILE);
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            List<Band> bands = new ArrayList<>();
            for (String line : lines.lines().toList()) {
                if (!line.startsWith("#") && !line.startsWith("from")) {
                    String[] cells = line.split(",");
                    bands.add(new Band(
                            Integer.parseInt(cells[0]),
                            Integer.parseInt(cells[1]),
                            Integer.parseInt(cells[2]),
                            Integer.parseInt(cells[3])));
                }
            }
            return new Reliability(bands);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** In one sentence, what became of the panels in each band. */
    String sentence() {
        int panels = bands.stream().mapToInt(Band::panels).sum();
        return say(
                "report.reliability.were-refinished-real-cars-may",
                say("report.reliability.on-simulated-cars-panels-of", figure("%,d", panels)),
                bands.stream()
                        .filter(band -> band.panels() >= SHOWN)
                        .map(band -> say("report.reliability.to", band.from(), band.to(), band.ofHundred()))
                        .collect(Collectors.joining("; ")));
    }
}
