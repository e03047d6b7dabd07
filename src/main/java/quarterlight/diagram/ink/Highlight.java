package quarterlight.diagram.ink;

import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import quarterlight.car.ZoneId;

/** What the pointer and the selection mark on the diagram. */
public record Highlight(Set<ZoneId> selected, Optional<ZoneId> hovered) {
    /** Nothing marked. */
    public static final Highlight NONE = new Highlight(Set.of(), Optional.empty());

    public Highlight {
        selected = Set.copyOf(selected);
        Objects.requireNonNull(hovered, "hovered");
    }
}
