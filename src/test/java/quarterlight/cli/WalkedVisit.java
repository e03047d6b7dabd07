package quarterlight.cli;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import quarterlight.store.VisitStore;
import quarterlight.visit.VisitRecord;

/** A visit whose walk was narrated, and what is heard of it. */
public final class WalkedVisit {
    private WalkedVisit() {}

    public static String visit(Bench bench) {
        String visit = bench.folder("walked");
        bench.run("new", visit, "--car", "Larkspur", "--style", "coupe", "--year", "1967", "--timezone", "UTC")
                .done();
        return visit;
    }

    public static List<JsonNode> drafts(Bench bench, String visit) {
        List<JsonNode> drafts = new ArrayList<>();
        bench.run("listen", visit, "--json").done().json().get("drafts").forEach(drafts::add);
        return drafts;
    }

    public static VisitRecord record(String visit) throws Exception {
        try (VisitStore store = VisitStore.openForReading(Path.of(visit))) {
            return store.read();
        }
    }
}
