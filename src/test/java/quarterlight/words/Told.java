package quarterlight.words;

import java.util.ArrayList;
import java.util.List;
import quarterlight.car.Zone;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.DriveSide;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.LexiconTable;
import quarterlight.words.clause.Heard;
import quarterlight.words.place.CarZones;
import quarterlight.words.rule.Ear;

/** What is heard of a few sentences, each said ten seconds after the one before. */
public final class Told {
    public static final String SOURCE = "walk.vtt";

    private Told() {}

    public static Ear ear(BodyStyle style) {
        return new Ear(
                new CarZones(ZoneTable.load(), Body.usual(style), DriveSide.LEFT),
                LexiconTable.load(),
                LexiconTable.weights());
    }

    public static List<Zone> zones(BodyStyle style) {
        return ZoneTable.load().zonesOf(Body.usual(style));
    }

    public static Heard of(BodyStyle style, String... said) {
        List<Cue> cues = new ArrayList<>();
        for (String text : said) {
            cues.add(new Cue(10 * cues.size(), 10 * cues.size() + 9, text));
        }
        return ear(style).hear(List.of(new TimedWords(SOURCE, cues)));
    }
}
