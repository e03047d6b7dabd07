package quarterlight.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;
import quarterlight.edit.EditRefused;
import quarterlight.edit.FactEdits;
import quarterlight.store.VisitProblem;
import quarterlight.store.VisitStore;
import quarterlight.table.JsonObject;
import quarterlight.visit.VisitFacts;

/** {@code new}: a new visit to one car. */
final class NewVerb implements Verb {
    private static final List<String[]> OPTIONS = List.of(
            new String[] {"car", "TEXT", "what you call the car"},
            new String[] {"style", "STYLE", "coupe, sedan, convertible, wagon or pickup"},
            new String[] {"year", "Y", "model year"},
            new String[] {"built", "DATE", "claimed build date: a day, month or year"},
            new String[] {"finish", "PROFILE", "lacquer, enamel, modern or unknown (usual: unknown)"},
            new String[] {
                "construction",
                "C",
                "unibody, body-on-frame or subframe (usual: body-on-frame for a pickup, else unibody)"
            },
            new String[] {"engine", "PLACE", "front or rear (usual: front)"},
            new String[] {"substrate", "S", "steel, aluminum, fiberglass, plastic or wood (usual: steel)"},
            new String[] {"drive", "SIDE", "side of the driver: left or right (usual: left)"},
            new String[] {"timezone", "ZONE", "time zone of the visit, such as America/Denver (usual: this computer's)"
            });

    private final Surroundings around;

    NewVerb(Surroundings around) {
        this.around = around;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = Words.verb("new", "makes a new visit; set adds further facts")
                .addPositional(Words.path(0, "VISIT", "folder that does not exist yet"));
        for (String[] option : OPTIONS) {
            boolean needed = option[0].equals("car") || option[0].equals("style");
            spec.addOption(Words.text("--" + option[0], option[1], option[2]).toBuilder()
                    .required(needed)
                    .build());
        }
        return spec.addOption(Words.json());
    }

    @Override
    public int run(ParseResult call) throws EditRefused, VisitProblem {
        Map<String, String> values = new LinkedHashMap<>();
        for (String[] option : OPTIONS) {
            String name = "--" + option[0];
            if (call.hasMatchedOption(name)) {
                values.put(option[0], call.matchedOptionValue(name, ""));
            }
        }
        Path path = Words.pathAt(call, 0);
        VisitFacts facts = make(path, values);
        if (Words.isJson(call)) {
            around.console()
                    .print(new JsonObject()
                            .put("visit", path)
                            .put("car", facts.car().name())
                            .put("style", facts.car().body().style().word())
                            .put(
                                    "construction",
                                    facts.car().body().construction().word())
                            .put("timezone", facts.timezone())
                            .text());
        } else {
            around.console()
                    .print("Made " + path + ": " + facts.car().name() + ", "
                            + facts.car().body().style().word() + ", "
                            + facts.car().body().construction().word() + ", times in " + facts.timezone() + ".\n");
        }
        return Exit.DONE;
    }

    VisitFacts make(Path path, Map<String, String> values) throws EditRefused, VisitProblem {
        VisitFacts facts =
                new FactEdits(around.zones().get()).start(values, around.clock().getZone());
        VisitStore.create(path, facts, around.clock()).close();
        return facts;
    }
}
