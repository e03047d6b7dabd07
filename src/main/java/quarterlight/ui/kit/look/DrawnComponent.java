package quarterlight.ui.kit.look;

import java.awt.Point;
import java.util.stream.IntStream;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleStateSet;
import javax.swing.JComponent;

/** A component that draws itself, and says what it is and what it shows to those who cannot see it. Event thread only. */
public abstract class DrawnComponent extends JComponent implements Accessible {
    /** What it is; asked once. */
    protected abstract AccessibleRole role();

    /** How many things it shows that have a name. */
    protected int parts() {
        return 0;
    }

    /** One of them, as it is now; places count from 0. */
    protected DrawnPart part(int place) {
        throw new IndexOutOfBoundsException(place);
    }

    /** Tells those who hear the window that another part is in hand; a place that is none is not told. */
    protected final void tellInHand(int place) {
        if (accessibleContext != null && place >= 0 && place < parts()) {
            accessibleContext.firePropertyChange(
                    AccessibleContext.ACCESSIBLE_ACTIVE_DESCENDANT_PROPERTY, null, child(place));
            accessibleContext.firePropertyChange(AccessibleContext.ACCESSIBLE_SELECTION_PROPERTY, null, null);
        }
    }

    /** Pixels of the screen for each of its own; 1 before it has a place on a screen. */
    public final double deviceScale() {
        return getGraphicsConfiguration() == null
                ? 1
                : getGraphicsConfiguration().getDefaultTransform().getScaleX();
    }

    private Accessible child(int place) {
        return new DrawnChild(this, part(place), place);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new Drawn();
        }
        return accessibleContext;
    }

    private final class Drawn extends AccessibleJComponent {
        @Override
        public AccessibleRole getAccessibleRole() {
            return role();
        }

        @Override
        public AccessibleStateSet getAccessibleStateSet() {
            AccessibleStateSet states = super.getAccessibleStateSet();
            states.add(AccessibleState.MANAGES_DESCENDANTS);
            return states;
        }

        @Override
        public int getAccessibleChildrenCount() {
            return parts();
        }

        @Override
        public Accessible getAccessibleChild(int i) {
            return i < 0 || i >= parts() ? null : child(i);
        }

        @Override
        public Accessible getAccessibleAt(Point p) {
            return IntStream.range(0, parts())
                    .filter(place -> part(place).bounds().contains(p))
                    .mapToObj(DrawnComponent.this::child)
                    .findFirst()
                    .orElse(null);
        }
    }
}
