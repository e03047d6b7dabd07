package quarterlight.ui.kit.look;

import java.awt.Component;
import javax.swing.BorderFactory;
import javax.swing.JSplitPane;

/** Two parts side by side that keep their shares of the width until the user moves the line between them. Event thread only. */
public final class ShareSplit extends JSplitPane {
    private double share;
    private int laidOut;
    private boolean laying;

    /** @param share of the left part, 0 to 1 */
    public ShareSplit(Component left, Component right, double share) {
        super(HORIZONTAL_SPLIT, true, left, right);
        this.share = share;
        setBorder(BorderFactory.createEmptyBorder());
        setDividerSize(5);
        setResizeWeight(share);
        addPropertyChangeListener(DIVIDER_LOCATION_PROPERTY, e -> {
            if (!laying
                    && getWidth() > 0
                    && getWidth() == laidOut
                    && getLeftComponent().isVisible()) {
                this.share = getDividerLocation() / (double) getWidth();
            }
        });
    }

    /** Lays both parts out anew, after one of them was hidden or shown. */
    public void again() {
        laidOut = 0;
        revalidate();
        repaint();
    }

    /** Share of the left part, 0 to 1. */
    public double share() {
        return share;
    }

    @Override
    public void doLayout() {
        if (getWidth() > 0 && getWidth() != laidOut) {
            laying = true;
            super.doLayout();
            setDividerLocation(getLeftComponent().isVisible() ? (int) Math.round(share * getWidth()) : 0);
            laidOut = getWidth();
            super.doLayout();
            laying = false;
        } else {
            super.doLayout();
        }
    }
}
