package quarterlight.draw;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import quarterlight.car.Zone;
import quarterlight.car.body.BodyStyle;
import quarterlight.car.body.Construction;
import quarterlight.car.body.EnginePlace;

/**
 * Which bodies a piece of a drawing belongs to. Immutable.
 *
 * @param driver it lies on the driver's side, drawn for a driver on the left
 */
record Applies(Set<BodyStyle> styles, Set<Construction> constructions, Set<EnginePlace> engines, boolean driver) {
    static final Applies ALL = new Applies(
            EnumSet.allOf(BodyStyle.class), EnumSet.allOf(Construction.class), EnumSet.allOf(EnginePlace.class), false);
    static final Applies DRIVER = new Applies(ALL.styles, ALL.constructions, ALL.engines, true);

    Applies {
        styles = Set.copyOf(styles);
        constructions = Set.copyOf(constructions);
        engines = Set.copyOf(engines);
    }

    static Applies of(Zone zone) {
        return new Applies(zone.styles(), zone.constructions(), zone.engines(), false);
    }

    /** Words joined by commas; words of one kind add up: {@code unibody,subframe,rear}. */
    static Applies read(String words) {
        Set<BodyStyle> styles = EnumSet.noneOf(BodyStyle.class);
        Set<Construction> constructions = EnumSet.noneOf(Construction.class);
        Set<EnginePlace> engines = EnumSet.noneOf(EnginePlace.class);
        for (String word : words.split("[,\\s]+")) {
            boolean style = take(word, BodyStyle.values(), styles);
            boolean construction = take(word, Construction.values(), constructions);
            boolean engine = take(word, EnginePlace.values(), engines);
            if (!style && !construction && !engine) {
                throw new DrawingFault("\"" + word + "\" is no style, construction or engine place");
            }
        }
        return new Applies(
                styles.isEmpty() ? ALL.styles : styles,
                constructions.isEmpty() ? ALL.constructions : constructions,
                engines.isEmpty() ? ALL.engines : engines,
                false);
    }

    private static <E extends Enum<E> & quarterlight.units.Worded> boolean take(String word, E[] all, Set<E> found) {
        for (E one : all) {
            if (one.word().replace(' ', '-').equals(word)) {
                found.add(one);
                return true;
            }
        }
        return false;
    }

    Applies and(Applies other) {
        return new Applies(
                both(styles, other.styles),
                both(constructions, other.constructions),
                both(engines, other.engines),
                driver || other.driver);
    }

    boolean fits(BodyStyle style) {
        return styles.contains(style) && !constructions.isEmpty() && !engines.isEmpty();
    }

    /** The attributes of the SVG element, each with a blank before it; empty if it belongs to every body. */
    String attributes() {
        return attribute("data-construction", constructions, Construction.values())
                + attribute("data-engine", engines, EnginePlace.values())
                + (driver ? " data-side=\"driver\"" : "");
    }

    /** For an id that must differ from that of another variant: {@code -unibody-subframe-rear}. */
    String suffix() {
        return (constructions.size() < Construction.values().length
                        ? "-" + words(constructions, Construction.values(), "-")
                        : "")
                + (engines.size() < EnginePlace.values().length ? "-" + words(engines, EnginePlace.values(), "-") : "");
    }

    private static <E extends Enum<E> & quarterlight.units.Worded> String attribute(String name, Set<E> some, E[] all) {
        return some.size() == all.length ? "" : " " + name + "=\"" + words(some, all, " ") + "\"";
    }

    private static <E extends Enum<E> & quarterlight.units.Worded> String words(Set<E> some, E[] all, String between) {
        return java.util.Arrays.stream(all)
                .filter(some::contains)
                .map(one -> one.word().replace(' ', '-'))
                .collect(Collectors.joining(between));
    }

    private static <E extends Enum<E>> Set<E> both(Set<E> a, Set<E> b) {
        return a.stream().filter(b::contains).collect(Collectors.toSet());
    }
}
