package quarterlight.ui;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import quarterlight.car.ZoneId;
import quarterlight.edit.EditRefused;
import quarterlight.edit.fact.ClockEdits;
import quarterlight.edit.fact.FactEdits;
import quarterlight.edit.intake.Intake;
import quarterlight.edit.list.WalkHabitStore;
import quarterlight.edit.row.RowEdits;
import quarterlight.store.VisitStore;
import quarterlight.table.ZoneTable;
import quarterlight.task.Progress;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.photo.CameraId;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.row.RecordKind;

/** The walk round a car of {@code demo-data}: its photos with the cameras' clocks set right, and the place where each was taken. */
record SampleWalk(Path data) {
    /** @param name its folder in {@code demo-data} */
    static SampleWalk of(String name) {
        return new SampleWalk(Path.of(System.getProperty("quarterlight.basedir", "."))
                .resolve("demo-data")
                .resolve(name));
    }

    /** The rows of a table. */
    List<CSVRecord> rows(String table) throws IOException {
        try (Reader reader = Files.newBufferedReader(data.resolve(table + ".csv"));
                CSVParser parser = CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get()
                        .parse(reader)) {
            return parser.getRecords();
        }
    }

    /** Of the car only what the walk needs: its style, and the time zone in which it was seen. */
    private static VisitFacts facts() throws EditRefused {
        return new FactEdits(ZoneTable.load())
                .start(Map.of("car", "Any", "style", "coupe", "timezone", "America/Los_Angeles"), ZoneOffset.UTC);
    }

    /** A new visit with the photos, each camera's clock set as the inspector found it. */
    void takeIn(Path visit, Clock clock) throws Exception {
        try (VisitStore store = VisitStore.create(visit, facts(), clock)) {
            new Intake(store, clock, (photo, jpeg) -> {}).run(List.of(data.resolve("photos")), Progress.NONE);
            Map<String, PhotoId> photos = photos(store.read());
            for (CSVRecord row : rows("clock")) {
                new ClockEdits(store)
                        .fromPhoto(
                                new CameraId(row.get("camera")),
                                photos.get(row.get("photo")),
                                LocalDateTime.parse(row.get("shows")),
                                Optional.empty());
            }
        }
    }

    static Map<String, PhotoId> photos(VisitRecord visit) {
        Map<String, PhotoId> photos = new LinkedHashMap<>();
        for (Photo photo : visit.photos()) {
            photos.put(photo.file().name(), photo.id());
        }
        return photos;
    }

    /** Where each photo that has a pin was taken. */
    Map<PhotoId, ZoneId> places(VisitRecord visit) throws IOException {
        Map<String, PhotoId> photos = photos(visit);
        Map<PhotoId, ZoneId> places = new LinkedHashMap<>();
        for (CSVRecord row : rows("pins")) {
            places.putIfAbsent(photos.get(row.get("photo")), new ZoneId(row.get("zone")));
        }
        return places;
    }

    /** The inspector walked round this car before: the program remembers how. */
    void remembered(Path settings, Path visit, Clock clock) throws Exception {
        takeIn(visit, clock);
        try (VisitStore store = VisitStore.openForEditing(visit, clock)) {
            List<Pin> pins = new ArrayList<>();
            places(store.read())
                    .forEach((photo, zone) -> pins.add(new Pin(
                            photo,
                            zone,
                            OptionalDouble.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty())));
            new RowEdits(store).add(RecordKind.PINS, pins);
            new WalkHabitStore(settings).learn(store.read());
        }
    }
}
