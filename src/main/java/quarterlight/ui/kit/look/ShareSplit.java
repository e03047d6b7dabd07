package quarterlight.ui.kit.look;

import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.JSplitPane;

/** Two parts side by side, or one above the other, that keep their shares of the room until the user moves the line between them. Event thread only. */
public final class ShareSplit extends JSplitPane {
    private double share;
    private int laidOut;
    private boolean laying;

    /**
     * Side by side.
     *
     * @param share of the left part, 0 to 1
     */
    public ShareSplit(Component left, Component right, double share) {
        this(HORIZONTAL_SPLIT, left, right, share);
    }

    /** One above the other. */
    public static ShareSplit stacked(Component top, Component bottom, double share) {
        return new ShareSplit(VERTICAL_SPLIT, top, bottom, share);
    }

    private ShareSplit(int orientation, Component first, Component second, double share) {
        super(orientation, true, first, second);
        this.share = share;
        setBorder(BorderFactory.createEmptyBorder());
        setDividerSize(5);
        setResizeWeight(share);
        addPropertyChangeListener(DIVIDER_LOCATION_PROPERTY, e -> {
            if (!laying
                    && room() > 0
                    && room() == laidOut
                    && getLeftComponent().isVisible()
                    && getRightComponent().isVisible()) {
                this.share = getDividerLocation() / (double) room();
            }
        });
    }

    private int room() {
        return getOrientation() == HORIZONTAL_SPLIT ? getWidth() : getHeight();
    }

    private int place() {
        if (!getLeftComponent().isVisible()) {
            return 0;
        }
        return getRightComponent().isVisible() ? (int) Math.round(share * room()) : room();
    }

    /** Lays both parts out anew, after one of them was hidden or shown. */
    public void again() {
        laidOut = 0;
        revalidate();
        repaint();
    }

    /** Share of the left or upper part, 0 to 1. */
    public double share() {
        return share;
    }

    @Override
    public void doLayout() {
        if (room() > 0 && room() != laidOut) {
            laying = true;
            super.doLayout();
            setDividerLocation(place());
            laidOut = room();
            super.doLayout();
            laying = false;
        } else {
            super.doLayout();
        }
    }
}
