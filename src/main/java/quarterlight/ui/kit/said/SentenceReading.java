package quarterlight.ui.kit.said;

import java.nio.file.Path;
import java.util.function.Function;
import quarterlight.table.TableUnreadable;
import quarterlight.table.list.LexiconTable;
import quarterlight.ui.kit.UiContext;
import quarterlight.ui.kit.visit.OpenVisit;
import quarterlight.words.lexicon.Lexicon;
import quarterlight.words.place.CarZones;
import quarterlight.words.rule.SaidFacets;
import quarterlight.words.weigh.Weights;

/**
 * What sentences about the car in hand seem to say, by the user's own words where they can be used, else by the program's. Made on the
 * event thread, loaded by a worker since lists are read from disk.
 */
public final class SentenceReading {
    private final CarZones places;
    private final Path settings;

    public SentenceReading(UiContext parts, OpenVisit visit) {
        places = new CarZones(
                parts.catalog(),
                visit.visit().facts().car().body(),
                visit.visit().facts().car().drive());
        settings = parts.settings().folder();
    }

    public Function<String, SaidFacets> load() {
        Weights weights = LexiconTable.weights();
        Lexicon lexicon = lexicon();
        return sentence -> SaidFacets.of(sentence, places, lexicon, weights);
    }

    private Lexicon lexicon() {
        try {
            return LexiconTable.load(settings);
        } catch (TableUnreadable unusable) {
            return LexiconTable.load();
        }
    }
}
