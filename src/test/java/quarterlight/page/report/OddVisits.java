package quarterlight.page.report;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import quarterlight.car.View;
import quarterlight.car.ZoneId;
import quarterlight.car.body.BodyStyle;
import quarterlight.rust.TestVisits;
import quarterlight.table.ZoneTable;
import quarterlight.units.ThicknessUnit;
import quarterlight.visit.BriefWords;
import quarterlight.visit.ReportLength;
import quarterlight.visit.VisitChoices;
import quarterlight.visit.VisitFacts;
import quarterlight.visit.VisitParts;
import quarterlight.visit.VisitRecord;
import quarterlight.visit.annotation.NoteShape;
import quarterlight.visit.annotation.PhotoNote;
import quarterlight.visit.annotation.PixelPoint;
import quarterlight.visit.photo.MediaKind;
import quarterlight.visit.photo.Photo;
import quarterlight.visit.photo.PhotoId;
import quarterlight.visit.pin.Pin;
import quarterlight.visit.pin.ViewPoint;
import quarterlight.visit.reading.GaugeValue;
import quarterlight.visit.reading.Reading;
import quarterlight.visit.statement.Basis;
import quarterlight.visit.statement.Claim;
import quarterlight.visit.statement.Claimant;
import quarterlight.visit.statement.Condition;
import quarterlight.visit.statement.Facets;
import quarterlight.visit.statement.Severity;
import quarterlight.visit.statement.Statement;
import quarterlight.visit.trial.Trial;
import quarterlight.visit.trial.TrialResult;

/** Invented visits that press the pages: nothing in them, far too much, and every script. */
enum OddVisits {
    EMPTY {
        @Override
        VisitRecord visit() {
            return VisitRecord.empty(TestVisits.facts(BodyStyle.COUPE));
        }
    },
    ONE_PHOTO {
        @Override
        VisitRecord visit() {
            return new VisitParts(TestVisits.facts(BodyStyle.SEDAN))
                    .photos(photos(1))
                    .pins(VisitParts.rows(List.of(pin(1, "quarter-left", "the only photo"))))
                    .record();
        }
    },
    PICKUP {
        @Override
        VisitRecord visit() {
            return usual(BodyStyle.PICKUP);
        }
    },
    WAGON {
        @Override
        VisitRecord visit() {
            return usual(BodyStyle.WAGON);
        }
    },
    FOUR_HUNDRED_PINS {
        @Override
        VisitRecord visit() {
            List<String> zones = zones(BodyStyle.COUPE);
            List<Pin> pins = new ArrayList<>();
            for (int n = 0; n < 400; n++) {
                pins.add(pin(1 + n % 100, zones.get(n % zones.size()), "pin number " + n));
            }
            return new VisitParts(TestVisits.facts(BodyStyle.COUPE))
                    .photos(photos(100))
                    .pins(VisitParts.rows(pins))
                    .readings(VisitParts.rows(readings(BodyStyle.COUPE)))
                    .record();
        }
    },
    FORTY_GRAVE {
        @Override
        VisitRecord visit() {
            List<String> zones = zones(BodyStyle.COUPE);
            List<Statement> statements = new ArrayList<>();
            for (int n = 0; n < 40; n++) {
                statements.add(said(
                        zones.get(2 * n), "Torn through from seam to seam, number " + n + ".", Severity.GRAVE, 1 + n));
            }
            return new VisitParts(TestVisits.facts(BodyStyle.COUPE))
                    .photos(photos(40))
                    .pins(VisitParts.rows(IntStream.range(0, 40)
                            .mapToObj(n -> pin(1 + n, zones.get(2 * n), "tear"))
                            .toList()))
                    .statements(VisitParts.rows(statements))
                    .photoNotes(VisitParts.rows(IntStream.rangeClosed(1, 40)
                            .mapToObj(id -> new PhotoNote(
                                    new PhotoId(id),
                                    Optional.empty(),
                                    NoteShape.BOX,
                                    List.of(new PixelPoint(500, 400), new PixelPoint(700, 500)),
                                    Optional.of("the tear begins here"),
                                    Optional.empty()))
                            .toList()))
                    .record();
        }
    },
    LONG_TEXTS {
        @Override
        VisitRecord visit() {
            String endless = "It goes on and on, with a word for every inch of it; ".repeat(40);
            String unbroken = "W".repeat(300);
            return new VisitParts(worded(endless, unbroken))
                    .photos(photos(6))
                    .pins(VisitParts.rows(List.of(
                            pin(1, "hood", endless),
                            pin(2, "hood", unbroken),
                            pin(3, "roof", endless),
                            pin(4, "engine", unbroken),
                            pin(5, "headlamp-left", endless),
                            pin(6, "bumper-front", unbroken))))
                    .statements(VisitParts.rows(List.of(
                            said("hood", endless, Severity.MAJOR, 1),
                            said("roof", unbroken, Severity.GRAVE, 3),
                            said("dash", endless, Severity.NOTE, 4),
                            said("headlamp-left", unbroken, Severity.NOTE, 5))))
                    .claims(VisitParts.rows(List.of(claim(endless), claim(unbroken))))
                    .trials(VisitParts.rows(List.of(new Trial(
                            "Horn " + unbroken.substring(0, 80),
                            TrialResult.DOES_NOT,
                            Optional.empty(),
                            Optional.empty(),
                            Optional.of(new ZoneId("dash")),
                            Optional.of(endless)))))
                    .readings(VisitParts.rows(readings(BodyStyle.COUPE)))
                    .record();
        }
    },
    SCRIPTS {
        @Override
        VisitRecord visit() {
            String hebrew = "\u05db\u05e0\u05e3 \u05e9\u05de\u05d0\u05dc\u05d9\u05ea 3 mm";
            String arabic = "\u0627\u0644\u0631\u0641\u0631\u0641 \u0627\u0644\u0623\u064a\u0633\u0631 12 mm";
            String japanese =
                    "\u5de6\u5f8c\u90e8\u306e\u5857\u819c\u304c\u539a\u3044\u3002\u88dc\u4fee\u306e\u8de1\u304c\u3042\u308b\u3002";
            String korean = "\uc67c\ucabd \ubb38 \u2014 \ub3c4\uc7a5 \ub450\uaed8";
            return new VisitParts(worded(hebrew, japanese))
                    .photos(photos(4))
                    .pins(VisitParts.rows(List.of(
                            pin(1, "hood", hebrew),
                            pin(2, "roof", arabic),
                            pin(3, "quarter-left", japanese),
                            pin(4, "door-front-left", korean))))
                    .statements(VisitParts.rows(List.of(
                            said("hood", hebrew, Severity.GRAVE, 1),
                            said("roof", arabic, Severity.MAJOR, 2),
                            said("quarter-left", japanese.repeat(8), Severity.MAJOR, 3),
                            said("door-front-left", korean + " \ud83d\ude97", Severity.MINOR, 4))))
                    .readings(VisitParts.rows(readings(BodyStyle.COUPE)))
                    .record();
        }
    };

    abstract VisitRecord visit();

    private static List<String> zones(BodyStyle style) {
        return ZoneTable.load().zonesOf(TestVisits.facts(style).car().body()).stream()
                .map(zone -> zone.id().value())
                .toList();
    }

    private static List<Photo> photos(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(
                        id -> TestVisits.photo(id, MediaKind.PHOTO, id % 3 == 2 ? 900 : 1200, id % 3 == 2 ? 1200 : 900))
                .toList();
    }

    /** Usual evidence on a body of any style: readings, thick and thin ones, photos, a few findings and trials. */
    private static VisitRecord usual(BodyStyle style) {
        List<String> zones = zones(style);
        List<Pin> pins = new ArrayList<>();
        for (int n = 0; n < 45; n++) {
            pins.add(pin(1 + n, zones.get(n * 2 % zones.size()), "what is there, place " + n));
        }
        return new VisitParts(TestVisits.facts(style))
                .photos(photos(45))
                .pins(VisitParts.rows(pins))
                .readings(VisitParts.rows(readings(style)))
                .statements(VisitParts.rows(List.of(
                        said("hood", "Chips along the front edge.", Severity.MINOR, 1),
                        said("roof", "Dent of the size of a hand.", Severity.MAJOR, 2),
                        said("engine", "Oil mist at the rear.", Severity.MINOR, 3))))
                .trials(VisitParts.rows(List.of(
                        trial("Service brake", TrialResult.DOES_NOT, "goes to the floor"),
                        trial("Horn", TrialResult.WORKS, "loud"),
                        trial("Wipers", TrialResult.NOT_TRIED, "dry glass"))))
                .record();
    }

    private static List<Reading> readings(BodyStyle style) {
        Random random = new Random(21);
        List<Reading> readings = new ArrayList<>();
        List<String> panels = zones(style).stream()
                .filter(zone ->
                        List.of("hood", "roof", "cowl", "decklid", "fender", "quarter", "door-front", "bed-side")
                                .stream()
                                .anyMatch(zone::startsWith))
                .toList();
        for (String zone : panels) {
            double level = zone.startsWith("quarter") ? 14 : 5;
            for (int n = 0; n < 4; n++) {
                double value = level + random.nextInt(12) / 10.0;
                readings.add(new Reading(
                        new ZoneId(zone),
                        new GaugeValue.Measured(
                                BigDecimal.valueOf(value).setScale(1, java.math.RoundingMode.HALF_UP),
                                ThicknessUnit.MIL),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(new ViewPoint(View.LEFT, 0.2 + 0.1 * n, 0.5)),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
            }
        }
        return readings;
    }

    private static Trial trial(String item, TrialResult result, String note) {
        return new Trial(item, result, Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(note));
    }

    private static Claim claim(String text) {
        return new Claim(
                text,
                Claimant.SELLER,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false);
    }

    private static Statement said(String zone, String text, Severity severity, long photo) {
        return new Statement(
                new ZoneId(zone),
                Facets.of(Condition.DAMAGED),
                text,
                Optional.of(severity),
                Optional.of(Basis.SEEN),
                Optional.of(new PhotoId(photo)),
                Optional.empty());
    }

    private static Pin pin(long photo, String zone, String caption) {
        return new Pin(
                new PhotoId(photo),
                new ZoneId(zone),
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(caption),
                Optional.empty());
    }

    private static VisitFacts worded(String long1, String long2) {
        VisitFacts facts = TestVisits.facts(BodyStyle.COUPE);
        return new VisitFacts(
                        facts.car(),
                        facts.timezone(),
                        Optional.of(long1),
                        Optional.of(long2),
                        Optional.of(LocalDate.of(2026, 4, 18)),
                        Optional.empty(),
                        Optional.of(long2),
                        Optional.of(long1),
                        Optional.of(long2),
                        Optional.of(long1),
                        Optional.of(long1),
                        facts.gaugeRange(),
                        facts.choices())
                .with(new VisitChoices(
                        false,
                        Optional.empty(),
                        Optional.of(long1),
                        Optional.of(long2),
                        ReportLength.FULL,
                        new BriefWords(Optional.of(long2), Optional.of(long1), Optional.empty())));
    }
}
