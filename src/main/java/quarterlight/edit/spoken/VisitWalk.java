package quarterlight.edit.spoken;

import static quarterlight.language.Sentences.say;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import quarterlight.caption.CaptionFile;
import quarterlight.caption.WordsUnreadable;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.ZoneCatalog;
import quarterlight.edit.SpokenWalk;
import quarterlight.table.TableUnreadable;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.words.Draft;
import quarterlight.words.unsaid.Unsaid;

/**
 * All that was said at a visit, as one walk: every file of words in it that was not set aside. Parts stand in the order in which their films and memos
 * were recorded if all of these tell a time, else in the order in which they came.
 *
 * @param spoken what was said
 * @param parts by the source that their drafts name
 * @param remarks what is odd, or could not be read, in sentences
 */
public record VisitWalk(SpokenWalk spoken, Map<String, Part> parts, List<String> remarks) {
    public VisitWalk {
        remarks = List.copyOf(remarks);
    }

    public List<Draft> drafts() {
        return spoken.drafts();
    }

    /** What the words leave out. */
    public List<Unsaid> unsaid() {
        return spoken.unsaid();
    }

    /**
     * A file of words.
     *
     * @param about the film or memo whose words they are, if that is in the visit
     */
    public record Part(Photo words, Optional<Photo> about) {
        /** What a row points at: the film or memo, or the words where these stand alone. */
        Photo evidence() {
            return about.orElse(words);
        }

        private Optional<OffsetDateTime> time(CorrectedTimes times) {
            return about.flatMap(photo -> times.of(photo.id())).map(time -> time.utc());
        }

        private String name() {
            return words.file().name();
        }

        /** The name without its ending; what is read once even if it was taken in twice, as captions of two forms. */
        private String stem() {
            int dot = name().lastIndexOf('.');
            return (dot > 0 ? name().substring(0, dot) : name()).toLowerCase(Locale.ROOT);
        }
    }

    /**
     * Reads the words of a visit. Nothing is changed.
     *
     * @param folder of the visit
     * @param settings the folder in which the user's own lists of words lie, if there are any
     * @throws TableUnreadable if one of the user's own lists cannot be used
     */
    public static VisitWalk of(VisitRecord visit, Path folder, ZoneCatalog zones, Path settings)
            throws TableUnreadable {
        List<String> remarks = new ArrayList<>();
        Map<String, Part> parts = new LinkedHashMap<>();
        List<CaptionFile.Read> reads = new ArrayList<>();
        Set<String> told = new TreeSet<>();
        for (Part part : inOrder(visit)) {
            if (part.about().isPresent() && !told.add(part.about().get().id() + " " + part.stem())) {
                remarks.add(say(
                        "refused.words.twice",
                        part.name(),
                        part.about().get().file().kind().said()));
                continue;
            }
            String source = parts.containsKey(part.name())
                    ? part.words().file().sha256().prefix() + " " + part.name()
                    : part.name();
            try {
                byte[] bytes =
                        Files.readAllBytes(folder.resolve(part.words().file().stored()));
                reads.add(CaptionFile.read(source, bytes));
                parts.put(source, part);
            } catch (WordsUnreadable e) {
                remarks.add(say("captions.not-read", e.getMessage()));
            } catch (IOException e) {
                remarks.add(say("refused.words.lost", part.name()));
            }
        }
        SpokenWalk walk = SpokenWalk.ofParts(reads, visit.facts().car(), zones, settings);
        remarks.addAll(walk.remarks());
        return new VisitWalk(walk, parts, remarks);
    }

    private static List<Part> inOrder(VisitRecord visit) {
        List<Part> parts = new ArrayList<>(visit.photos().stream()
                .filter(photo -> photo.file().kind() == MediaKind.WORDS)
                .filter(photo -> photo.setAside().isEmpty())
                .map(photo -> new Part(photo, SpokenAbout.of(photo, visit)))
                .toList());
        CorrectedTimes times = CorrectedTimes.of(visit);
        if (parts.stream().allMatch(part -> part.time(times).isPresent())) {
            parts.sort(Comparator.comparing(part -> part.time(times).orElseThrow()));
        }
        return parts;
    }
}
