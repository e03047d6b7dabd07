package quarterlight.page.check;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.pin.Recorded;

/** What was typed into a visit and is not for the buyer: private rows, and what belongs to zones and photos that are left out. */
public final class Secrets {
    private Secrets() {}

    /**
     * What the whole visit says and the buyer's does not.
     *
     * @param buyers the same visit as far as the buyer may see it
     */
    public static Set<String> of(VisitRecord whole, VisitRecord buyers) {
        Set<String> secrets = typed(whole);
        secrets.removeAll(typed(buyers));
        Set<String> open = typed(buyers);
        secrets.removeIf(secret -> open.stream().anyMatch(text -> text.contains(secret)));
        return secrets;
    }

    private static Set<String> typed(VisitRecord visit) {
        Set<String> texts = new HashSet<>();
        add(texts, visit.statements(), said -> Stream.of(said.text()));
        add(texts, visit.readings(), reading -> Stream.concat(reading.note().stream(), reading.exclude().stream()));
        add(texts, visit.trials(), trial -> trial.note().stream());
        add(texts, visit.signs(), sign -> sign.note().stream());
        add(texts, visit.marks(), mark -> Stream.concat(Stream.of(mark.text()), mark.note().stream()));
        add(texts, visit.claims(), claim -> Stream.of(claim.text()));
        add(texts, visit.pins(), pin -> Stream.concat(pin.shows().stream(), pin.caption().stream()));
        add(texts, visit.photoNotes(), note -> note.text().stream());
        add(texts, visit.traces(), trace -> trace.note().stream());
        visit.photos().stream()
                .filter(photo -> !visit.photosLeftOut().contains(photo.id()))
                .map(Photo::file)
                .forEach(file -> texts.add(file.name()));
        return texts;
    }

    private static <T> void add(Set<String> texts, Collection<Recorded<T>> rows, Function<T, Stream<String>> words) {
        rows.stream()
                .map(Recorded::value)
                .flatMap(words)
                .filter(text -> !text.isBlank())
                .forEach(texts::add);
    }
}
