package quarterlight.cli.evidence;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.capture.CameraClock;
import quarterlight.capture.Companions;
import quarterlight.capture.CorrectedTime;
import quarterlight.capture.CorrectedTimes;
import quarterlight.capture.NearDuplicates;
import quarterlight.capture.PhotoGroups;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.Verb;
import quarterlight.cli.text.CliText;
import quarterlight.cli.text.MediaJson;
import quarterlight.cli.text.TextTable;
import quarterlight.edit.intake.VisitThumbnails;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.json.JsonObject;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.WithheldFiles;
import quarterlight.visit.photo.CaptureSource;
import quarterlight.visit.photo.CaptureTime;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoFile;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.Recorded;

/** {@code photos}: the photos and films with their times as recorded and as corrected, and where they are pinned. */
public final class PhotosVerb implements Verb {
    private static final DateTimeFormatter SECONDS = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss");
    private static final DateTimeFormatter PLAIN = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss");
    private static final double MILLIS = 1000;

    private final CliContext around;

    public PhotosVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb("photos", "list the photos and films of the visit")
                .addPositional(CliOptions.visit())
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws VisitProblem {
        try (VisitStore store = around.visits().forReading(CliOptions.pathAt(call, 0));
                VisitThumbnails thumbnails = VisitThumbnails.of(store.folder())) {
            VisitRecord visit = store.read();
            CorrectedTimes times = CorrectedTimes.of(visit);
            NearDuplicates alike = LookAlikes.of(visit, times, thumbnails.by(visit));
            around.console()
                    .print(
                            CliOptions.isJson(call)
                                    ? json(visit, times, alike).text()
                                    : table(visit, times) + told(alike));
        }
        return Exit.DONE;
    }

    private static String told(NearDuplicates alike) {
        return alike.sets().isEmpty()
                ? ""
                : "Photos that look alike: "
                        + alike.sets().stream()
                                .map(set -> set.stream()
                                        .map(id -> Long.toString(id.value()))
                                        .collect(Collectors.joining(", ")))
                                .collect(Collectors.joining("; "))
                        + ".\n";
    }

    static JsonObject json(VisitRecord visit, CorrectedTimes times, NearDuplicates alike) {
        PhotoGroups groups = PhotoGroups.of(visit, times);
        Companions companions = Companions.of(visit, times);
        return new JsonObject()
                .put(
                        "photos",
                        visit.photos().stream()
                                .map(photo -> MediaJson.put(photo(photo, visit, times, groups), photo, visit)
                                        .put(
                                                "companion",
                                                companions.of(photo.id()).map(PhotoId::value)))
                                .toList())
                .put(
                        "alike",
                        alike.sets().stream()
                                .map(set -> set.stream().map(PhotoId::value).toList())
                                .toList())
                .put("cameras", times.cameras().stream().map(PhotosVerb::camera).toList());
    }

    private static JsonObject photo(Photo photo, VisitRecord visit, CorrectedTimes times, PhotoGroups groups) {
        PhotoFile file = photo.file();
        Optional<CorrectedTime> corrected = times.of(photo.id());
        String fraction = file.captured().map(CaptureTime::fraction).orElse("");
        return new JsonObject()
                .put("id", photo.id().value())
                .put("file", file.name())
                .put("sha256", file.sha256())
                .put("kind", file.kind().word())
                .put("format", file.type())
                .put("captured", file.captured().map(PhotosVerb::recorded))
                .put("captured_source", file.captured().map(time -> time.source()
                        .word()))
                .put("suspect", file.captured().map(CaptureTime::suspect).orElse(false))
                .put("offset", corrected.map(time -> offset(time.offset())))
                .put("offset_source", corrected.map(time -> time.source().word()))
                .put("captured_corrected", corrected.map(time -> iso(time.local(), fraction)))
                .put("captured_utc", corrected.map(time -> iso(time.utc(), fraction)))
                .put("camera", file.camera())
                .put("width", file.width())
                .put("height", file.height())
                .put("orientation", file.orientation())
                .put("seconds", file.seconds())
                .put("sharpness", file.sharpness())
                .put("group", groups.of(photo.id()))
                .put("set_aside", photo.setAside())
                .put("notes", file.notes())
                .put("pins", pins(photo, visit).stream().map(PhotosVerb::pin).toList());
    }

    private static List<Recorded<Pin>> pins(Photo photo, VisitRecord visit) {
        return visit.pins().stream()
                .filter(pin -> pin.value().photo().equals(photo.id()))
                .toList();
    }

    private static JsonObject pin(Recorded<Pin> row) {
        Pin pin = row.value();
        return new JsonObject()
                .put("id", row.id().value())
                .put("zone", pin.zone())
                .put("at_s", pin.at())
                .put("view", pin.point().map(point -> point.view().word()))
                .put("x", pin.point().map(point -> point.x()))
                .put("y", pin.point().map(point -> point.y()))
                .put("shows", pin.shows())
                .put("caption", pin.caption())
                .put("mark", pin.mark());
    }

    private static JsonObject camera(CameraClock clock) {
        return new JsonObject()
                .put("camera", clock.camera())
                .put("photos", clock.photos())
                .put("shift_s", clock.shift().toMillis() / MILLIS)
                .put("timezone", clock.zone())
                .put("offset", clock.offset().map(PhotosVerb::offset))
                .put("offset_source", clock.source().word())
                .put("drift_s", seconds(clock.drift()))
                .put("satellite_photos", clock.satellitePhotos());
    }

    private static OptionalDouble seconds(Optional<Duration> time) {
        return time.isPresent() ? OptionalDouble.of(time.get().toMillis() / MILLIS) : OptionalDouble.empty();
    }

    /** As the file has it: local time with the recorded fraction; a film's time is UTC and says so. */
    static String recorded(CaptureTime time) {
        return local(time.time(), time.fraction()) + (time.source() == CaptureSource.FILM ? "+00:00" : "");
    }

    private static String local(LocalDateTime time, String fraction) {
        return time.format(SECONDS) + (fraction.isEmpty() ? "" : "." + fraction);
    }

    /** The instant with as many digits after the second as were recorded, nine at most. */
    private static String iso(OffsetDateTime time, String fraction) {
        String nanos = String.format("%09d", time.getNano());
        String digits = nanos.substring(0, Math.min(fraction.length(), nanos.length()));
        if (digits.isEmpty() && time.getNano() != 0) {
            digits = nanos.replaceAll("0+$", "");
        }
        return local(time.toLocalDateTime(), digits) + offset(time.getOffset());
    }

    static String offset(ZoneOffset offset) {
        return offset.equals(ZoneOffset.UTC) ? "+00:00" : offset.getId();
    }

    private static String table(VisitRecord visit, CorrectedTimes times) {
        if (visit.photos().isEmpty()) {
            return "No photos yet. Add them with: intake VISIT FOLDER\n";
        }
        Companions companions = Companions.of(visit, times);
        TextTable table = new TextTable()
                .right("id")
                .left("file", "hash", "taken", "offset from", "camera")
                .right("size")
                .left("pinned to", "remarks");
        for (Photo photo : visit.photos()) {
            PhotoFile file = photo.file();
            table.row(
                    photo.id().toString(),
                    file.name(),
                    file.sha256().prefix(),
                    times.of(photo.id())
                            .map(time -> time.local().format(PLAIN) + " "
                                    + offset(time.local().getOffset()))
                            .orElse(CliText.UNKNOWN),
                    times.of(photo.id()).map(time -> time.source().word()).orElse(""),
                    CliText.text(file.camera()),
                    file.width().isPresent() && file.height().isPresent()
                            ? file.width().getAsInt() + "\u00d7" + file.height().getAsInt()
                            : CliText.UNKNOWN,
                    pins(photo, visit).stream()
                            .map(pin -> pin.value().zone().value())
                            .distinct()
                            .collect(Collectors.joining(" ")),
                    remarks(photo, visit, companions.of(photo.id())));
        }
        StringBuilder out = new StringBuilder(table.text()).append('\n');
        for (CameraClock clock : times.cameras()) {
            out.append(clock.camera()).append(": ").append(CliText.count(clock.photos(), "photo", "photos"));
            out.append(", clock shifted by ").append(ClockVerb.shown(clock.shift()));
            clock.drift().ifPresent(drift -> out.append(", then ahead of satellite time by ")
                    .append(ClockVerb.shown(drift)));
            out.append(".\n");
        }
        return out.toString();
    }

    private static String remarks(Photo photo, VisitRecord visit, Optional<PhotoId> companion) {
        StringBuilder text = new StringBuilder();
        companion.or(() -> MediaJson.beside(photo, visit)).ifPresent(other -> text.append("belongs to ")
                .append(other));
        photo.file().more().pages().ifPresent(pages -> text.append(CliText.count(pages, "page", "pages")));
        if (WithheldFiles.of(visit).holds(photo.id())) {
            text.append(text.isEmpty() ? "" : "; ").append("held back from the buyer");
        }
        photo.setAside().ifPresent(reason -> text.append(text.isEmpty() ? "" : "; ")
                .append("set aside: ")
                .append(reason));
        if (photo.file().captured().map(CaptureTime::suspect).orElse(false)) {
            text.append(text.isEmpty() ? "" : "; ").append("time suspect");
        }
        photo.file().notes().forEach(note -> text.append(text.isEmpty() ? "" : "; ")
                .append(note));
        return text.toString();
    }
}
