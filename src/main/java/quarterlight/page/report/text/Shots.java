package quarterlight.page.report.text;

import static quarterlight.language.Sentences.say;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import quarterlight.capture.CorrectedTimes;
import quarterlight.car.ZoneId;
import quarterlight.page.CaptureTimeText;
import quarterlight.page.PinKey;
import quarterlight.page.ReportSelection;
import quarterlight.page.report.picture.Frame;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.annotation.Trace;
import quarterlight.visit.mark.Mark;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.Recorded;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.trial.Sign;

/**
 * The photos of the report, each with its number for good: first every pin of the diagram, then the photos that a statement, sign, outline
 * or mark names and that no pin ties to a place. Immutable.
 */
public final class Shots {
    /**
     * One photo of one zone.
     *
     * @param again how many times the same number was shown before, so that each place has an address of its own
     * @param pinned true if the number stands on the diagram
     * @param zone empty for a photo of a mark that belongs to no zone
     */
    public record Shot(
            String number,
            int again,
            boolean pinned,
            Frame frame,
            Optional<ZoneId> zone,
            String shows,
            String caption,
            String time,
            String file) {
        /** Its address within the page. */
        public String id() {
            return "photo-" + number + (again == 0 ? "" : "-again-" + again);
        }
    }

    private final List<Shot> all;
    private final Map<PhotoId, Shot> first = new LinkedHashMap<>();

    private Shots(List<Shot> all) {
        this.all = List.copyOf(all);
        all.forEach(shot -> first.putIfAbsent(shot.frame().photo(), shot));
    }

    public static Shots of(VisitRecord visit, CorrectedTimes times, PinKey key, ReportSelection selection) {
        List<Shot> shots = new ArrayList<>();
        Optional<LocalDate> day = visit.facts().date();
        for (PinKey.Entry entry : key.entries()) {
            Pin pin = entry.value();
            if (selection.shows(pin.photo()) && selection.shows(pin.zone())) {
                shots.add(new Shot(
                        entry.number(),
                        (int) shots.stream()
                                .filter(shot -> shot.number().equals(entry.number()))
                                .count(),
                        true,
                        Frame.of(pin),
                        Optional.of(pin.zone()),
                        pin.shows().orElse(""),
                        pin.caption().orElse(""),
                        CaptureTimeText.words(times, pin.photo(), day),
                        entry.file()));
            }
        }
        Map<PhotoId, Double> pages = pages(visit);
        for (Map.Entry<PhotoId, Optional<ZoneId>> named : named(visit).entrySet()) {
            PhotoId id = named.getKey();
            Optional<Photo> photo = visit.photo(id).filter(p -> p.setAside().isEmpty());
            boolean known = shots.stream().anyMatch(shot -> shot.frame().photo().equals(id));
            boolean zoneShown = named.getValue().map(selection::shows).orElse(true);
            if (!known && photo.isPresent() && selection.shows(id) && zoneShown) {
                shots.add(new Shot(
                        id.toString(),
                        0,
                        false,
                        new Frame(id, page(pages, id)),
                        named.getValue(),
                        "",
                        "",
                        CaptureTimeText.words(times, id, day),
                        photo.get().file().name()));
            }
        }
        return new Shots(shots);
    }

    /** The page of each paper that a statement names first. */
    private static Map<PhotoId, Double> pages(VisitRecord visit) {
        Map<PhotoId, Double> pages = new HashMap<>();
        for (Recorded<Statement> row : visit.statements()) {
            Optional<PhotoId> first = row.value().photo();
            boolean paper = first.flatMap(visit::photo)
                    .filter(photo -> photo.file().kind() == MediaKind.PAPER)
                    .isPresent();
            if (paper) {
                row.value().atSeconds().ifPresent(page -> pages.putIfAbsent(first.orElseThrow(), page));
            }
        }
        return pages;
    }

    private static OptionalDouble page(Map<PhotoId, Double> pages, PhotoId photo) {
        return pages.containsKey(photo) ? OptionalDouble.of(pages.get(photo)) : OptionalDouble.empty();
    }

    /** Photos that some evidence names, with its zone. */
    private static Map<PhotoId, Optional<ZoneId>> named(VisitRecord visit) {
        Map<PhotoId, Optional<ZoneId>> found = new LinkedHashMap<>();
        for (Recorded<Statement> row : visit.statements()) {
            row.value()
                    .photos()
                    .forEach(photo ->
                            found.putIfAbsent(photo, Optional.of(row.value().zone())));
        }
        for (Recorded<Sign> row : visit.signs()) {
            row.value()
                    .photo()
                    .ifPresent(photo ->
                            found.putIfAbsent(photo, Optional.of(row.value().zone())));
        }
        for (Recorded<Trace> row : visit.traces()) {
            found.putIfAbsent(row.value().photo(), Optional.of(row.value().zone()));
        }
        for (Recorded<Mark> row : visit.marks()) {
            row.value()
                    .photo()
                    .ifPresent(photo -> found.putIfAbsent(photo, row.value().zone()));
        }
        return found;
    }

    public List<Shot> all() {
        return all;
    }

    public List<Shot> of(ZoneId zone) {
        return all.stream()
                .filter(shot -> shot.zone().equals(Optional.of(zone)))
                .toList();
    }

    public List<Shot> withoutZone() {
        return all.stream().filter(shot -> shot.zone().isEmpty()).toList();
    }

    /** The place where a photo is shown; empty if it is not shown. */
    Optional<ReportContent.Link> link(Optional<PhotoId> photo) {
        return photo.flatMap(id -> Optional.ofNullable(first.get(id)))
                .map(shot -> new ReportContent.Link(shot.id(), say("report.shots.photo", shot.number())));
    }

    /** The places where some photos are shown; those that are not shown are left out. */
    List<ReportContent.Link> links(List<PhotoId> photos) {
        return photos.stream()
                .map(Optional::of)
                .map(this::link)
                .flatMap(Optional::stream)
                .toList();
    }

    /** The shot that shows the same picture first. */
    Shot firstOf(Frame frame) {
        return all.stream()
                .filter(shot -> shot.frame().equals(frame))
                .findFirst()
                .orElseThrow();
    }
}
