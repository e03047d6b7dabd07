package quarterlight.visit;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import quarterlight.language.Sentences;
import quarterlight.visit.annotation.HiddenRegion;
import quarterlight.visit.annotation.PhotoNote;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Claim;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.trial.Sign;

/** The papers, sounds, words and sidecars of a visit that are not released: nothing made for a buyer may hold them, or name them. Immutable. */
public final class WithheldFiles {
    private final Set<PhotoId> files;

    private WithheldFiles(Set<PhotoId> files) {
        this.files = Set.copyOf(files);
    }

    /** Those, and other files that stay at home. */
    static WithheldFiles of(VisitRecord visit, Set<PhotoId> others) {
        Set<PhotoId> all = new HashSet<>(of(visit).files);
        all.addAll(others);
        return new WithheldFiles(all);
    }

    public static WithheldFiles of(VisitRecord visit) {
        Set<PhotoId> released =
                visit.released().stream().map(row -> row.value().photo()).collect(Collectors.toSet());
        return new WithheldFiles(visit.photos().stream()
                .filter(photo -> photo.file().kind().isHeldBack())
                .map(Photo::id)
                .filter(id -> !released.contains(id))
                .collect(Collectors.toSet()));
    }

    public boolean holds(PhotoId file) {
        return files.contains(file);
    }

    /** How many there are. */
    public int count() {
        return files.size();
    }

    /** That papers and memos are left out, without naming them; empty where there are none. Words and sidecars go with what they lie beside. */
    public Optional<String> sentence(VisitRecord visit) {
        List<String> parts = new ArrayList<>();
        long papers = count(visit, MediaKind.PAPER);
        long memos = count(visit, MediaKind.SOUND);
        if (papers > 0) {
            parts.add(say("going.held.papers", papers));
        }
        if (memos > 0) {
            parts.add(say("going.held.memos", memos));
        }
        return parts.isEmpty() ? Optional.empty() : Optional.of(say("going.held.back", Sentences.and(parts)));
    }

    private long count(VisitRecord visit, MediaKind kind) {
        return visit.photos().stream()
                .filter(photo -> photo.file().kind() == kind && holds(photo.id()))
                .count();
    }

    /** The visit without them. What was said with one of them in hand stays said, but points at it no more. */
    VisitRecord without(VisitRecord visit) {
        if (files.isEmpty()) {
            return visit;
        }
        return new VisitRecord(
                visit.facts(),
                visit.photos().stream().filter(photo -> !holds(photo.id())).toList(),
                rows(visit.pins(), Pin::photo),
                visit.readings(),
                visit.gaugeChecks(),
                mapped(visit.signs(), this::sign),
                rows(visit.traces(), Trace::photo),
                mapped(visit.marks(), this::mark),
                visit.trials(),
                mapped(visit.statements(), this::statement),
                visit.features(),
                visit.clocks(),
                rows(visit.photoNotes(), PhotoNote::photo),
                rows(visit.hidden(), HiddenRegion::photo),
                visit.coverage(),
                visit.leftOut(),
                mapped(visit.claims(), this::claim),
                visit.odometer(),
                rows(visit.released(), BuyerRelease::photo),
                visit.decisions(),
                rows(visit.dropped(), DroppedDraft::words));
    }

    /** Rows that are nothing without their photo. */
    private <T> List<Recorded<T>> rows(List<Recorded<T>> all, Function<T, PhotoId> photo) {
        return all.stream().filter(row -> !holds(photo.apply(row.value()))).toList();
    }

    private static <T> List<Recorded<T>> mapped(List<Recorded<T>> all, Function<T, T> open) {
        return all.stream()
                .map(row -> new Recorded<>(row.id(), open.apply(row.value())))
                .toList();
    }

    private Optional<PhotoId> open(Optional<PhotoId> photo) {
        return photo.filter(id -> !holds(id));
    }

    private Sign sign(Sign sign) {
        return new Sign(sign.zone(), sign.kind(), sign.seen(), sign.speaksFor(), open(sign.photo()), sign.note());
    }

    private Mark mark(Mark mark) {
        return new Mark(
                mark.part(),
                mark.kind(),
                mark.text(),
                mark.stage(),
                mark.pattern(),
                mark.expected(),
                mark.zone(),
                mark.point(),
                open(mark.photo()),
                mark.note(),
                mark.leadDays(),
                mark.origin());
    }

    private Claim claim(Claim claim) {
        return new Claim(
                claim.text(),
                claim.by(),
                claim.zone(),
                claim.part(),
                claim.date(),
                claim.about(),
                open(claim.photo()),
                claim.judged(),
                claim.confidential());
    }

    private Statement statement(Statement statement) {
        List<PhotoId> left =
                statement.photos().stream().filter(id -> !holds(id)).toList();
        boolean sameFirst = open(statement.photo()).isPresent();
        return statement.withPhotos(left, sameFirst ? statement.atSeconds() : Optional.empty());
    }
}
