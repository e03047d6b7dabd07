package quarterlight.marks.judge;

import quarterlight.visit.mark.Mark;
import quarterlight.visit.mark.MarkKind;
import quarterlight.visit.mark.MarkStage;

/**
 * How far from the car's build a mark usually lies. Common practice, without a published source, but for the label: 49 CFR 567.4
 * asks for the month in which the car was completed.
 *
 * @param leadDays most days from a part's date to the car's build, unless the mark says otherwise
 * @param shippedDays most days from the build to the date of shipping
 * @param soldDays most days from the build to the date of the first sale
 * @param builtToleranceDays how far a date of the build on a stamp or tag may lie from the build; a label's may not
 */
public record UsualLeads(int leadDays, int shippedDays, int soldDays, int builtToleranceDays) {
    /** The values in use. */
    public static final UsualLeads V1 = new UsualLeads(180, 180, 730, 14);

    /** How many days the date of a mark may lie before the car's build. */
    public int before(Mark mark) {
        boolean afterwards = mark.stage().filter(UsualLeads::isAfterBuild).isPresent();
        return afterwards ? 0 : mark.leadDays().orElse(leadDays);
    }

    /** How many days the date of a mark may lie after the car's build. */
    public int after(Mark mark) {
        return mark.stage()
                .filter(UsualLeads::isAfterBuild)
                .map(stage -> mark.leadDays().orElse(stage == MarkStage.SHIPPED ? shippedDays : soldDays))
                .orElse(0);
    }

    /** None for a label, which says the month of the build itself, and for a number, which says a whole model year. */
    public int builtTolerance(Mark mark) {
        return mark.kind() == MarkKind.LABEL || mark.kind() == MarkKind.VIN ? 0 : builtToleranceDays;
    }

    public static boolean isAfterBuild(MarkStage stage) {
        return stage == MarkStage.SHIPPED || stage == MarkStage.SOLD;
    }
}
