package quarterlight.cli;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.capture.CorrectedTimes;
import quarterlight.store.VisitProblem;
import quarterlight.store.VisitStore;
import quarterlight.table.JsonObject;
import quarterlight.table.cell.MomentText;
import quarterlight.table.cell.Quoted;
import quarterlight.visit.CameraId;
import quarterlight.visit.ClockSetting;
import quarterlight.visit.Photo;
import quarterlight.visit.VisitRecord;

/** {@code clock}: sets a camera's clock right; what it recorded stays beside it. */
final class ClockVerb implements Verb {
    private static final Pattern SHIFT = Pattern.compile("([+\u2212-]?)(\\d{1,7}):([0-5]\\d):([0-5]\\d)");

    private final Surroundings around;

    ClockVerb(Surroundings around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return Words.verb("clock", "sets a camera's clock right, by a shift or by a photo of a clock")
                .addPositional(Words.visit())
                .addOption(Words.text("--camera", "ID", "the camera, as photos prints it").toBuilder()
                        .required(true)
                        .build())
                .addOption(Words.text("--shift", "\u00b1HH:MM:SS", "what to add to every time this camera recorded"))
                .addOption(Words.text("--photo", "ID", "a photo of a clock: its number, file name or hash"))
                .addOption(Words.text("--shows", "DATETIME", "the date and time that clock shows"))
                .addOption(Words.text("--timezone", "ZONE", "the zone this camera was set to, such as America/Denver"))
                .addOption(Words.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, VisitProblem {
        boolean byShift = call.hasMatchedOption("--shift");
        boolean byPhoto = call.hasMatchedOption("--photo") || call.hasMatchedOption("--shows");
        if (byShift == byPhoto) {
            throw new CallRefused("clock: give either --shift, or --photo with --shows");
        }
        if (byPhoto && !(call.hasMatchedOption("--photo") && call.hasMatchedOption("--shows"))) {
            throw new CallRefused("clock: --photo and --shows go together; give both");
        }
        Optional<ZoneId> zone = zone(call);
        try (VisitStore store = VisitStore.openForEditing(Words.pathAt(call, 0), around.clock())) {
            VisitRecord visit = store.read();
            CameraId camera = camera(visit, call.matchedOptionValue("--camera", ""));
            ClockSetting setting = byShift
                    ? new ClockSetting(camera, shift(call.matchedOptionValue("--shift", "")), zone)
                    : byPhoto(visit, camera, call, zone);
            store.change("set the clock of " + camera, tx -> tx.setClock(setting));
            report(call, setting, visit);
        }
        return Exit.DONE;
    }

    private static Optional<ZoneId> zone(ParseResult call) throws CallRefused {
        Optional<String> text = Optional.ofNullable(call.matchedOptionValue("--timezone", null));
        try {
            return text.map(ZoneId::of);
        } catch (DateTimeException e) {
            throw new CallRefused("clock: there is no time zone " + Quoted.of(text.orElse(""))
                    + "; write one such as America/Denver or +02:00");
        }
    }

    private static CameraId camera(VisitRecord visit, String text) throws CallRefused {
        TreeSet<String> known = new TreeSet<>();
        visit.photos().forEach(photo -> photo.file().camera().ifPresent(id -> known.add(id.value())));
        if (!known.contains(text)) {
            throw new CallRefused("no photo of the visit comes from a camera " + Quoted.of(text)
                    + (known.isEmpty()
                            ? "; no photo names its camera"
                            : "; its cameras are " + String.join(", ", known)));
        }
        return new CameraId(text);
    }

    private static Duration shift(String text) throws CallRefused {
        Matcher m = SHIFT.matcher(text.strip());
        if (!m.matches()) {
            throw new CallRefused(
                    "clock: the shift " + Quoted.of(text) + " is not \u00b1HH:MM:SS, such as +00:03:20 or -01:00:00");
        }
        Duration size = Duration.ofHours(Long.parseLong(m.group(2)))
                .plusMinutes(Long.parseLong(m.group(3)))
                .plusSeconds(Long.parseLong(m.group(4)));
        return m.group(1).isEmpty() || m.group(1).equals("+") ? size : size.negated();
    }

    private static ClockSetting byPhoto(VisitRecord visit, CameraId camera, ParseResult call, Optional<ZoneId> zone)
            throws CallRefused {
        Photo photo = PhotoArgument.find(visit.photos(), call.matchedOptionValue("--photo", ""));
        String text = call.matchedOptionValue("--shows", "");
        LocalDateTime shown = MomentText.parse(text, zone.orElse(visit.facts().timezone()))
                .orElseThrow(() -> new CallRefused("clock: " + Quoted.of(text)
                        + " is not a date and time that exists; write it as 2026-05-02T10:15:00"));
        if (!photo.file().camera().equals(Optional.of(camera))) {
            throw new CallRefused(photo.file().name() + " was taken by "
                    + photo.file().camera().map(CameraId::value).orElse("an unnamed camera") + ", not by " + camera
                    + "; give a photo of that camera");
        }
        return CorrectedTimes.shownOn(visit, photo.id(), shown, zone)
                .orElseThrow(() -> new CallRefused(
                        photo.file().name() + " has no recorded time; give another photo, or the shift"));
    }

    private void report(ParseResult call, ClockSetting setting, VisitRecord visit) {
        List<Photo> photos = visit.photos().stream()
                .filter(photo -> photo.file().camera().equals(Optional.of(setting.camera())))
                .toList();
        if (Words.isJson(call)) {
            around.console()
                    .print(new JsonObject()
                            .put("camera", setting.camera())
                            .put("shift_s", setting.shift().toMillis() / 1000.0)
                            .put("timezone", setting.zone())
                            .put("photos", photos.size())
                            .text());
        } else {
            around.console()
                    .print("The clock of " + setting.camera() + " is set by " + shown(setting.shift()) + " for "
                            + Shown.count(photos.size(), "photo", "photos")
                            + "; the recorded times stay beside the corrected ones.\n");
        }
    }

    static String shown(Duration shift) {
        Duration size = shift.abs();
        String fraction = size.toMillisPart() == 0 ? "" : String.format(".%03d", size.toMillisPart());
        return (shift.isNegative() ? "\u2212" : "+")
                + String.format("%02d:%02d:%02d", size.toHours(), size.toMinutesPart(), size.toSecondsPart())
                + fraction;
    }
}
