package quarterlight.ui.kit.look;

import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.FocusListener;
import java.util.Locale;
import java.util.Optional;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleAction;
import javax.accessibility.AccessibleComponent;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.accessibility.AccessibleState;
import javax.accessibility.AccessibleStateSet;

/** A part of a drawn component in the accessible tree: its name, place, states and what can be done with it. Event thread only. */
final class DrawnChild extends AccessibleContext implements Accessible, AccessibleAction, AccessibleComponent {
    private final DrawnComponent parent;
    private final DrawnPart part;
    private final int place;

    DrawnChild(DrawnComponent parent, DrawnPart part, int place) {
        this.parent = parent;
        this.part = part;
        this.place = place;
        setAccessibleParent(parent);
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        return this;
    }

    @Override
    public String getAccessibleName() {
        return part.name();
    }

    @Override
    public AccessibleRole getAccessibleRole() {
        return AccessibleRole.LIST_ITEM;
    }

    @Override
    public AccessibleStateSet getAccessibleStateSet() {
        AccessibleStateSet states = new AccessibleStateSet();
        states.add(AccessibleState.ENABLED);
        states.add(AccessibleState.VISIBLE);
        states.add(AccessibleState.SELECTABLE);
        states.add(AccessibleState.TRANSIENT);
        if (isShowing()) {
            states.add(AccessibleState.SHOWING);
        }
        if (part.selected()) {
            states.add(AccessibleState.SELECTED);
        }
        return states;
    }

    @Override
    public int getAccessibleIndexInParent() {
        return place;
    }

    @Override
    public int getAccessibleChildrenCount() {
        return 0;
    }

    @Override
    public Accessible getAccessibleChild(int i) {
        return null;
    }

    @Override
    public Locale getLocale() {
        return parent.getLocale();
    }

    @Override
    public AccessibleAction getAccessibleAction() {
        return this;
    }

    @Override
    public int getAccessibleActionCount() {
        return 1;
    }

    @Override
    public String getAccessibleActionDescription(int i) {
        return i == 0 ? part.action() : null;
    }

    @Override
    public boolean doAccessibleAction(int i) {
        if (i != 0 || !parent.isEnabled()) {
            return false;
        }
        part.choose().run();
        return true;
    }

    @Override
    public AccessibleComponent getAccessibleComponent() {
        return this;
    }

    @Override
    public Rectangle getBounds() {
        return part.bounds();
    }

    @Override
    public Point getLocation() {
        return part.bounds().getLocation();
    }

    @Override
    public Dimension getSize() {
        return part.bounds().getSize();
    }

    @Override
    public Point getLocationOnScreen() {
        return Optional.of(parent)
                .filter(DrawnComponent::isShowing)
                .map(shown -> {
                    Point at = shown.getLocationOnScreen();
                    at.translate(part.bounds().x, part.bounds().y);
                    return at;
                })
                .orElse(null);
    }

    @Override
    public boolean contains(Point p) {
        return new Rectangle(getSize()).contains(p);
    }

    @Override
    public boolean isShowing() {
        return parent.isShowing() && parent.getVisibleRect().intersects(part.bounds());
    }

    @Override
    public boolean isVisible() {
        return true;
    }

    @Override
    public boolean isEnabled() {
        return parent.isEnabled();
    }

    @Override
    public boolean isFocusTraversable() {
        return false;
    }

    @Override
    public void requestFocus() {
        parent.requestFocusInWindow();
    }

    @Override
    public Color getBackground() {
        return parent.getBackground();
    }

    @Override
    public Color getForeground() {
        return parent.getForeground();
    }

    @Override
    public Cursor getCursor() {
        return parent.getCursor();
    }

    @Override
    public Font getFont() {
        return parent.getFont();
    }

    @Override
    public FontMetrics getFontMetrics(Font font) {
        return parent.getFontMetrics(font);
    }

    @Override
    public Accessible getAccessibleAt(Point p) {
        return null;
    }

    @Override
    public void setBackground(Color color) {
        // the component draws it as it must
    }

    @Override
    public void setForeground(Color color) {
        // the component draws it as it must
    }

    @Override
    public void setCursor(Cursor cursor) {
        // belongs to the component
    }

    @Override
    public void setFont(Font font) {
        // belongs to the component
    }

    @Override
    public void setEnabled(boolean enabled) {
        // as the component is
    }

    @Override
    public void setVisible(boolean visible) {
        // as the component is
    }

    @Override
    public void setLocation(Point p) {
        // stands where it is drawn
    }

    @Override
    public void setBounds(Rectangle bounds) {
        // stands where it is drawn
    }

    @Override
    public void setSize(Dimension size) {
        // as large as it is drawn
    }

    @Override
    public void addFocusListener(FocusListener listener) {
        // never has the keyboard itself
    }

    @Override
    public void removeFocusListener(FocusListener listener) {
        // never has the keyboard itself
    }
}
