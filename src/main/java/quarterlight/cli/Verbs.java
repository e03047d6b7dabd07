package quarterlight.cli;

import java.util.List;

/** Every verb, in the order of the job. */
final class Verbs {
    /** The verb of a call without one. */
    static final String WITHOUT_A_WORD = "demo";

    private Verbs() {}

    static List<Verb> all(Surroundings around) {
        return List.of(
                new LaterVerb("desk", "opens the desktop"),
                new DemoVerb(around),
                new NewVerb(around),
                new SetVerb(around),
                new IntakeVerb(around),
                new ClockVerb(around),
                new PhotosVerb(around),
                new AddVerb(around),
                new AuditVerb(around),
                new ZonesVerb(around),
                new HistoryVerb(around),
                new RustVerb(around),
                new DatesVerb(around),
                new SuggestVerb(around),
                new GapsVerb(around),
                new PagesVerb(around),
                new CompareVerb(around),
                new LaterVerb("archive", "packs the visit into one file that can be checked"),
                new LaterVerb("restore", "opens an archive again"),
                new DiagramVerb(around));
    }
}
