package quarterlight.cli.evidence;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.cli.call.CallRefused;
import quarterlight.cli.call.CliContext;
import quarterlight.cli.call.CliOptions;
import quarterlight.cli.call.Exit;
import quarterlight.cli.call.PhotoArgument;
import quarterlight.cli.call.Verb;
import quarterlight.cli.text.CliText;
import quarterlight.edit.EditRefused;
import quarterlight.edit.fact.ClockEdits;
import quarterlight.store.VisitStore;
import quarterlight.store.problem.VisitProblem;
import quarterlight.table.json.JsonObject;
import quarterlight.table.text.DateTimeText;
import quarterlight.table.text.Quoted;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.CameraId;
import quarterlight.visit.photo.ClockSetting;
import quarterlight.visit.photo.Photo;

/** {@code clock}: sets a camera's clock right; what it recorded stays beside it. */
public final class ClockVerb implements Verb {
    private final CliContext around;

    public ClockVerb(CliContext around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        return CliOptions.verb("clock", "correct a camera's clock, by an amount or from a photo of a clock")
                .addPositional(CliOptions.visit())
                .addOption(CliOptions.text("--camera", "ID", "camera ID, as listed by photos").toBuilder()
                        .required(true)
                        .build())
                .addOption(CliOptions.text(
                        "--shift", "\u00b1HH:MM:SS", "amount to add to every time this camera recorded"))
                .addOption(CliOptions.text("--photo", "ID", "a photo of a clock: its number, file name or hash"))
                .addOption(CliOptions.text("--shows", "DATETIME", "the date and time that clock shows"))
                .addOption(CliOptions.text(
                        "--timezone", "ZONE", "time zone the camera was set to, such as America/Denver"))
                .addOption(CliOptions.json());
    }

    @Override
    public int run(ParseResult call) throws CallRefused, EditRefused, VisitProblem {
        boolean byShift = call.hasMatchedOption("--shift");
        boolean byPhoto = call.hasMatchedOption("--photo") || call.hasMatchedOption("--shows");
        if (byShift == byPhoto) {
            throw new CallRefused("clock: give either --shift, or --photo with --shows");
        }
        if (byPhoto && !(call.hasMatchedOption("--photo") && call.hasMatchedOption("--shows"))) {
            throw new CallRefused("clock: --photo and --shows go together; give both");
        }
        Optional<ZoneId> zone = zone(call);
        String named = call.matchedOptionValue("--camera", "").strip();
        if (named.isEmpty()) {
            throw new CallRefused("clock: --camera is empty; give the camera ID as listed by photos");
        }
        CameraId camera = new CameraId(named);
        try (VisitStore store = around.visits().forEditing(CliOptions.pathAt(call, 0))) {
            ClockEdits edits = new ClockEdits(store);
            VisitRecord visit = store.read();
            ClockSetting setting = byShift
                    ? edits.shift(camera, ClockEdits.shift(call.matchedOptionValue("--shift", "")), zone)
                    : byPhoto(edits, visit, camera, call, zone);
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

    private static ClockSetting byPhoto(
            ClockEdits edits, VisitRecord visit, CameraId camera, ParseResult call, Optional<ZoneId> zone)
            throws CallRefused, EditRefused, VisitProblem {
        Photo photo = PhotoArgument.find(visit.photos(), call.matchedOptionValue("--photo", ""));
        String text = call.matchedOptionValue("--shows", "");
        ZoneId place = zone.orElse(visit.facts().timezone());
        LocalDateTime shown = DateTimeText.parse(text, place)
                .orElseThrow(() -> new CallRefused(
                        "clock: " + DateTimeText.fault(text, place).orElseThrow()));
        return edits.fromPhoto(camera, photo.id(), shown, zone);
    }

    private void report(ParseResult call, ClockSetting setting, VisitRecord visit) {
        List<Photo> photos = visit.photos().stream()
                .filter(photo -> photo.file().camera().equals(Optional.of(setting.camera())))
                .toList();
        if (CliOptions.isJson(call)) {
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
                            + CliText.count(photos.size(), "photo", "photos")
                            + "; the recorded times are kept with the corrected ones.\n");
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
