package quarterlight.cli;

import java.util.List;

/** Every verb, in the order of the job. */
final class Verbs {
    /** The verb of a call without one. */
    static final String WITHOUT_A_WORD = "desk";

    private Verbs() {}

    static List<Verb> all(Surroundings around) {
        return List.of(
                new DeskVerb(around),
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
                new ArchiveVerb(around),
                new RestoreVerb(around),
                new ExportVerb(around),
                new DiagramVerb(around),
                new ListsVerb(around));
    }
}
