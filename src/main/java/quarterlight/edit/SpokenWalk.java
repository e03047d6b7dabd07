package quarterlight.edit;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import quarterlight.caption.CaptionFile;
import quarterlight.caption.WordsUnreadable;
import quarterlight.car.Car;
import quarterlight.car.ZoneCatalog;
import quarterlight.table.TableUnreadable;
import quarterlight.table.list.LexiconTable;
import quarterlight.words.Draft;
import quarterlight.words.TimedWords;
import quarterlight.words.clause.Heard;
import quarterlight.words.place.CarZones;
import quarterlight.words.rule.Ear;
import quarterlight.words.unsaid.NotSaid;
import quarterlight.words.unsaid.Unsaid;

/**
 * The drafts that the words of one walk give. Nothing of them enters the visit.
 *
 * @param heard the clauses and the drafts that follow from them
 * @param unsaid what the words leave out
 * @param ear what it was read by
 * @param remarks what is odd about the files, each with its name
 */
public record SpokenWalk(Heard heard, List<Unsaid> unsaid, Ear ear, List<String> remarks) {
    public SpokenWalk {
        Objects.requireNonNull(heard, "heard");
        Objects.requireNonNull(ear, "ear");
        unsaid = List.copyOf(unsaid);
        remarks = List.copyOf(remarks);
    }

    public List<Draft> drafts() {
        return heard.drafts();
    }

    /**
     * Reads the parts of a walk.
     *
     * @param files the words of its parts, in order
     * @param settings the folder in which the user's own lists of words lie, if there are any
     * @throws WordsUnreadable if a file holds no words that can be used
     * @throws TableUnreadable if one of the user's own lists cannot be used
     */
    public static SpokenWalk of(List<Path> files, Car car, ZoneCatalog zones, Path settings)
            throws WordsUnreadable, TableUnreadable {
        List<CaptionFile.Read> parts = new ArrayList<>();
        for (Path file : files) {
            parts.add(CaptionFile.read(file));
        }
        return ofParts(parts, car, zones, settings);
    }

    /**
     * Makes drafts of parts that were read.
     *
     * @throws TableUnreadable if one of the user's own lists cannot be used
     */
    public static SpokenWalk ofParts(List<CaptionFile.Read> parts, Car car, ZoneCatalog zones, Path settings)
            throws TableUnreadable {
        List<TimedWords> words = parts.stream().map(CaptionFile.Read::words).toList();
        List<String> remarks = parts.stream()
                .flatMap(part ->
                        part.remarks().stream().map(remark -> part.words().source() + ": " + remark))
                .toList();
        CarZones places = new CarZones(zones, car.body(), car.drive());
        Ear ear = new Ear(places, LexiconTable.load(settings), LexiconTable.weights(settings));
        Heard heard = ear.hear(words);
        return new SpokenWalk(heard, NotSaid.of(heard, zones.zonesOf(car.body())), ear, remarks);
    }
}
