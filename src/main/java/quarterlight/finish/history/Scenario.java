package quarterlight.finish.history;

import quarterlight.units.Worded;

/** What can have happened to the finish of the whole car. */
public enum Scenario implements Worded {
    AS_BUILT,
    SOME_PANELS,
    /** All round refinished over the earlier finish, in one job. */
    WHOLE_CAR_OVER,
    /** All round stripped and refinished, in one job. */
    WHOLE_CAR_STRIPPED
}
