package quarterlight.coverage;

import static quarterlight.language.Sentences.say;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import quarterlight.car.ZoneGroup;

/**
 * One look that closes several gaps: the same kind of evidence at one part of the car. What matters comes first: which car
 * it is, then rust where it carries load, then paint, then pictures.
 *
 * @param lacks the kind of evidence
 * @param group where on the car
 * @param gaps what it closes, in the order of the walk
 */
public record NeededLook(EvidenceKind lacks, ZoneGroup group, List<Gap> gaps) {
    /** Kinds of evidence, what matters most first. Judgement: a car that is another one, or unsafe, makes the rest moot. */
    private static final List<EvidenceKind> BY_WEIGHT = List.of(
            EvidenceKind.IDENTITY_MARK,
            EvidenceKind.RUST,
            EvidenceKind.MARK_VIEWS,
            EvidenceKind.SPOTS,
            EvidenceKind.PHOTO);

    /** Where rust is gravest first. */
    private static final List<ZoneGroup> BY_LOAD =
            List.of(ZoneGroup.RECORD, ZoneGroup.UNDER, ZoneGroup.BAY, ZoneGroup.EDGES, ZoneGroup.LOAD, ZoneGroup.OUTER);

    private record Key(EvidenceKind lacks, ZoneGroup group) {}

    public NeededLook {
        Objects.requireNonNull(lacks, "lacks");
        Objects.requireNonNull(group, "group");
        gaps = List.copyOf(gaps);
    }

    /** All gaps by the looks that close them, the look that matters most first. */
    public static List<NeededLook> of(List<Gap> gaps) {
        Map<Key, List<Gap>> byLook = new LinkedHashMap<>();
        for (Gap gap : gaps) {
            byLook.computeIfAbsent(new Key(gap.lacks(), gap.zone().group()), key -> new ArrayList<>())
                    .add(gap);
        }
        List<NeededLook> looks = new ArrayList<>();
        byLook.forEach((key, closed) -> looks.add(new NeededLook(key.lacks(), key.group(), closed)));
        looks.sort(Comparator.comparingInt((NeededLook look) -> BY_WEIGHT.indexOf(look.lacks()))
                .thenComparingInt(look -> place(look.group())));
        return List.copyOf(looks);
    }

    private static int place(ZoneGroup group) {
        int at = BY_LOAD.indexOf(group);
        return at < 0 ? BY_LOAD.size() + group.ordinal() : at;
    }

    /** What to do, in words: {@code look for rust under the car}. */
    public String words() {
        return switch (lacks) {
            case RUST -> say("coverage.needed-look.look-for-rust", where());
            case SPOTS -> say("coverage.needed-look.measure-the-paint", where());
            case PHOTO -> say("coverage.needed-look.take-photos", where());
            case IDENTITY_MARK -> say("coverage.needed-look.read-a-vehicle-number-or");
            case MARK_VIEWS -> say("coverage.needed-look.take-a-second-photo-of", where());
        };
    }

    private String where() {
        return switch (group) {
            case OUTER -> say("coverage.needed-look.outside");
            case COVERING -> say("coverage.needed-look.of-the-soft-top-and");
            case TRIM -> say("coverage.needed-look.of-trim-and-lamps");
            case GLASS -> say("coverage.needed-look.of-the-glass");
            case WHEELS -> say("coverage.needed-look.of-the-wheels");
            case EDGES -> say("coverage.needed-look.at-door-openings-sills-and");
            case BAY -> say("coverage.needed-look.in-the-engine-bay");
            case UNDER -> say("coverage.needed-look.under-the-car");
            case LOAD -> say("coverage.needed-look.in-the-trunk-or-bed");
            case CABIN -> say("coverage.needed-look.in-the-cabin");
            case RECORD -> say("coverage.needed-look.of-the-whole-car-and");
        };
    }
}
