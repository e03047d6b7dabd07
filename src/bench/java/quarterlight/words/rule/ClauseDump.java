package quarterlight.words.rule;

import java.nio.file.Path;
import java.util.stream.Collectors;
import quarterlight.caption.CaptionFile;
import quarterlight.car.body.Body;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.DriveSide;
import quarterlight.table.ZoneTable;
import quarterlight.table.list.LexiconTable;
import quarterlight.units.Worded;
import quarterlight.words.lexicon.Lexicon;
import quarterlight.words.place.CarZones;
import quarterlight.words.place.Scene;
import quarterlight.words.text.Clause;

/** Shows how a file of words is cut into clauses, and the place of each: {@code ClauseDump FILE STYLE [right]}. */
final class ClauseDump {
    private ClauseDump() {}

    public static void main(String[] args) throws Exception {
        Lexicon lexicon = LexiconTable.load();
        Body body = Body.usual(Worded.find(BodyStyle.class, args[1]).orElseThrow());
        Scene scene =
                new Scene(new CarZones(ZoneTable.load(), body, args.length > 2 ? DriveSide.RIGHT : DriveSide.LEFT));
        for (Clause clause :
                Listening.clauses(CaptionFile.read(Path.of(args[0])).words(), lexicon)) {
            var place = scene.enter(clause);
            System.out.printf(
                    "%5.0f %-60s %s %s %s | %s%n",
                    clause.at(),
                    clause.shown(),
                    place.zones(),
                    place.how().word(),
                    place.sideHow().word(),
                    clause.mentions().stream()
                            .map(m -> m.kind().word() + ":" + clause.shown(m.from(), m.to()))
                            .collect(Collectors.joining(", ")));
        }
    }
}
