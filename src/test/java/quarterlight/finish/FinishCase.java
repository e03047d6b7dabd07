package quarterlight.finish;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import quarterlight.car.FinishProfile;
import quarterlight.car.ZoneId;
import quarterlight.rust.RustExtent;
import quarterlight.units.Worded;
import quarterlight.visit.SignKind;
import quarterlight.visit.VisitFacts;

/** One case of the independent check values: a car's evidence and what is expected of it. */
record FinishCase(String name, FinishEvidence evidence, JsonNode expected) {
    static List<FinishCase> all() {
        try (InputStream in = FinishCase.class.getResourceAsStream("finish-history.json")) {
            List<FinishCase> cases = new ArrayList<>();
            for (JsonNode node : new ObjectMapper().readTree(in).get("cases")) {
                cases.add(read(node));
            }
            return cases;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static FinishCase named(String name) {
        return all().stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
    }

    private static FinishCase read(JsonNode node) {
        List<ZoneEvidence> zones = new ArrayList<>();
        for (JsonNode zone : node.get("zones")) {
            List<Double> spots = new ArrayList<>();
            zone.get("spots_um").forEach(um -> spots.add(um.asDouble()));
            Map<SignKind, Boolean> signs = new EnumMap<>(SignKind.class);
            zone.path("seen").forEach(sign -> signs.put(sign(sign.asText()), true));
            zone.path("absent").forEach(sign -> signs.put(sign(sign.asText()), false));
            Optional<RustExtent> rust = Optional.ofNullable(zone.get("rust"))
                    .map(word -> Worded.find(RustExtent.class, word.asText()).orElseThrow());
            zones.add(new ZoneEvidence(
                    new ZoneId(zone.get("zone").asText()),
                    true,
                    spots,
                    0,
                    zone.path("no_metal").asInt(0),
                    signs,
                    rust));
        }
        FinishProfile profile =
                Worded.find(FinishProfile.class, node.get("profile").asText()).orElseThrow();
        FinishEvidence evidence = new FinishEvidence(profile, VisitFacts.USUAL_GAUGE_RANGE, zones);
        return new FinishCase(node.get("name").asText(), evidence, node);
    }

    private static SignKind sign(String word) {
        return Worded.find(SignKind.class, word).orElseThrow();
    }

    @Override
    public String toString() {
        return name;
    }
}
