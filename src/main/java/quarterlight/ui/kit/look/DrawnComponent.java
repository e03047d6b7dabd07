package quarterlight.ui.kit.look;

import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/** A component that draws itself and says what it is to those who cannot see it. Event thread only. */
public abstract class DrawnComponent extends JComponent {
    /** What it is; asked once. */
    protected abstract AccessibleRole role();

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                @Override
                public AccessibleRole getAccessibleRole() {
                    return role();
                }
            };
        }
        return accessibleContext;
    }
}
