package quarterlight.page.report;

import quarterlight.car.ZoneId;
import quarterlight.visit.PhotoId;
import quarterlight.visit.VisitRecord;

/** What the inspector chose to show. Immutable. */
record Selection(boolean full) {
    static Selection of(VisitRecord visit) {
        return new Selection(true);
    }

    boolean shows(PhotoId photo) {
        return true;
    }

    boolean shows(ZoneId zone) {
        return true;
    }
}
